package slackwater.simulator.yard;

/**
 * Chance without state: a number follows from the seed and from what it is drawn for, so that one more sensor leaves the
 * draws of all others as they were (S22). The mixing is the finalizer of SplitMix64 (Steele, Lea, Flood 2014).
 */
final class Draw {
    private Draw() {}

    /** A number in [0, 1) for the purpose, the thing and its how-manieth draw. */
    static double unit(final long seed, final Purpose purpose, final long thing, final long turn) {
        final long mixed = mix(mix(mix(seed) + purpose.salt + thing) + turn);
        return (mixed >>> 11) * 0x1.0p-53;
    }

    static long mix(final long value) {
        final long next = value + 0x9E3779B97F4A7C15L;
        final long once = (next ^ (next >>> 30)) * 0xBF58476D1CE4E5B9L;
        final long twice = (once ^ (once >>> 27)) * 0x94D049BB133111EBL;
        return twice ^ (twice >>> 31);
    }

    /** What is drawn; the salts keep the streams apart. */
    enum Purpose {
        FALSE_PULSES(0x1_0000_0000L),
        FOG(0x2_0000_0000L),
        RAIN(0x3_0000_0000L),
        WIND(0x4_0000_0000L),
        FALSE_TRIGGERS(0x5_0000_0000L);

        private final long salt;

        Purpose(final long salt) {
            this.salt = salt;
        }
    }
}
