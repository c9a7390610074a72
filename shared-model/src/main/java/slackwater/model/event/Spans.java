package slackwater.model.event;

import java.util.Locale;

/** Lengths and moments of time as people read them. */
public final class Spans {
    private static final long NS_PER_MS = 1_000_000L;
    private static final long MS_PER_S = 1_000L;
    private static final long MS_PER_TENTH = 100L;
    private static final long S_PER_MIN = 60L;
    private static final long MIN_PER_H = 60L;

    private Spans() {}

    /** A length such as {@code 250 ms}, {@code 2.5 s}, {@code 3 min 20 s} or {@code 1 h 5 min}. */
    public static String text(final long lengthNs) {
        final long ms = lengthNs / NS_PER_MS;
        if (ms < MS_PER_S) {
            return ms + " ms";
        }
        final long s = ms / MS_PER_S;
        if (s < S_PER_MIN) {
            return ms % MS_PER_S == 0 ? s + " s" : s + "." + ms % MS_PER_S / MS_PER_TENTH + " s"; // never "60.0 s"
        }
        final long min = s / S_PER_MIN;
        if (min < MIN_PER_H) {
            return s % S_PER_MIN == 0 ? min + " min" : min + " min " + s % S_PER_MIN + " s";
        }
        return min / MIN_PER_H + " h " + min % MIN_PER_H + " min";
    }

    /** A moment of a run such as {@code 1:02:03.450}. */
    public static String moment(final long atNs) {
        final long ms = atNs / NS_PER_MS;
        final long s = ms / MS_PER_S;
        return String.format(
                Locale.ROOT,
                "%d:%02d:%02d.%03d",
                s / (S_PER_MIN * MIN_PER_H),
                s / S_PER_MIN % MIN_PER_H,
                s % S_PER_MIN,
                ms % MS_PER_S);
    }
}
