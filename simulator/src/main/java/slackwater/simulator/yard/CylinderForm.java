package slackwater.simulator.yard;

import java.util.Optional;
import slackwater.model.Facts;
import slackwater.model.Output;
import slackwater.model.Return;
import slackwater.model.engineering.Cylinder;
import slackwater.model.engineering.CylinderMotion;
import slackwater.model.engineering.FlowPath;
import slackwater.model.engineering.FreeAir;
import slackwater.model.engineering.Hose;

/**
 * What a cylinder and its load are, and how they go on in a small step: m a = p1 A1 - p2 A2 - patm A_rod - friction - load
 * (handbook 1.9), flow after ISO 6358 (1.3), air at one temperature. Its numbers stand in an array of the caller's:
 * position from 0 at rest, speed outward, the air on both sides in m3 ANR (a single-acting one has the atmosphere on its rod side),
 * and the speed with which it last came to a stop.
 */
record CylinderForm(Cylinder cylinder, Moving moving, Air air, boolean isDouble, boolean isBlockedAtRest) {
    static final int NUMBERS = 5;
    static final int AT_M = 0;
    static final int SPEED = 1;
    static final int CAP_M3 = 2;
    static final int ROD_M3 = 3;
    static final int LANDED = 4;

    private static final double ATM = FreeAir.ATMOSPHERE_PA;

    /** Ports and end caps beside the hose, as a share of the swept volume (common practice, no source). */
    private static final double DEAD_SHARE = 0.05;

    /** A single-acting cylinder's spring, as a share of its theoretical force (common practice, no source). */
    private static final double SPRING_SHARE = 0.1;

    /** A small valve of 1/8 inch (common practice, no source). */
    private static final double USUAL_NOMINAL_M3_PER_S = 0.3 / 60;

    /**
     * What moves.
     *
     * @param pullsBackN spring and weight, toward rest
     * @param frictionN of seals and hinges
     */
    record Moving(double massKg, double pullsBackN, double frictionN) {}

    /**
     * What the air flows through.
     *
     * @param in conductance to the side that is fed, m3/(s Pa)
     * @param outOfCap conductance out of the cap side: on its way back
     * @param outOfRod conductance out of the rod side: on its way out
     * @param deadM3 volume that the piston does not sweep, on each side
     * @param regulatedPaAbs highest pressure that its own regulator lets in
     */
    record Air(
            double in, double outOfCap, double outOfRod, double criticalRatio, double deadM3, double regulatedPaAbs) {}

    /** Whether the rig tells enough of a valve for this. */
    static boolean isToldBy(final Facts facts) {
        return facts.si(Fact.BORE).isPresent()
                && facts.si(Fact.TRAVEL).isPresent()
                && facts.si(Fact.MOVING_MASS).isPresent();
    }

    /** As the rig tells it, all throttles open but one that is told. */
    static CylinderForm of(final Output output, final double workingPa) {
        final Facts facts = output.facts();
        final double boreM = facts.siOr(Fact.BORE, 0);
        final Cylinder cylinder = new Cylinder(boreM, facts.siOr(Fact.ROD, boreM / 2.5), facts.siOr(Fact.TRAVEL, 0));
        final double gaugePa = Math.min(workingPa, facts.siOr(Fact.PRESSURE, workingPa));
        final Return onPowerLoss = output.rest().onPowerLoss().orElse(Return.SPRING_RETURNS);
        final boolean falls = onPowerLoss == Return.FALLS
                || output.rest().onAirLoss().equals(Optional.of(Return.FALLS))
                || facts.flag(Fact.LIFTS);
        final boolean isDouble = onPowerLoss == Return.AIR_DRIVES;
        final double pushN = cylinder.pushN(gaugePa);
        final double massKg = facts.siOr(Fact.MOVING_MASS, 0);
        final double springN = facts.siOr(Fact.SPRING, falls || isDouble ? 0 : SPRING_SHARE * pushN);
        final Moving moving = new Moving(
                massKg,
                springN + (falls ? massKg * Cylinder.GRAVITY_M_PER_S2 : 0),
                facts.siOr(Fact.FRICTION, CylinderMotion.SEAL_FRICTION_SHARE.middle() * pushN));
        return new CylinderForm(cylinder, moving, air(facts, cylinder, gaugePa), isDouble, onPowerLoss == Return.STAYS);
    }

