package slackwater.simulator.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Scanner;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The value change dump of IEEE 1364-2005, clause 18, written and read. */
class VcdTest {
    private static final String HEAD = """
            $timescale 1 us $end
            $scope module porch $end
            $var wire 1 ! path $end
            $var wire 8 % bus [7:0] $end
            $upscope $end
            $enddefinitions $end
            """;

    @TempDir
    Path folder;

    private static String written(final Lanes lanes) throws IOException {
        final StringWriter out = new StringWriter();
        VcdWriter.write(lanes, out);
        return out.toString();
    }

    private static Recording read(final String text) throws IOException, VcdException {
        return VcdReader.read(new StringReader(text), "night.vcd", line -> true);
    }

    private static void assertMistake(final String text, final String message) {
        assertThatThrownBy(() -> read(text)).isInstanceOf(VcdException.class).hasMessage(message);
    }

    private static Lanes three() {
        final LaneRecorder recorder = new LaneRecorder(List.of(
                Lane.bit("porch", "clam-lid", Lane.Sort.PIN),
                Lane.words(
                        "porch",
                        "yard",
                        Lane.Sort.MODE,
                        List.of("stopped", "faulted", "locked out", "armed", "resting")),
                Lane.gauge("air", "pressure", "bar"),
                Lane.bit("porch", "clam-lid", Lane.Sort.CUE)));
        recorder.bit(0, 0, false);
        recorder.word(1, 0, 4);
        recorder.number(2, 0, 6.5);
        recorder.bit(0, 10_000_000, true);
        recorder.number(2, 10_000_000, 6.25);
        recorder.word(1, 20_000_001, 3);
        recorder.bit(0, 20_000_001, false);
        return recorder.until(30_000_000);
    }

    @Test
    void aSmallRunIsWrittenWholeLikeThis() throws IOException {
        assertThat(written(three())).isEqualTo("""
                        $version Slackwater $end
                        $timescale 1 ns $end
                        $comment porch.yard: 0=stopped 1=faulted 2=locked out 3=armed 4=resting $end
                        $scope module porch $end
                        $var wire 1 ! clam_lid $end
                        $var reg 3 " yard $end
                        $var wire 1 $ clam_lid_cue $end
                        $upscope $end
                        $scope module air $end
                        $var real 64 # pressure $end
                        $upscope $end
                        $enddefinitions $end
                        #0
                        $dumpvars
                        0!
                        b100 "
                        r6.5 #
                        x$
                        $end
                        #10000000
                        1!
                        r6.25 #
                        #20000001
                        b11 "
                        0!
                        #30000000
                        """);
    }

    /** A second reading of the standard that shares nothing with the reader: words, codes, ascending times. */
    @Test
    void aLongEveningKeepsTheGrammarAndEveryChange() throws IOException {
        final Lanes lanes = SyntheticEvening.lanes(200);
        final String text = written(lanes);
        Files.writeString(Path.of("target", "evening.vcd"), text);
        final Map<String, String> widths = new HashMap<>();
        final Set<String> names = new HashSet<>();
        int changes = 0;
        long lastNs = -1;
        try (Scanner words = new Scanner(text)) {
            while (words.hasNext()) {
                final String word = words.next();
                if (word.equals("$var")) {
                    final String type = words.next();
                    final String size = words.next();
                    assertThat(widths.put(words.next(), type + size)).isNull();
                    final String name = words.next();
                    assertThat(name).matches("[A-Za-z_][A-Za-z0-9_$]*");
                    assertThat(names.add(name)).isTrue();
                } else if (word.startsWith("#")) {
                    assertThat(Long.parseLong(word.substring(1))).isGreaterThan(lastNs);
                    lastNs = Long.parseLong(word.substring(1));
                } else if (word.matches("b[01]{1,3}")) {
                    assertThat(widths.get(words.next())).isEqualTo("reg3");
                    changes++;
                } else if (word.matches("r[0-9.]+(E-?[0-9]+)?") && lastNs >= 0) {
                    assertThat(widths.get(words.next())).isEqualTo("real64");
                    changes++;
                } else if (word.matches("[01][!-~]+") && lastNs >= 0) {
                    assertThat(widths.get(word.substring(1))).isEqualTo("wire1");
                    changes++;
                }
            }
        }
        assertThat(widths).hasSize(lanes.lanes().size());
        assertThat(changes).isEqualTo(lanes.size());
        assertThat(lastNs).isEqualTo(lanes.endNs());
    }

