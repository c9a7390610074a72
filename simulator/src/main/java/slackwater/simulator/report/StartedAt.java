package slackwater.simulator.report;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import slackwater.model.event.Spans;

/** The wall time at a run's start, where one is known: it turns moments of the run into local clock times. */
public final class StartedAt {
    /** A run that began at no particular time: moments count from its start. */
    public static final StartedAt UNKNOWN = new StartedAt(Optional.empty());

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);
    private static final int NS_PER_S = 1_000_000_000;

    private final Optional<ZonedDateTime> start;

    private StartedAt(final Optional<ZonedDateTime> start) {
        this.start = start;
    }

    /** A run that began at this instant, in the rig's own time zone. */
    public static StartedAt of(final Instant instant, final ZoneId zone) {
        return new StartedAt(Optional.of(instant.atZone(zone)));
    }

    /** A moment of the run as {@code 19:42:10}, or {@code 1:02:03.450} after a start that is not known. */
    public String moment(final long atNs) {
        return start.map(begin -> begin.plusNanos(atNs).format(CLOCK)).orElseGet(() -> Spans.moment(atNs));
    }

    /** Date and time of the start, or an empty text. */
    public String text() {
        return start.map(begin -> begin.format(DAY)).orElse("");
    }

    /** Whether there is a clock time at all. */
    public boolean isKnown() {
        return start.isPresent();
    }

    /** Nanoseconds since local midnight at the start, so that an axis can tick at round clock times; 0 if unknown. */
    long sinceMidnightNs() {
        return start.map(begin -> begin.toLocalTime().toNanoOfDay()).orElse(0L);
    }

    /** A label for an axis whose ticks are so far apart. */
    String tick(final long atNs, final long stepNs) {
        final String whole = start.isPresent() ? moment(atNs) : elapsed(atNs);
        return stepNs % (60L * NS_PER_S) == 0 ? whole.substring(0, whole.length() - 3) : whole;
    }

    private static String elapsed(final long atNs) {
        final long s = atNs / NS_PER_S;
        return String.format(Locale.ROOT, "%d:%02d:%02d", s / 3600, s / 60 % 60, s % 60);
    }
}
