package slackwater.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.model.Condition;
import slackwater.model.Cue;
import slackwater.model.Interlock;
import slackwater.model.finding.Finding;

class RigFolderTest {
    private static final String STOPPED = " Nothing was started; all outputs stay at rest.\n";

    @TempDir
    private Path folder;

    @BeforeEach
    void aRightRig() {
        Folders.with(folder, Folders.resource("small/rig.toml"), Folders.resource("small/shows/first.toml"));
    }

    @Test
    void whatIsShedIsMirroredWithItsNeedsAndItsOrder() {
        final String rig = Folders.resource("banks/rig.toml") + """
                [shed.north-thin]
                outputs = ["north-lamp", "north-lid"]
                needs = ["not north-gate"]
                next-after = "9 s"
                """;
        Folders.with(folder, rig, Folders.resource("banks/shows/first.toml"));
        assertThat(Folders.read(folder).rig().orElseThrow().interlocks())
                .contains(new Interlock.Shed(
                        "south-thin",
                        List.of("south-lamp", "south-lid"),
                        List.of(new Condition("south-gate", false)),
                        Duration.ofSeconds(9)));
    }

    @Test
    void aMissingFolderIsOneLine() {
        assertThat(Folders.print(folder, Folders.read(folder.resolve("none"))))
                .isEqualTo("error no-folder: there is no folder RIG/none\n"
                        + "  why: a rig is a folder with rig.toml and shows/NAME.toml\n"
                        + "  fix: give the folder of a rig\n\n0 files read, 1 error, 0 warnings." + STOPPED);
    }

    @Test
    void aFileWhereTheFolderShouldBeIsSaidSo() {
        assertThat(codes(Folders.read(folder.resolve("rig.toml")))).containsExactly("not-a-folder");
    }

    @Test
    void aFolderWithoutARigIsSaidSo() {
        assertThat(codes(Folders.read(folder.resolve("shows")))).containsExactly("no-rig");
    }

    @Test
    void aFileThatIsNotUtf8IsRefusedWithTheByte() {
        Folders.write(
                folder.resolve("rig.toml"), "name = \"a\"\nscan = \"\u00e9\"".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(Folders.print(folder, Folders.read(folder)))
                .startsWith("error not-utf8: RIG/rig.toml is not UTF-8 text:"
                        + " byte 19, in line 2, is not part of any letter\n");
    }

    @Test
    void aFileAtTheSizeLimitIsReadAndOneByteMoreIsNot() {
        final String rig = Folders.resource("small/rig.toml");
        final String filled = rig + "#".repeat((int) TomlFile.MOST_BYTES - rig.length());
        Folders.write(folder.resolve("rig.toml"), filled.getBytes(StandardCharsets.UTF_8));
        assertThat(codes(Folders.read(folder))).isEmpty();
        Folders.write(folder.resolve("rig.toml"), (filled + "#").getBytes(StandardCharsets.UTF_8));
        assertThat(codes(Folders.read(folder))).containsExactly("too-large");
    }

    @Test
    void anEmptyFileLacksItsController() {
        Folders.write(folder.resolve("rig.toml"), new byte[0]);
        assertThat(codes(Folders.read(folder))).contains("no-controller").doesNotContain("not-toml");
    }

    @Test
    void bracketsWithoutEndAreRefusedInOneLine() {
        Folders.write(folder.resolve("rig.toml"), "a=[{".repeat(200_000).getBytes(StandardCharsets.UTF_8));
        assertThat(codes(Folders.read(folder))).contains("not-toml");
    }

    @Test
    void aByteOrderMarkAndWindowsLinesAreRead() {
        final String rig = "\uFEFF" + Folders.resource("small/rig.toml").replace("\n", "\r\n");
        Folders.write(folder.resolve("rig.toml"), rig.getBytes(StandardCharsets.UTF_8));
        assertThat(codes(Folders.read(folder))).isEmpty();
    }

    @Test
    void aRigWithoutAShowIsAllowedWithAWarning() {
        final Path alone = folder.resolve("alone");
        Folders.write(
                alone.resolve("rig.toml"), Folders.resource("small/rig.toml").getBytes(StandardCharsets.UTF_8));
        final Reading reading = Folders.read(alone);
        assertThat(codes(reading)).containsExactly("no-show");
        assertThat(reading.findings().get(0).isError()).isFalse();
        assertThat(reading.rig()).isPresent();
        assertThat(reading.show()).isEmpty();
    }

    @Test
    void severalShowsNeedAName() {
        Folders.write(folder.resolve("shows").resolve("finale.toml"), new byte[0]);
        final Reading reading = Folders.read(folder);
        assertThat(codes(reading)).containsExactly("which-show");
        assertThat(reading.findings().get(0).fix()).isEqualTo("add --show and one of: finale, first");
        assertThat(reading.showNames()).containsExactly("finale", "first");
        assertThat(read("first").show().orElseThrow().name()).isEqualTo("first");
    }

    @Test
    void anUnknownShowGetsTheNearestName() {
        final Reading reading = read("frist");
        assertThat(codes(reading)).containsExactly("unknown-show");
        assertThat(reading.findings().get(0).fix()).isEqualTo("did you mean \"first\"?");
    }

    @Test
    void everyMistakeIsReportedAtOnceAndNoRigIsMade() {
        final String rig = Folders.resource("small/rig.toml")
                .replace("\"2 s\"", "\"2,5 s\"")
                .replace("kind = \"lamp\"", "kind = \"lmap\"")
                .replace("needs = [\"not gate\"]", "needs = [\"not gote\"]");
        final String show = Folders.resource("small/shows/first.toml").replace("else = \"end\"", "else = \"x\"");
        final Reading reading = Folders.read(Folders.with(folder, rig, show));
        assertThat(codes(reading)).containsExactly("unknown-word", "bad-quantity", "unknown-input", "unknown-word");
        assertThat(reading.rig()).isEmpty();
        assertThat(reading.show()).isEmpty();
    }

    @Test
    void aCueInCodeKeepsItsOwnKeysAsFacts() {
        final String show = """
                [cue.waves]
                starts = "path"
                code = "waves"
                swell = "2 s"
                height = "3 mm"
                colour = "blue"
                times = 3
                loud = true
                """;
        final Cue cue = Folders.read(Folders.with(folder, Folders.resource("small/rig.toml"), show))
                .show()
                .orElseThrow()
                .cues()
                .get(0);
        assertThat(cue.code()).contains("waves");
        assertThat(cue.facts().duration("swell"))
                .hasValueSatisfying(swell -> assertThat(swell).hasSeconds(2));
        assertThat(cue.facts().si("height")).hasValue(0.003);
        assertThat(cue.facts().text("colour")).contains("blue");
        assertThat(cue.facts().count("times")).contains(3L);
        assertThat(cue.facts().flag("loud")).isTrue();
    }

    private Reading read(final String show) {
        return RigFolder.read(folder, Optional.of(show), Folders.class.getClassLoader());
    }

    private static List<String> codes(final Reading reading) {
        return reading.findings().stream().map(Finding::code).toList();
    }
}
