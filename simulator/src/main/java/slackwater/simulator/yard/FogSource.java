package slackwater.simulator.yard;

import java.util.function.Predicate;
import slackwater.model.Point;

/**
 * Where fog or mist leaves.
 *
 * @param at on the plan
 * @param zone the fans of the same zone blow on it
 * @param kgPerS droplets that leave it
 * @param extinctionM2PerKg how much light a mass of its droplets takes away
 * @param isBlowing whether it does now
 */
record FogSource(Point at, String zone, double kgPerS, double extinctionM2PerKg, Predicate<State> isBlowing) {
    /** Droplets of about 1 um: 3 Q / (2 rho d) with an extinction efficiency Q of 2 (from memory). */
    private static final double FOG_M2_PER_KG = 3_000;

    /** Droplets of about 3 um (handbook 2.5 case 7), by the same formula. */
    private static final double MIST_M2_PER_KG = 1_000;

    /** The glycol stays as droplets and keeps about its own mass of water; the rest evaporates (a guess). */
    private static final double DROPLETS_PER_GLYCOL = 2;

    static FogSource of(final Point at, final String zone, final FogPump pump, final Predicate<State> isHot) {
        final double share = Math.min(1, DROPLETS_PER_GLYCOL * pump.fluid().glycolShare());
        return new FogSource(
                at,
                zone,
                share * pump.flowKgPerS(),
                FOG_M2_PER_KG,
                state -> pump.isFlowing(state) && isHot.test(state));
    }

    static FogSource of(final Point at, final String zone, final WaterTray tray) {
        return new FogSource(at, zone, tray.mistKgPerS(), MIST_M2_PER_KG, tray::isMisting);
    }
}
