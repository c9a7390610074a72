package slackwater.simulator.yard;

import slackwater.model.Facts;
import slackwater.model.Output;
import slackwater.model.Return;

/**
 * A valve with a moving part, from 0 at rest to 1 at the end of its travel. A stroke with a stated time runs at one speed, as
 * a cylinder with throttled exhaust does; a part that falls with no stated time falls freely, which is the harder case (S1).
 */
final class Stroke implements Prop {
    private static final long HOLDING = 0;
    private static final long OUT = 1;
    private static final long BACK = -1;
    private static final double USUAL_STROKE_S = 0.5;

    private final int output;
    private final AirSection air;
    private final Return onPowerLoss;
    private final Return onAirLoss;
    private final double massKg;
    private final double travelM;
    private final double strokesInS;
    private final double returnsInS;
    private final boolean fallsFreely;
    private final double freeAirM3;
    private final int basePosition;
    private final int position;
    private final int landedJ;
    private final int sinceNs;
    private final int direction;

    Stroke(final int output, final Output of, final AirSection air, final Slots slots) {
        final Facts facts = of.facts();
        this.output = output;
        this.air = air;
        onPowerLoss = of.rest().onPowerLoss().orElse(Return.SPRING_RETURNS);
        onAirLoss = of.rest().onAirLoss().orElse(onPowerLoss);
        massKg = facts.siOr(Fact.MOVING_MASS, 0);
        travelM = facts.siOr(Fact.TRAVEL, 0);
        strokesInS = Fact.secondsOr(facts, Fact.STROKES_IN, USUAL_STROKE_S);
        returnsInS = Fact.secondsOr(facts, Fact.RETURNS_IN, strokesInS);
        fallsFreely = facts.duration(Fact.RETURNS_IN).isEmpty()
                && (onPowerLoss == Return.FALLS || onAirLoss == Return.FALLS)
                && travelM > 0;
        freeAirM3 = facts.siOr(Fact.AIR_PER_STROKE, 0);
        basePosition = slots.takeReals(1);
        position = slots.takeReals(1);
        landedJ = slots.takeReals(1);
        sinceNs = slots.takeWholes(1);
        direction = slots.takeWholes(1);
    }

    /** Whether an output's own keys speak of anything that moves. */
    static boolean isToldBy(final Facts facts) {
        return facts.si(Fact.TRAVEL).isPresent()
                || facts.si(Fact.MOVING_MASS).isPresent()
                || facts.duration(Fact.STROKES_IN).isPresent();
    }

    /** From 0 at rest to 1 at the end of the travel. */
    double position(final State state) {
        return state.real(position);
    }

    @Override
    public void step(final State state) {
        final boolean wasMoving = isMoving(state);
        state.setReal(position, positionNow(state));
        if (wasMoving && !isMoving(state)) {
            state.setReal(landedJ, arrivesJ(state));
        }
        final long wanted = wantedDirection(state);
        if (wanted != state.whole(direction)) {
            state.setReal(basePosition, state.real(position));
            state.setWhole(sinceNs, state.nowNs());
            state.setWhole(direction, wanted);
            if (wanted == OUT || (wanted == BACK && isDrivenBack(state))) {
                air.draw(state, freeAirM3);
            }
        }
    }

    @Override
    public long wakesNs(final State state) {
        return isMoving(state) ? state.nowNs() : ASLEEP;
    }

    @Override
    public boolean isMoving(final State state) {
        final long going = state.whole(direction);
        return (going == OUT && state.real(position) < 1) || (going == BACK && state.real(position) > 0);
    }

    @Override
    public double energyJ(final State state) {
        if (!isMoving(state)) {
            return 0;
        }
        if (state.whole(direction) == BACK && fallsFreely) {
            return massKg * GRAVITY * travelM * (state.real(basePosition) - state.real(position));
        }
        final double speedMps = travelM / (state.whole(direction) == OUT ? strokesInS : returnsInS);
        return massKg * speedMps * speedMps / 2;
    }

    @Override
    public double landedJ(final State state) {
        return state.real(landedJ);
    }

    /** What it has when it arrives: in a free fall what its height gave, else that of its even speed. */
    private double arrivesJ(final State state) {
        if (state.whole(direction) == BACK && fallsFreely) {
            return massKg * GRAVITY * travelM * state.real(basePosition);
        }
        final double speedMps = travelM / (state.whole(direction) == OUT ? strokesInS : returnsInS);
        return massKg * speedMps * speedMps / 2;
    }

    private double positionNow(final State state) {
        final double fromShare = state.real(basePosition);
        final double goneS = state.secondsSince(state.whole(sinceNs));
        if (state.whole(direction) == OUT) {
            return Math.min(1, fromShare + goneS / strokesInS);
        }
        if (state.whole(direction) == BACK) {
            final double fallen = fallsFreely ? GRAVITY * goneS * goneS / 2 / travelM : goneS / returnsInS;
            return Math.max(0, fromShare - fallen);
        }
        return fromShare;
    }

    private long wantedDirection(final State state) {
        final boolean hasAir = air.hasEnough(state);
        if (state.isOn(output)) {
            return hasAir ? OUT : direction(onAirLoss, false);
        }
        return direction(hasAir ? onPowerLoss : weaker(), hasAir);
    }

    /** Without power and without air a part stays only where both say that it does. */
    private Return weaker() {
        return onAirLoss == Return.STAYS || onAirLoss == Return.AIR_DRIVES ? onPowerLoss : onAirLoss;
    }

    private static long direction(final Return how, final boolean hasAir) {
        return switch (how) {
            case SPRING_RETURNS, FALLS -> BACK;
            case AIR_DRIVES -> hasAir ? BACK : HOLDING;
            case STAYS -> HOLDING;
        };
    }

    private boolean isDrivenBack(final State state) {
        return onPowerLoss == Return.AIR_DRIVES && air.hasEnough(state) && state.real(position) > 0;
    }
}
