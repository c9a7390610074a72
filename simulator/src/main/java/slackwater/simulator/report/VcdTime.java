package slackwater.simulator.report;

import java.io.IOException;
import java.math.BigInteger;
import java.util.List;

/**
 * The unit of time of a waveform file: 1, 10 or 100 of s, ms, us, ns, ps or fs (IEEE 1364-2005, 18.2.3.8).
 *
 * @param timesNs nanoseconds a unit, for a nanosecond and longer
 * @param perNs units a nanosecond, for shorter ones
 */
record VcdTime(long timesNs, long perNs) {
    /** Before a file has said it. */
    static final VcdTime UNSAID = new VcdTime(0, 0);

    private static final List<String> UNITS = List.of("fs", "ps", "ns", "us", "ms", "s");
    private static final int NS_EXPONENT = -9;
    private static final int FS_EXPONENT = -15;

    boolean isSaid() {
        return timesNs > 0;
    }

    /** Reads {@code 10 us $end} or {@code 10us $end}. */
    static VcdTime read(final VcdTokens tokens) throws IOException, VcdException {
        final StringBuilder text = new StringBuilder();
        String word = tokens.within("$timescale");
        while (!word.equals("$end")) {
            text.append(word);
            word = tokens.within("$timescale");
        }
        final String all = text.toString();
        final int digits = all.startsWith("100") ? 3 : all.startsWith("10") ? 2 : 1;
        final int unit = all.startsWith("1") ? UNITS.indexOf(all.substring(digits)) : -1;
        if (unit < 0) {
            throw tokens.mistake(
                    "timescale \"" + VcdReader.shown(all) + "\" is not known",
                    "use 1, 10 or 100 of s, ms, us, ns, ps or fs");
        }
        final int exponent = FS_EXPONENT + 3 * unit + digits - 1 - NS_EXPONENT;
        return exponent >= 0 ? new VcdTime(power(exponent), 1) : new VcdTime(1, power(-exponent));
    }

    /** A time of the file in nanoseconds, rounded down. */
    long toNs(final String units, final VcdTokens tokens) throws VcdException {
        if (units.isEmpty() || !units.chars().allMatch(each -> each >= '0' && each <= '9')) {
            throw tokens.mistake("\"#" + VcdReader.shown(units) + "\" is no time", "record the file again");
        }
        final BigInteger atNs =
                new BigInteger(units).multiply(BigInteger.valueOf(timesNs)).divide(BigInteger.valueOf(perNs));
        if (atNs.bitLength() >= Long.SIZE) {
            throw tokens.mistake("time #" + VcdReader.shown(units) + " is out of range", "check the $timescale");
        }
        return atNs.longValue();
    }

    private static long power(final int exponent) {
        long value = 1;
        for (int count = 0; count < exponent; count++) {
            value *= 10;
        }
        return value;
    }
}
