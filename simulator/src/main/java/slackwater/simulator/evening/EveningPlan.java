package slackwater.simulator.evening;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import slackwater.controller.cue.CueCode;
import slackwater.model.Place;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.calendar.ShowCalendar;
import slackwater.model.calendar.ShowCalendar.Window;
import slackwater.simulator.report.Recording;
import slackwater.simulator.visitor.Crowd;

/**
 * One evening to be run.
 *
 * @param lasts how long, from {@code startEpochMs}
 * @param crowd who comes
 * @param recorded inputs from a recording in place of the yard's, where there is one
 * @param skipsQuiet whether quiet scans are passed over; same digest either way
 */
public record EveningPlan(
        Rig rig,
        Show show,
        List<CueCode> codes,
        long seed,
        long startEpochMs,
        Duration lasts,
        Crowd crowd,
        Optional<Recording> recorded,
        boolean skipsQuiet) {

    /** The date of an evening that nobody gave a date: the last one of summer time in 2026 in much of Europe. */
    private static final Instant USUAL_DAY = Instant.parse("2026-10-24T12:00:00Z");

    /** Before heaters may warm, so that the keeper can open. */
    private static final Duration BEFORE_WARMING = Duration.ofMinutes(3);

    /** A keeper without a schedule has armed by then: sensors are warm after a minute, and some seconds on top. */
    private static final Duration BY_HAND = Duration.ofSeconds(80);

    /** Where there is no schedule, the evening begins here. */
    private static final Instant USUAL_START = Instant.parse("2026-10-24T17:00:00Z");

    /** When an evening of this show begins: a little before its heaters may warm, or at a usual hour. */
    public static long startOf(final Rig rig, final Show show) {
        return window(rig, show)
                .map(window -> window.warmsMs() - BEFORE_WARMING.toMillis())
                .orElse(USUAL_START.toEpochMilli());
    }

    /** How long after its start an evening opens: the schedule's opening, or the keeper's own by hand. */
    public static Duration opensAfter(final Rig rig, final Show show, final long startMs) {
        return window(rig, show)
                .map(window -> Duration.ofMillis(Math.max(0, window.opensMs() - startMs)))
                .orElse(BY_HAND);
    }

    /** The schedule's window on the usual day. */
    private static Optional<Window> window(final Rig rig, final Show show) {
        final Optional<Place> place = rig.place();
        return show.schedule()
                .flatMap(schedule -> place.map(at -> new ShowCalendar(schedule, at)))
                .flatMap(calendar -> calendar.windowAfter(USUAL_DAY.toEpochMilli()));
    }

    /** The window that opens during this evening. */
    Optional<Window> opening() {
        return show.schedule()
                .flatMap(schedule -> rig.place().map(at -> new ShowCalendar(schedule, at)))
                .flatMap(calendar -> calendar.windowAfter(startEpochMs));
    }
}
