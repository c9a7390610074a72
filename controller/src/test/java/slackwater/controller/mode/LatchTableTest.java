package slackwater.controller.mode;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slackwater.controller.command.Request.Wants;
import slackwater.model.Mode;

/**
 * The two bistables of IEC 61131-3 (handbook 6.4, from memory) where this controller has them: a trip is set-dominant, so that no
 * reset overrules a cause that is there; a zone's wish is reset-dominant, so that no arm overrules a stand-down (S3, S11).
 */
class LatchTableTest {
    private static Stream<String> table() {
        return Stream.of(
                "6.4.1 S=0 R=0 Qprev=0: SR=0 RS=0",
                "6.4.2 S=0 R=0 Qprev=1: SR=1 RS=1",
                "6.4.3 S=1 R=0 Qprev=0: SR=1 RS=1",
                "6.4.4 S=0 R=1 Qprev=1: SR=0 RS=0",
                "6.4.5 S=1 R=1 Qprev=0: SR=1 RS=0",
                "6.4.6 S=1 R=1 Qprev=1: SR=1 RS=0");
    }

    private static boolean is(final String row, final String name) {
        return row.contains(name + "1");
    }

    /** S is the jam, R the release of the reset button; both come through equal filters into one scan. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("table")
    void aTripIsSetDominant(final String row) {
        final TestYard yard = TestRigs.ready();
        if (is(row, " Qprev=")) {
            yard.set("jam", true).scan(600).set("jam", false).scan(600);
        }
        assertThat(yard.refusing("lid").contains("jammed")).isEqualTo(is(row, " Qprev="));
        yard.set("reset", is(row, " R=")).scan(300);

        yard.set("jam", is(row, " S=")).set("reset", false).scan(600);

        assertThat(yard.refusing("lid").contains("jammed")).isEqualTo(is(row, " SR="));
    }

    /** S is an arm, R a stand-down, both sent before one scan. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("table")
    void aZonesWishIsResetDominant(final String row) {
        final TestYard yard = TestRigs.ready();
        if (is(row, " Qprev=")) {
            yard.ask(Wants.ARM, "front").scan(9_000);
        }
        if (is(row, " S=")) {
            yard.send(Wants.ARM, "front", "Maren", "");
        }
        if (is(row, " R=")) {
            yard.scanner().commandDesk().standDown("front");
        }

        yard.scan(9_000);

        assertThat(yard.mode("front")).isEqualTo(is(row, " RS=") ? Mode.ARMED : Mode.RESTING);
    }

    /** ISO 13850, handbook 6.5 case 5. */
    @Test
    @DisplayName("6.5.5 a reset permits a restart and starts nothing")
    void aResetPermitsARestartAndStartsNothing() {
        final TestYard yard = TestRigs.armed()
                .set("stop-loop", false)
                .scan(300)
                .set("stop-loop", true)
                .scan(300);
        assertThat(yard.mode("front")).isEqualTo(Mode.STOPPED);

        yard.press("reset", 100).set("path", true).scan(20_000);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        for (final String output : new String[] {"air", "lid", "mist", "heater", "fan", "glow", "horn"}) {
            assertThat(yard.isEnergised(output)).as(output).isFalse();
        }

        yard.ask(Wants.ARM, "front").scan(9_000);
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);
    }
}
