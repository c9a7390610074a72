package slackwater.controller.cue;

/**
 * Seeded draws without a generator to carry along: each is a pure function of (seed, cue, start, step), so that adding a cue
 * leaves the draws of all others as they were (S22).
 */
final class Draws {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private final long stream;

    Draws(final long seed, final String cue) {
        long hash = seed;
        for (int i = 0; i < cue.length(); i++) {
            hash = mix(hash + GOLDEN + cue.charAt(i));
        }
        stream = hash;
    }

    /** A number from 0 to {@code most}, both included. */
    long upTo(final long most, final long start, final int step) {
        final long bits = mix(mix(stream + GOLDEN * start) + GOLDEN * step) >>> 1;
        return most == Long.MAX_VALUE ? bits : bits % (most + 1);
    }

    /** The finalizer of SplitMix64 (Steele, Lea, Flood: Fast Splittable Pseudorandom Number Generators, 2014). */
    private static long mix(final long bits) {
        final long a = (bits ^ bits >>> 30) * 0xBF58476D1CE4E5B9L;
        final long b = (a ^ a >>> 27) * 0x94D049BB133111EBL;
        return b ^ b >>> 31;
    }
}
