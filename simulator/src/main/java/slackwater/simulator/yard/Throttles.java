package slackwater.simulator.yard;

import java.time.Duration;
import java.util.Optional;
import java.util.function.DoubleFunction;
import slackwater.model.Facts;
import slackwater.model.engineering.FreeAir;

/**
 * Sets a cylinder's throttles as a builder does on the bench: closes them until stroke and return take the stated times. Where
 * the cylinder is too weak to keep a time with the throttle open, it stays open, and the stroke is as slow as it is.
 */
final class Throttles {
    private static final double STEP_S = 0.00025;
    private static final double PATIENCE_S = 20;
    private static final int HALVINGS = 40;

    /** The narrowest setting, as a share of the valve. */
    private static final double NARROWEST = 1e-4;

    private final CylinderForm form;
    private final AirSection.Bench line;

    Throttles(final CylinderForm form, final AirSection.Bench line) {
        this.form = form;
        this.line = line;
    }

    CylinderForm setFor(final Facts facts) {
        CylinderForm set = form;
        final Optional<Duration> out = facts.duration(Fact.STROKES_IN);
        if (out.isPresent()) {
            final CylinderForm now = set;
            set = set(Fact.seconds(out.get()), open(now), true, share -> now.with(outward(now, share)));
        }
        final Optional<Duration> back = facts.duration(Fact.RETURNS_IN);
        if (back.isPresent()) {
            final CylinderForm now = set;
            set = set(Fact.seconds(back.get()), now, false, share -> now.with(inward(now, share)));
        }
        return set;
    }

    /** How a way ends. */
    record Way(double seconds, double speedMPerS) {}

    /** A stroke out, or back from the far end under full pressure; endless where it does not come so far. */
    static Way way(final CylinderForm form, final AirSection.Bench line, final boolean isOut) {
        final double[] numbers = new double[CylinderForm.NUMBERS];
        form.begin(numbers, 0);
        if (form.isDouble()) {
            numbers[CylinderForm.ROD_M3] = line.sourcePaAbs() * form.rodM3(0) / Tank.ANR_PA;
        }
        if (!isOut) {
            numbers[CylinderForm.AT_M] = form.cylinder().travelM();
            final double heldPa = Math.min(line.sourcePaAbs(), form.air().regulatedPaAbs());
            numbers[CylinderForm.CAP_M3] = heldPa * form.capM3(form.cylinder().travelM()) / Tank.ANR_PA;
            numbers[CylinderForm.ROD_M3] =
                    FreeAir.ATMOSPHERE_PA * form.rodM3(form.cylinder().travelM()) / Tank.ANR_PA;
        }
        double linePa = line.sourcePaAbs();
        double speed = 0;
        for (int step = 1; step * STEP_S <= PATIENCE_S; step++) {
            final double had = Math.abs(numbers[CylinderForm.SPEED]);
            linePa = line.after(linePa, form.advance(numbers, 0, isOut, linePa, STEP_S), STEP_S);
            speed = Math.max(had, Math.abs(numbers[CylinderForm.SPEED]));
            final double atM = numbers[CylinderForm.AT_M];
            if (isOut ? atM >= form.cylinder().travelM() : atM <= 0) {
                return new Way(step * STEP_S, speed);
            }
        }
        return new Way(Double.POSITIVE_INFINITY, 0);
    }

    private double takesS(final CylinderForm at, final boolean isOut) {
        return way(at, line, isOut).seconds();
    }

    private CylinderForm set(
            final double wantedS, final CylinderForm open, final boolean isOut, final DoubleFunction<CylinderForm> at) {
        if (takesS(open, isOut) >= wantedS) {
            return open;
        }
        double wide = 1;
        double narrow = NARROWEST;
        for (int i = 0; i < HALVINGS; i++) {
            final double middle = StrictMath.sqrt(wide * narrow);
            if (takesS(at.apply(middle), isOut) < wantedS) {
                wide = middle;
            } else {
                narrow = middle;
            }
        }
        return at.apply(wide);
    }

    private static CylinderForm open(final CylinderForm form) {
        return form.with(outward(form, 1));
    }

    /** On the way out a double-acting cylinder is held back by what leaves its rod side, another by what comes in. */
    private static CylinderForm.Air outward(final CylinderForm form, final double share) {
        final CylinderForm.Air air = form.air();
        return form.isDouble()
                ? new CylinderForm.Air(
                        air.in(),
                        air.outOfCap(),
                        share * air.in(),
                        air.criticalRatio(),
                        air.deadM3(),
                        air.regulatedPaAbs())
                : new CylinderForm.Air(
                        share * air.in(),
                        air.outOfCap(),
                        air.outOfRod(),
                        air.criticalRatio(),
                        air.deadM3(),
                        air.regulatedPaAbs());
    }

    private static CylinderForm.Air inward(final CylinderForm form, final double share) {
        final CylinderForm.Air air = form.air();
        return new CylinderForm.Air(
                air.in(),
                share * air.outOfCap(),
                air.outOfRod(),
                air.criticalRatio(),
                air.deadM3(),
                air.regulatedPaAbs());
    }
}