    @Test
    void whatWasWrittenIsReadBackToTheNanosecond() throws Exception {
        final Lanes lanes = SyntheticEvening.lanes(50);
        final Recording recording = read(written(lanes));
        final List<String> expected = new ArrayList<>();
        for (int change = 0; change < lanes.size(); change++) {
            final Lane lane = lanes.lanes().get(lanes.laneOf(change));
            if (lane.value() == Lane.Value.BIT) {
                expected.add(VcdNames.identifier(lane.name()) + lanes.atNs(change) + (lanes.value(change) == 1));
            }
        }
        assertThat(recording.changes())
                .extracting(each -> each.line().name() + each.atNs() + each.isHigh())
                .containsExactlyElementsOf(expected);
        assertThat(recording.endNs()).isEqualTo(lanes.endNs());
    }

    @ParameterizedTest
    @CsvSource({
        "1 s,7000000000", "10 s,70000000000", "100s,700000000000", "1ms,7000000", "1 us,7000", "10us,70000",
        "100 us,700000", "1 ns,7", "100 ns,700", "1 ps,0", "100ps,0", "1 fs,0"
    })
    void everyTimescaleOfTheStandardIsUnderstood(final String timescale, final long atNs) throws Exception {
        assertThat(read(HEAD.replace("1 us", timescale) + "#7 1!")
                        .changes()
                        .get(0)
                        .atNs())
                .isEqualTo(atNs);
    }