    private static Air air(final Facts facts, final Cylinder cylinder, final double gaugePa) {
        final double b = facts.siOr(Fact.CRITICAL_RATIO, FlowPath.USUAL_CRITICAL_RATIO);
        final FlowPath valve = FlowPath.fromNominalFlow(facts.siOr(Fact.FLOW, USUAL_NOMINAL_M3_PER_S), b);
        final double hoseM3 =
                facts.si(Fact.HOSE).isPresent() && facts.si(Fact.HOSE_BORE).isPresent()
                        ? new Hose(facts.siOr(Fact.HOSE, 1), facts.siOr(Fact.HOSE_BORE, 1)).volumeM3()
                        : 0;
        final double throttled = facts.si(Fact.THROTTLE).isPresent()
                ? valve.inSeries(FlowPath.fromNominalFlow(facts.siOr(Fact.THROTTLE, 1), b))
                        .conductanceM3PerSPa()
                : valve.conductanceM3PerSPa();
        final double deadM3 = hoseM3 + DEAD_SHARE * cylinder.pushAreaM2() * cylinder.travelM();
        return new Air(
                valve.conductanceM3PerSPa(),
                throttled,
                valve.conductanceM3PerSPa(),
                b,
                deadM3,
                FreeAir.absolutePa(gaugePa));
    }

    CylinderForm with(final Air other) {
        return new CylinderForm(cylinder, moving, other, isDouble, isBlockedAtRest);
    }

    /** At rest, without pressure on the cap side; a double-acting one begins without any. */
    void begin(final double[] numbers, final int first) {
        numbers[first + AT_M] = 0;
        numbers[first + SPEED] = 0;
        numbers[first + LANDED] = 0;
        numbers[first + CAP_M3] = ATM * capM3(0) / Tank.ANR_PA;
        numbers[first + ROD_M3] = ATM * rodM3(0) / Tank.ANR_PA;
    }

    /**
     * Goes on by a small step, of second order: half the way, half the air, the push, the air, the other half of the way.
     * Returns what it took from the line, m3 ANR.
     */
    double advance(
            final double[] numbers, final int first, final boolean isOpen, final double linePa, final double stepS) {
        final double feedPa = Math.min(linePa, air.regulatedPaAbs);
        final double capPlacePa = isOpen ? feedPa : ATM;
        final double rodPlacePa = isOpen ? ATM : feedPa;
        final boolean isCapOpen = isOpen || !isBlockedAtRest;
        walk(numbers, first, stepS / 2);
        final double capM3 = numbers[first + CAP_M3];
        final double rodM3 = numbers[first + ROD_M3];
        final double capSpaceM3 = capM3(numbers[first + AT_M]);
        final double rodSpaceM3 = rodM3(numbers[first + AT_M]);
        if (isCapOpen) {
            numbers[first + CAP_M3] += gainM3(capPlacePa, capM3, capM3, capSpaceM3, air.outOfCap, stepS / 2);
        }
        if (isDouble) {
            numbers[first + ROD_M3] += gainM3(rodPlacePa, rodM3, rodM3, rodSpaceM3, air.outOfRod, stepS / 2);
        }
        push(numbers, first, stepS);
        final double capGainM3 =
                isCapOpen ? gainM3(capPlacePa, capM3, numbers[first + CAP_M3], capSpaceM3, air.outOfCap, stepS) : 0;
        final double rodGainM3 =
                isDouble ? gainM3(rodPlacePa, rodM3, numbers[first + ROD_M3], rodSpaceM3, air.outOfRod, stepS) : 0;
        numbers[first + CAP_M3] = capM3 + capGainM3;
        numbers[first + ROD_M3] = rodM3 + rodGainM3;
        walk(numbers, first, stepS / 2);
        return isOpen ? capGainM3 : rodGainM3;
    }

