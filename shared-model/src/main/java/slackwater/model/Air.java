package slackwater.model;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The compressed-air store.
 *
 * @param tankM3 volume
 * @param cutInPa the compressor starts below this gauge pressure
 * @param cutOutPa and stops above this
 * @param deliveryM3PerS free air delivered, at 1.01325 bar
 * @param workingPa gauge pressure behind the regulator
 * @param plate what else its plate and the builder tell
 */
public record Air(
        double tankM3, double cutInPa, double cutOutPa, double deliveryM3PerS, double workingPa, Plate plate) {

    /**
     * What may be left out.
     *
     * @param flowM3PerS nominal flow (6 to 5 bar gauge) of regulator and line up to the banks, ANR
     * @param leakM3PerS free air lost while the tank stands at cut-out and nothing moves
     * @param starts the most starts of the compressor
     * @param duty the largest share of the time in which it may run
     * @param load what its motor draws
     */
    public record Plate(
            OptionalDouble flowM3PerS,
            OptionalDouble leakM3PerS,
            Optional<Limits.Starts> starts,
            OptionalDouble duty,
            Load load) {
        public static final Plate UNSAID = new Plate(
                OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty(), Load.NONE);
    }

    /** A store of which only the five figures of its plate are told. */
    public Air(
            final double tankM3,
            final double cutInPa,
            final double cutOutPa,
            final double deliveryM3PerS,
            final double workingPa) {
        this(tankM3, cutInPa, cutOutPa, deliveryM3PerS, workingPa, Plate.UNSAID);
    }
}