    @Test
    void picosecondsAndFemtosecondsAreDividedNotLost() throws Exception {
        assertThat(read(HEAD.replace("1 us", "10 ps") + "#199 1!").endNs()).isEqualTo(1);
        assertThat(read(HEAD.replace("1 us", "10 ps") + "#200 1!").endNs()).isEqualTo(2);
        assertThat(read(HEAD.replace("1 us", "100 fs") + "#30000 1!").endNs()).isEqualTo(3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1000 us", "2 us", "1 min", "10", "us", ""})
    void anotherTimescaleIsRefused(final String timescale) {
        assertMistake(
                HEAD.replace("1 us", timescale),
                "night.vcd:1: timescale \"" + timescale.replace(" ", "")
                        + "\" is not known; use 1, 10 or 100 of s, ms, us, ns, ps or fs");
    }

    @Test
    void aVectorIsLeftOutWithAWarningAndTheLineOfOneBitStays() throws Exception {
        final Recording recording = read(HEAD + "#1 b1x0z %\n#2 1! B0 !");
        assertThat(recording.warnings())
                .containsExactly(
                        "night.vcd:4: bus is a wire of 8 bits and is left out; only lines of one bit are read");
        assertThat(recording.lines()).containsExactly(new Recording.Line("porch", "path"));
        assertThat(recording.changes()).extracting(Recording.Change::isHigh).containsExactly(true, false);
    }

    @Test
    void onlyWantedLinesAreReadAndNothingIsSaidOfTheOthers() throws Exception {
        final Recording recording = VcdReader.read(
                new StringReader(HEAD + "#1 1! x!"),
                "night.vcd",
                line -> line.name().equals("rain"));
        assertThat(recording.changes()).isEmpty();
        assertThat(recording.warnings()).isEmpty();
        assertThat(recording.lines()).hasSize(1);
    }

    @Test
    void aLineMayBeUnknownBeforeItsFirstLevelButNotAfterIt() throws Exception {
        assertThat(read(HEAD + "#0 $dumpvars x! $end\n#5 1!").changes()).hasSize(1);
        assertMistake(
                HEAD + "#0 0!\n#5 z!",
                "night.vcd:8: path becomes unknown (z); a rehearsal needs 0 or 1:"
                        + " fit a pull-up or pull-down and record it again");
    }

    @Test
    void whatIsNoWaveformOrABrokenOneIsOneLineThatSaysWhatToDo() {
        assertMistake("", "night.vcd:1: the file ends before $enddefinitions; give a waveform file (VCD, text)");
        assertMistake("hello", "night.vcd:1: \"hello\" is no declaration; give a waveform file (VCD, text)");
        assertMistake("\n$upscope $end", "night.vcd:2: $upscope without a $scope; record the file again");
        assertMistake("$date today", "night.vcd:1: the file ends within $date; record it again, it is cut short");
        assertMistake(
                "$enddefinitions $end",
                "night.vcd:1: no $timescale before here; add one such as: $timescale 1 us $end");
        assertMistake(HEAD + "#5\n#4", "night.vcd:8: time #4 is before the one above it; record the file again");
        assertMistake(HEAD + "#5a", "night.vcd:7: \"#5a\" is no time; record the file again");
        assertMistake(
                HEAD + "#9223372036854776",
                "night.vcd:7: time #9223372036854776 is out of range; check the $timescale");
        assertMistake(HEAD + "1?", "night.vcd:7: code \"?\" was never declared; record the file again");
        assertMistake(HEAD + "high", "night.vcd:7: \"high\" is no change; record the file again");
        assertMistake(HEAD + "b !", "night.vcd:7: a vector without bits; record the file again");
    }

    @Test
    void aFileThatIsMissingAFolderOrNoTextIsOneLine() throws IOException {
        final Path missing = folder.resolve("none.vcd");
        assertThatThrownBy(() -> VcdReader.read(missing, line -> true))
                .isInstanceOf(VcdException.class)
                .hasMessage(missing + ": does not exist; check its name");
        assertThatThrownBy(() -> VcdReader.read(folder, line -> true))
                .isInstanceOf(VcdException.class)
                .hasMessage(folder + ": is a folder; give a waveform file (VCD, text)");
        final Path binary = Files.write(folder.resolve("b.vcd"), new byte[] {(byte) 0xff, (byte) 0xfe});
        assertThatThrownBy(() -> VcdReader.read(binary, line -> true))
                .isInstanceOf(VcdException.class)
                .hasMessage(binary + ": is not a text in UTF-8; give a waveform file (VCD, text)");
        final Path endless =
                Files.write(folder.resolve("e.vcd"), "a".repeat(5000).getBytes(StandardCharsets.UTF_8));
        assertThatThrownBy(() -> VcdReader.read(endless, line -> true))
                .hasMessage(endless + ":1: a word of more than 4096 characters; give a waveform file (VCD, text)");
    }

    @Test
    void aNameIsTheSameHoweverTheRecordingToolWroteItsHyphens() {
        assertThat(VcdNames.isSame("north-path", "north_path")).isTrue();
        assertThat(VcdNames.isSame("north-path", "North-Path")).isTrue();
        assertThat(VcdNames.isSame("north-path", "north-paths")).isFalse();
        assertThat(VcdNames.identifier("2nd-lid")).isEqualTo("_2nd_lid");
    }

    @Test
    void everyLaneHasACodeOfItsOwn() {
        final Set<String> codes = new HashSet<>();
        for (int lane = 0; lane < 20_000; lane++) {
            assertThat(codes.add(VcdNames.code(lane))).as("lane %d", lane).isTrue();
        }
        assertThat(VcdNames.code(93)).isEqualTo("~");
        assertThat(VcdNames.code(94)).isEqualTo("!!");
    }
}
