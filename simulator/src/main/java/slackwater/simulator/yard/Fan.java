package slackwater.simulator.yard;

import java.util.Optional;
import slackwater.model.Output;
import slackwater.model.Point;

/**
 * A fan, as far as it drives fog away while it runs: straight away from where it stands, or with the wind where that is not told.
 *
 * @param speedMPerS what its air has slowed down to where the fog is
 */
record Fan(int output, String zone, Optional<Point> at, double speedMPerS) {
    /** A hundred cubic feet a minute (a guess). */
    private static final double USUAL_AIR_M3_PER_S = 0.0472;

    /** Its air has spread to so much when it meets the fog (a guess). */
    private static final double SPREADS_TO_M2 = 0.1;

    static Fan of(final int index, final Output fan) {
        final double airM3PerS = fan.facts().siOr(Fact.AIR, USUAL_AIR_M3_PER_S);
        return new Fan(index, fan.zone(), fan.at(), airM3PerS / SPREADS_TO_M2);
    }

    /** Where it blows something to, radians counter-clockwise from x. */
    double towardsRad(final double xM, final double yM, final double windTowardsRad) {
        return at.map(from -> StrictMath.atan2(yM - from.yM(), xM - from.xM())).orElse(windTowardsRad);
    }
}
