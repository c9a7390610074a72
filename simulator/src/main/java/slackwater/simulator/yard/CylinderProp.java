package slackwater.simulator.yard;

import slackwater.model.Output;
import slackwater.model.engineering.FreeAir;

/** A prop that a cylinder moves, on its line of compressed air. */
final class CylinderProp implements Prop, AirUser {
    private static final double ATM = FreeAir.ATMOSPHERE_PA;

    private final Spool spool;
    private final AirSection.Bench bench;
    private final CylinderForm form;
    private final int first;
    private final int ventedM3;

    CylinderProp(final int output, final Output of, final AirSection line, final Slots slots) {
        spool = new Spool(output, of.facts(), slots);
        bench = line.bench();
        form = new Throttles(CylinderForm.of(of, line.workingPa()), bench).setFor(of.facts());
        first = slots.takeReals(CylinderForm.NUMBERS);
        ventedM3 = slots.takeReals(1);
    }

    /** One stroke out and back on a line that its tank keeps full. */
    StrokeTrial trial() {
        final Throttles.Way out = Throttles.way(form, bench, true);
        final Throttles.Way back = Throttles.way(form, bench, false);
        final double massKg = form.moving().massKg();
        return new StrokeTrial(
                out.seconds(),
                massKg * out.speedMPerS() * out.speedMPerS() / 2,
                back.seconds(),
                massKg * back.speedMPerS() * back.speedMPerS() / 2,
                form.cylinder().pushN(FreeAir.gaugePa(form.air().regulatedPaAbs())),
                form.moving().pullsBackN(),
                form.moving().frictionN());
    }

    void begin(final State state) {
        form.begin(state.reals(), first);
    }

    /** From 0 at rest to 1 at the end of the travel. */
    double position(final State state) {
        return state.real(first + CylinderForm.AT_M) / form.cylinder().travelM();
    }

    @Override
    public void step(final State state) {
        spool.step(state);
    }

    @Override
    public long wakesNs(final State state) {
        return ASLEEP; // the line steps it while it moves
    }

    @Override
    public boolean isMoving(final State state) {
        return state.real(first + CylinderForm.SPEED) != 0;
    }

    @Override
    public double energyJ(final State state) {
        return form.energyJ(state.reals(), first);
    }

    @Override
    public double landedJ(final State state) {
        return form.landedJ(state.reals(), first);
    }

    @Override
    public double advance(final State state, final long atNs, final double linePaAbs, final double stepS) {
        final double hadM3 = form.holdsM3(state.reals(), first);
        final double takenM3 = form.advance(state.reals(), first, spool.isOpenAt(state, atNs), linePaAbs, stepS);
        final double keptM3 = form.holdsM3(state.reals(), first) - hadM3;
        state.setReal(ventedM3, state.real(ventedM3) + takenM3 - keptM3);
        return takenM3;
    }

    @Override
    public boolean isNear(final State state, final long atNs, final double linePaAbs) {
        return spool.isStill(state, atNs)
                && form.isStill(state.reals(), first)
                && Math.abs(capGoesToPa(state, atNs, linePaAbs) - form.capPa(state.reals(), first))
                        <= AirSection.SETTLED_PA
                && Math.abs(rodGoesToPa(state, atNs, linePaAbs) - form.rodPa(state.reals(), first))
                        <= AirSection.SETTLED_PA;
    }

    @Override
    public boolean isSettled(final State state, final long atNs, final double linePaAbs) {
        return spool.isStill(state, atNs)
                && form.isStill(state.reals(), first)
                && state.real(first + CylinderForm.CAP_M3) == capRestM3(state, atNs, linePaAbs)
                && state.real(first + CylinderForm.ROD_M3) == rodRestM3(state, atNs, linePaAbs);
    }

    @Override
    public double settle(final State state, final long atNs, final double linePaAbs) {
        final double capM3 = capRestM3(state, atNs, linePaAbs);
        final double rodM3 = rodRestM3(state, atNs, linePaAbs);
        final double moreCapM3 = capM3 - state.real(first + CylinderForm.CAP_M3);
        final double moreRodM3 = form.isDouble() ? rodM3 - state.real(first + CylinderForm.ROD_M3) : 0;
        state.setReal(first + CylinderForm.CAP_M3, capM3);
        state.setReal(first + CylinderForm.ROD_M3, rodM3);
        final boolean isOpen = spool.isOpenAt(state, atNs);
        final double fromLineM3 = isOpen ? moreCapM3 : moreRodM3;
        state.setReal(ventedM3, state.real(ventedM3) - (isOpen ? moreRodM3 : moreCapM3));
        return fromLineM3;
    }

    @Override
    public double holdsM3(final State state) {
        return form.holdsM3(state.reals(), first);
    }

    @Override
    public double ventedM3(final State state) {
        return state.real(ventedM3);
    }

    private double capRestM3(final State state, final long atNs, final double linePaAbs) {
        if (isLocked(state, atNs)) {
            return state.real(first + CylinderForm.CAP_M3);
        }
        return capGoesToPa(state, atNs, linePaAbs) * form.capM3(state.real(first + CylinderForm.AT_M)) / Tank.ANR_PA;
    }

    private double rodRestM3(final State state, final long atNs, final double linePaAbs) {
        return form.isDouble()
                ? rodGoesToPa(state, atNs, linePaAbs) * form.rodM3(state.real(first + CylinderForm.AT_M)) / Tank.ANR_PA
                : state.real(first + CylinderForm.ROD_M3);
    }

    private double capGoesToPa(final State state, final long atNs, final double linePaAbs) {
        if (isLocked(state, atNs)) {
            return form.capPa(state.reals(), first);
        }
        return spool.isOpenAt(state, atNs) ? Math.min(linePaAbs, form.air().regulatedPaAbs()) : ATM;
    }

    private double rodGoesToPa(final State state, final long atNs, final double linePaAbs) {
        if (!form.isDouble()) {
            return ATM;
        }
        return spool.isOpenAt(state, atNs)
                ? ATM
                : Math.min(linePaAbs, form.air().regulatedPaAbs());
    }

    /** A valve that blocks both ports without power keeps the air where it is. */
    private boolean isLocked(final State state, final long atNs) {
        return form.isBlockedAtRest() && !spool.isOpenAt(state, atNs);
    }
}
