package slackwater.model.event;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slackwater.model.Mode;

/** Every event and refusal in the words that a person reads, whole. */
class EventTextsTest {
    private static final long AT_NS = 3_000_000_000L;

    @ParameterizedTest
    @CsvSource({
        "0, 0 ms",
        "999999, 0 ms",
        "1000000, 1 ms",
        "250000000, 250 ms",
        "999000000, 999 ms",
        "1000000000, 1 s",
        "1040000000, 1.0 s",
        "2500000000, 2.5 s",
        "59000000000, 59 s",
        "60000000000, 1 min",
        "61000000000, 1 min 1 s",
        "200000000000, 3 min 20 s",
        "3599000000000, 59 min 59 s",
        "3600000000000, 1 h 0 min",
        "3900000000000, 1 h 5 min",
        "90000000000000, 25 h 0 min",
    })
    void lengthsReadAsPeopleSayThem(final long lengthNs, final String text) {
        assertThat(Spans.text(lengthNs)).isEqualTo(text);
    }

    @Test
    void justBelowAMinuteIsStillInSeconds() {
        assertThat(Spans.text(59_940_000_000L)).isEqualTo("59.9 s");
        assertThat(Spans.text(59_999_000_000L)).isEqualTo("59.9 s");
        assertThat(Spans.text(1_999_000_000L)).isEqualTo("1.9 s");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0:00:00.000",
        "999999, 0:00:00.000",
        "1000000, 0:00:00.001",
        "59999000000, 0:00:59.999",
        "60000000000, 0:01:00.000",
        "3599999000000, 0:59:59.999",
        "3723450000000, 1:02:03.450",
        "90000000000000, 25:00:00.000",
    })
    void momentsReadAsAClock(final long atNs, final String text) {
        assertThat(Spans.moment(atNs)).isEqualTo(text);
    }

    @Test
    void everyEventSaysWhatHappenedInOneLine() {
        assertText(new Event.Switched(AT_NS, "lid", true), "lid energised");
        assertText(new Event.Switched(AT_NS, "lid", false), "lid at rest");
        assertText(new Event.Limited(AT_NS, "lid", "longest-on"), "lid ended by its longest-on");
        assertText(new Event.CueStarted(AT_NS, "greet", "path"), "cue greet started by path");
        assertText(new Event.CueEnded(AT_NS, "greet", "whole"), "cue greet ended: whole");
        assertText(new Event.StartLost(AT_NS, "greet", "hold-off"), "cue greet not started: hold-off");
        assertText(
                new Event.ModeChanged(AT_NS, "front", Mode.RESTING, Mode.LOCKED_OUT, "latches and wishes"),
                "zone front RESTING -> LOCKED_OUT: latches and wishes");
        assertText(new Event.Latched(AT_NS, "stop", "stop was sent"), "stop latched: stop was sent");
        assertText(new Event.Cleared(AT_NS, "lockout of lid", "Ole"), "lockout of lid cleared by Ole");
        assertText(new Event.Commanded(AT_NS, "arm front by Ole", true, ""), "arm front by Ole taken");
        assertText(
                new Event.Commanded(AT_NS, "arm front by Ole", false, "zone front is stopped"),
                "arm front by Ole refused: zone front is stopped");
        assertText(
                new Event.InputDoubted(AT_NS, "path", true, "active for too long"),
                "path not believed: active for too long");
        assertText(new Event.InputDoubted(AT_NS, "path", false, "it moved"), "path believed again: it moved");
        assertText(new Event.Dropped(AT_NS, 12), "12 records dropped");
    }

    @Test
    void aRefusalSaysWhoWhyForHowLongAndWhatClearsIt() {
        final Refusal refusal =
                new Refusal("lid", "reach-clear", "curtain has been active", 500_000_000L, "curtain is inactive");
        final String whole = "lid may not: \"reach-clear\" refuses because curtain has been active for 2.5 s; "
                + "clears when curtain is inactive";

        assertThat(refusal.text(AT_NS)).isEqualTo(whole);
        assertText(new Event.Refused(AT_NS, refusal), whole);
    }

    private static void assertText(final Event event, final String text) {
        assertThat(event.text()).isEqualTo(text);
        assertThat(event.atNs()).isEqualTo(AT_NS);
    }
}