    /** Air in the cap and, where it is driven by air, on the rod side, m3 ANR. */
    double holdsM3(final double[] numbers, final int first) {
        return numbers[first + CAP_M3] + (isDouble ? numbers[first + ROD_M3] : 0);
    }

    double energyJ(final double[] numbers, final int first) {
        final double speed = numbers[first + SPEED];
        return moving.massKg * speed * speed / 2;
    }

    double landedJ(final double[] numbers, final int first) {
        final double speed = numbers[first + LANDED];
        return moving.massKg * speed * speed / 2;
    }

    /** Whether it stands, and what pushes it does not move it. */
    boolean isStill(final double[] numbers, final int first) {
        return numbers[first + SPEED] == 0 && pushed(numbers, first, forceN(numbers, first)) == 0;
    }

    double capPa(final double[] numbers, final int first) {
        return numbers[first + CAP_M3] * Tank.ANR_PA / capM3(numbers[first + AT_M]);
    }

    double rodPa(final double[] numbers, final int first) {
        return isDouble ? numbers[first + ROD_M3] * Tank.ANR_PA / rodM3(numbers[first + AT_M]) : ATM;
    }

    double capM3(final double atM) {
        return air.deadM3 + cylinder.pushAreaM2() * atM;
    }

    double rodM3(final double atM) {
        return air.deadM3 + cylinder.pullAreaM2() * (cylinder.travelM() - atM);
    }

    /**
     * What a side gains from a place: inward by the valve, outward no faster than its throttle, and never beyond even pressure.
     *
     * @param fromM3 what it held at the step's beginning
     * @param withM3 what it holds when the flow is looked at
     */
    private double gainM3(
            final double placePa,
            final double fromM3,
            final double withM3,
            final double spaceM3,
            final double out,
            final double stepS) {
        final double sidePa = withM3 * Tank.ANR_PA / spaceM3;
        final double conductance = placePa >= sidePa ? air.in : out;
        final double wantedM3 = FlowPath.massFlow(conductance, air.criticalRatio, placePa, sidePa, 1)
                / FreeAir.REFERENCE_KG_PER_M3
                * stepS;
        final double evenM3 = placePa * spaceM3 / Tank.ANR_PA - fromM3;
        return Math.abs(wantedM3) < Math.abs(evenM3) ? wantedM3 : evenM3;
    }

    private void push(final double[] numbers, final int first, final double stepS) {
        final double before = numbers[first + SPEED];
        final double speed = before + pushed(numbers, first, forceN(numbers, first)) / moving.massKg * stepS;
        // friction stops it and does not drive it back
        numbers[first + SPEED] = before != 0 && before * speed < 0 ? 0 : speed;
    }

    private void walk(final double[] numbers, final int first, final double stepS) {
        final double atM = numbers[first + AT_M] + numbers[first + SPEED] * stepS;
        if (atM <= 0 || atM >= cylinder.travelM()) {
            if (numbers[first + SPEED] != 0) {
                numbers[first + LANDED] = numbers[first + SPEED];
            }
            numbers[first + SPEED] = 0; // a stop that takes the energy
        }
        numbers[first + AT_M] = Math.max(0, Math.min(cylinder.travelM(), atM));
    }

    private double forceN(final double[] numbers, final int first) {
        return (capPa(numbers, first) - ATM) * cylinder.pushAreaM2()
                - (rodPa(numbers, first) - ATM) * cylinder.pullAreaM2()
                - moving.pullsBackN;
    }

    /** The force that is left after friction and stops. */
    private double pushed(final double[] numbers, final int first, final double forceN) {
        final double speed = numbers[first + SPEED];
        if (speed != 0) {
            return forceN - Math.signum(speed) * moving.frictionN;
        }
        final double atM = numbers[first + AT_M];
        final boolean isHeld = Math.abs(forceN) <= moving.frictionN
                || (forceN < 0 && atM <= 0)
                || (forceN > 0 && atM >= cylinder.travelM());
        return isHeld ? 0 : forceN - Math.signum(forceN) * moving.frictionN;
    }
}
