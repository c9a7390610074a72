package slackwater.controller.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.model.event.Event;

/** One controller's part of a rig. */
class PlanTest {
    private static final String BANKS = """
            [controller.north]
            board = "pi-4"
            [controller.south]
            board = "pi-4"
            [zone.north]
            [zone.south]
            [arming]
            warning = "0 s"
            [input.north-key]
            kind = "key"
            use = "arm"
            zone = "north"
            controller = "north"
            [input.south-key]
            kind = "key"
            use = "arm"
            zone = "south"
            controller = "south"
            [input.north-path]
            kind = "motion"
            zone = "north"
            controller = "north"
            [input.south-path]
            kind = "motion"
            zone = "south"
            controller = "south"
            [output.north-lid]
            kind = "valve"
            zone = "north"
            controller = "north"
            on-power-loss = "spring-returns"
            longest-on = "2 s"
            [output.south-lid]
            kind = "valve"
            zone = "south"
            controller = "south"
            on-power-loss = "spring-returns"
            longest-on = "2 s"
            """;
    private static final String NORTH_SHOW = """
            [cue.north-greet]
            zone = "north"
            starts = "north-path"
            hold-off = "3 s"
            steps = [ { pause = "0.1 s", vary = "1 s" }, { energise = "north-lid", for = "0.5 s", vary = "1 s" } ]
            """;
    private static final String SOUTH_SHOW = """
            [cue.south-greet]
            zone = "south"
            priority = 9
            starts = "south-path"
            steps = [ { energise = "south-lid", for = "0.5 s", vary = "1 s" } ]
            """;

    private static Plan plan(final String show, final String controller) {
        final RigText text = RigText.of(BANKS, show);
        return Plan.compile(text.rig(), text.show(), controller, Options.plain(1));
    }

    @Test
    void aControllerThatTheRigDoesNotHaveIsAProgrammersMistake() {
        assertThatThrownBy(() -> plan("", "west"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the rig has no controller=west");
    }

    @Test
    void anInterlockOnAnotherControllersInputIsAProgrammersMistake() {
        final RigText text = RigText.of(BANKS + """
                [permissive.far]
                outputs = ["north-lid"]
                needs = ["south-path"]
                begun = "rest"
                """, "");

        assertThatThrownBy(() -> Plan.compile(text.rig(), text.show(), "north", Options.plain(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("input=south-path is not on controller=north");
    }

    @Test
    void anInterlockOfOtherControllersOutputsIsNoneOfThisOnes() {
        final RigText text = RigText.of(BANKS + """
                [permissive.far]
                outputs = ["south-lid"]
                needs = ["south-path"]
                begun = "rest"
                """, "");
        final LogicBench north = LogicBench.of(Plan.compile(text.rig(), text.show(), "north", Options.plain(1)));

        assertThat(north.wish("north-lid").step().isOn("north-lid")).isTrue();
    }

    @Test
    void eachControllerHasItsOwnThingsOnly() {
        final Plan north = plan(NORTH_SHOW + SOUTH_SHOW, "north");

        assertThat(north.places().outputs()).extracting(output -> output.name()).containsExactly("north-lid");
        assertThat(north.places().zones()).extracting(zone -> zone.name()).containsExactly("north");
        assertThat(north.describe(north.newRun())).noneMatch(line -> line.contains("south"));
        assertThat(north.describe(north.newRun())).anyMatch(line -> line.startsWith("output.north-lid.state = 0"));
        assertThat(north.periodNs()).isEqualTo(10_000_000L);
    }

    /** North plays an evening of greetings; the south is there or not, and does one thing or another (S24). */
    @Test
    void northsOwnGreetingsAreTheSameWithAndWithoutTheSouth() {
        final List<String> alone = northsEvening(NORTH_SHOW, false);

        assertThat(alone).hasSizeGreaterThan(10);
        assertThat(northsEvening(NORTH_SHOW + SOUTH_SHOW, false)).isEqualTo(alone);
        assertThat(northsEvening(SOUTH_SHOW + NORTH_SHOW, true)).isEqualTo(alone);
    }

    private static List<String> northsEvening(final String show, final boolean isSouthPlaying) {
        final ScanBench north = ScanBench.of(plan(show, "north"));
        final ScanBench south = ScanBench.of(plan(show, "south"));
        north.step().high("north-key");
        for (long atMs = 1_000; atMs < 60_000; atMs += 2_100) {
            north.until(atMs).high("north-path").until(atMs + 500).low("north-path");
            if (isSouthPlaying) {
                south.until(atMs)
                        .low("south-path")
                        .high("south-key")
                        .until(atMs + 300)
                        .high("south-path");
            }
        }
        if (isSouthPlaying) {
            assertThat(south.strokes("south-lid")).isPositive();
        }
        return north.said(Event.Switched.class);
    }
}
