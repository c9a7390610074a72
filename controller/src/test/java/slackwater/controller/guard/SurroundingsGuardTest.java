package slackwater.controller.guard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slackwater.controller.plan.LogicBench;
import slackwater.controller.plan.ScanBench;
import slackwater.model.Mode;
import slackwater.model.event.Event;

/** The mode table refuses first, and a latched trip after it, each in whole words (S11, S15). */
class SurroundingsGuardTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            STOPPED    | stopped    | the stop is released, a reset button is pressed and let go, and zone bay is armed
            FAULTED    | faulted    | the cause is gone, a reset button is pressed and let go, and zone bay is armed
            LOCKED_OUT | locked out | everybody has taken their lock off, and zone bay is armed
            BENCH      | bench      | zone bay leaves the bench and is armed
            WARNING    | warning    | the warning is over
            RESTING    | resting    | zone bay is armed
            """)
    void theRefusalOfEachModeSaysWhatEndsIt(final Mode mode, final String words, final String clears) {
        final LogicBench bench = LogicBench.of("""
                [zone.bay]
                [output.air]
                kind = "air-supply"
                zone = "bay"
                """).mode(mode).until(40);

        assertThat(bench.whyNot("air"))
                .containsExactly("air may not: \"mode\" refuses because in zone bay it has been " + words
                        + " for 40 ms; clears when " + clears);
    }

    @Test
    void aRefusalInArmedModeWouldSayThatTheZoneMustAllowIt() {
        final LogicBench bench = LogicBench.of("""
                [zone.bay]
                [output.lamp]
                kind = "lamp"
                zone = "bay"
                """).step();
        final SurroundingsGuard guard = new SurroundingsGuard(bench.plan().places(), new Never());

        assertThat(guard.permits(bench.run(), bench.image(), 0)).isFalse();
        assertThat(guard.refusal(bench.run(), bench.image(), 0).text(7_000_000L))
                .isEqualTo("lamp may not: \"mode\" refuses because in zone bay it has been armed for 4 ms;"
                        + " clears when zone bay allows it");
    }

    private static final class Never implements SurroundingsGuard.Surroundings {
        @Override
        public boolean allows(
                final slackwater.controller.run.RunState run,
                final slackwater.controller.image.Image image,
                final int output) {
            return false;
        }

        @Override
        public long sinceNs(final slackwater.controller.run.RunState run, final int output) {
            return 3_000_000L;
        }
    }

    @Test
    void whatTheModeAllowsIsNotRefused() {
        final LogicBench bench = LogicBench.of("""
                [output.air]
                kind = "air-supply"
                [output.lamp]
                kind = "lamp"
                """).mode(Mode.WARNING).step();

        assertThat(bench.whyNot("lamp")).isEmpty();
        assertThat(bench.whyNot("air")).hasSize(1);
    }

    private static final String TRAY = """
            [input.key]
            kind = "key"
            use = "arm"
            active-after = "0 s"
            inactive-after = "0 s"
            [input.reset]
            kind = "button"
            use = "reset"
            active-after = "0 s"
            inactive-after = "0 s"
            [input.path]
            kind = "motion"
            active-after = "0 s"
            inactive-after = "0 s"
            [input.water]
            kind = "level"
            active-after = "0 s"
            inactive-after = "0 s"
            [input.hatch]
            kind = "motion"
            active-after = "0 s"
            inactive-after = "0 s"
            [output.mist]
            kind = "mister"
            longest-on = "30 s"
            [output.lamp]
            kind = "lamp"
            [trip.tray-dry]
            outputs = ["mist"]
            when = ["not water", "hatch"]
            begun = "%s"
            """;
    private static final String SPRAY = """
            [cue.spray]
            starts = "path"
            steps = [ { energise = ["mist", "lamp"], for = "20 s" } ]
            """;

    private static ScanBench tray(final String begun) {
        return ScanBench.of(TRAY.formatted(begun), SPRAY)
                .high("water")
                .step()
                .high("key")
                .step();
    }

    @Test
    void aTripLatchesWithoutAnyDemandAndRefusesUntilAResetAndALaterArm() {
        final ScanBench bench =
                tray("rest").until(1_000).high("hatch").step().low("water").step();
        assertThat(bench.said(Event.Latched.class)).containsExactly("1020: trip tray-dry latched: not water and hatch");

        bench.high("water").until(2_000).high("path").until(2_500).low("path").step();
        assertThat(bench.strokes("mist")).isZero();
        assertThat(bench.isHigh("lamp")).as("its neighbour plays on").isTrue();
        assertThat(bench.whyNot("mist"))
                .containsExactly(
                        "mist may not: \"mode\" refuses because in zone yard it has been faulted for 2.5 s; clears when"
                                + " the cause is gone, a reset button is pressed and let go, and zone yard is armed",
                        "mist may not: \"tray-dry\" refuses because it has been tripped by not water and hatch for"
                                + " 1.4 s; clears when the cause is gone, a reset button is pressed and let go, and zone"
                                + " yard is armed");

        bench.high("reset").step().low("reset").step();
        assertThat(bench.whyNot("mist")).as("reset, but not armed anew").hasSize(1);
        bench.low("key").step().high("key").until(30_000).high("path").step();
        assertThat(bench.isHigh("mist")).isTrue();
    }

    @Test
    void aTripRestsWhatIsEnergised() {
        final ScanBench bench = tray("rest")
                .high("path")
                .until(1_000)
                .high("hatch")
                .low("water")
                .step();

        assertThat(bench.isHigh("mist")).isFalse();
        assertThat(bench.high("water").until(15_000).strokes("mist")).isOne();
    }

    @Test
    void aTripThatLetsAStrokeFinishRefusesTheNext() {
        final ScanBench bench = tray("finish")
                .high("path")
                .until(1_000)
                .low("path")
                .high("hatch")
                .low("water");
        assertThat(bench.until(19_000).isHigh("mist")).isTrue();
        assertThat(bench.until(21_000).isHigh("mist")).isFalse();

        assertThat(bench.high("path").until(22_000).isHigh("mist")).isFalse();
        assertThat(bench.isHigh("lamp")).isTrue();
    }
}
