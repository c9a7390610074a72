package slackwater.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.model.Cue;
import slackwater.model.Field;
import slackwater.model.Input;
import slackwater.model.Interlock;
import slackwater.model.Level;
import slackwater.model.Output;
import slackwater.model.Point;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.Start;
import slackwater.model.finding.Position;

class ExampleRigsTest {
    private static final Path RIGS = Path.of("..", "rigs");

    @ParameterizedTest
    @ValueSource(strings = {"first", "driftwood", "sea-cave"})
    void anExampleIsReadWithoutFindings(final String name) {
        final Reading reading = Folders.read(RIGS.resolve(name));
        assertThat(reading.findings()).isEmpty();
        assertThat(reading.rig()).isPresent();
        assertThat(reading.show()).isPresent();
        assertThat(reading.filesRead()).isEqualTo(2);
    }

    @Test
    void theFirstRigImpliesWhatItDoesNotSay() {
        final Rig rig = rig("first");
        final Output lid = rig.output("lid").orElseThrow();
        assertThat(rig.name()).isEqualTo("first");
        assertThat(rig.scan()).isEqualTo(Duration.ofMillis(10));
        assertThat(lid.zone()).isEqualTo("yard");
        assertThat(lid.controller()).isEqualTo("porch");
        assertThat(lid.energisedLevel()).isEqualTo(Level.HIGH);
        assertThat(lid.pin()).isEmpty();
        assertThat(lid.limits().longestOn()).contains(Duration.ofSeconds(2));
        assertThat(rig.input("path").orElseThrow().proving().inactiveAfter()).isEqualTo(Duration.ofMillis(500));
        assertThat(rig.arming().warning()).isEqualTo(Duration.ofSeconds(5));
    }

    @Test
    void theSeaCaveHasItsBanksOnTwoControllers() {
        final Rig rig = rig("sea-cave");
        assertThat(rig.inputsOf("north")).hasSize(13);
        assertThat(rig.inputsOf("south")).hasSize(12);
        assertThat(rig.outputsOf("north")).hasSize(10);
        assertThat(rig.outputsOf("south")).hasSize(11);
        assertThat(guards(rig, "north")).isEqualTo(8);
        assertThat(guards(rig, "south")).isEqualTo(9);
        assertThat(rig.people()).containsExactly("Maren", "Ole");
    }

    @Test
    void aMirrorTurnsPlacesOverAndShiftsThem() {
        final Rig rig = rig("sea-cave");
        final Input outer = rig.input("south-path-outer").orElseThrow();
        assertThat(outer.sees().field()).contains(new Field(new Point(13, -2), 90, 40, 4));
        final Output lid = rig.output("south-clam-lid").orElseThrow();
        assertThat(lid.at()).contains(new Point(18, -3.6));
        assertThat(lid.pin()).hasValue(27);
    }

    @Test
    void aMirrorRenamesReferencesToWhatItRepeatsAndNoOthers() {
        final Rig rig = rig("sea-cave");
        assertThat(rig.input("south-reach").orElseThrow().reachOf()).containsExactly("south-clam-lid");
        assertThat(rig.output("south-fog-pump").orElseThrow().facts().text("heated-by"))
                .contains("south-fog-heater");
        assertThat(interlocks(rig))
                .contains("south-reach-clear", "south-one-bang")
                .doesNotContain("south-dry");
        final List<String> cues = show().cues().stream().map(Cue::name).toList();
        assertThat(cues)
                .containsExactly(
                        "north-clam",
                        "north-swell",
                        "north-jet",
                        "north-gull",
                        "south-spray",
                        "south-clam",
                        "south-swell",
                        "south-jet");
        assertThat(show().cues().get(5).start())
                .isEqualTo(new Start.InOrder("south-path-inner", "south-beam-high", Duration.ofSeconds(4)));
    }

    @Test
    void theStopLoopIsOneForTheWholeRig() {
        final Input loop = rig("sea-cave").input("stop-loop").orElseThrow();
        assertThat(loop.zone()).isEmpty();
        assertThat(loop.controllers()).containsExactly("north", "south");
        assertThat(loop.pinOn("south")).hasValue(5);
    }

    @Test
    void whatAMirrorMadeStandsWhereItsOriginalStands() {
        final Reading reading = Folders.read(RIGS.resolve("sea-cave"));
        final Position made =
                reading.where().value("output.south-clam-lid", "longest-on").orElseThrow();
        assertThat(reading.where().value("output.north-clam-lid", "longest-on")).contains(made);
        assertThat(reading.where().lineText(made)).isEqualTo("longest-on = \"3 s\"");
        assertThat(made.column()).isEqualTo(14);
        assertThat(made.length()).isEqualTo("\"3 s\"".length());
    }

    @Test
    void aKeyThatWasLeftOutStandsAtItsTable() {
        final Reading reading = Folders.read(RIGS.resolve("first"));
        assertThat(reading.where().value("output.lid", "bore"))
                .isEqualTo(reading.where().table("output.lid"));
        assertThat(reading.where().value("output.lad", "bore")).isEmpty();
    }

    private static Rig rig(final String name) {
        return Folders.read(RIGS.resolve(name)).rig().orElseThrow();
    }

    private static Show show() {
        return Folders.read(RIGS.resolve("sea-cave")).show().orElseThrow();
    }

    private static List<String> interlocks(final Rig rig) {
        return rig.interlocks().stream().map(Interlock::name).toList();
    }

    private static long guards(final Rig rig, final String controller) {
        return rig.interlocks().stream()
                .filter(interlock -> interlock.outputs().stream()
                        .anyMatch(name ->
                                rig.output(name).orElseThrow().controller().equals(controller)))
                .count();
    }
}
