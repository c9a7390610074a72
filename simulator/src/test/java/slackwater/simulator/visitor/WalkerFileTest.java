package slackwater.simulator.visitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slackwater.model.Point;
import slackwater.model.Walkers;

class WalkerFileTest {
    private static final Walkers METRES = new Walkers(10, 1, 0, new Point(0, 0));
    private static final double FINE = 1e-9;

    @TempDir
    private Path folder;

    private Path file(final String text) throws IOException {
        return Files.writeString(folder.resolve("walkers.txt"), text, StandardCharsets.UTF_8);
    }

    private WalkerFile read(final String text, final Walkers settings) throws IOException {
        return WalkerFile.read(file(text), settings);
    }

    @Test
    void placesAndTimesAreRead() throws IOException {
        final WalkerFile read = read("7 20 1.0 2.0 1.76\n7 30 2.0 2.5 1.76\n\n8\t25\t5 6 1.1\n8 35 5 7 1.1\n", METRES);
        assertThat(read.crowd().visitors()).extracting(Visitor::id).containsExactly(7, 8);
        final Visitor first = read.crowd().visitor(0);
        assertThat(first.arrivesNs()).isEqualTo(0);
        assertThat(first.leavesNs()).isEqualTo(Seconds.ns(1));
        assertThat(first.xM(Seconds.ns(0.5))).isCloseTo(1.5, within(FINE));
        assertThat(first.yM(Seconds.ns(0.5))).isCloseTo(2.25, within(FINE));
        assertThat(first.heightM()).isEqualTo(1.76);
        assertThat(first.being()).isEqualTo(Being.ADULT);
        assertThat(read.crowd().visitor(1).arrivesNs()).isEqualTo(Seconds.ns(0.5));
        assertThat(read.crowd().visitor(1).being()).isEqualTo(Being.SMALL_CHILD);
    }

    @Test
    void unitTurnAndOffsetLayThemOnThePlan() throws IOException {
        final Walkers settings = new Walkers(10, 0.01, 90, new Point(3, -1));
        final Visitor visitor =
                read("1 0 200 50 180\n1 10 300 50 180", settings).crowd().visitor(0);
        assertThat(visitor.xM(0)).isCloseTo(3 - 0.5, within(FINE));
        assertThat(visitor.yM(0)).isCloseTo(-1 + 2, within(FINE));
        assertThat(visitor.yM(Seconds.ns(1))).isCloseTo(-1 + 3, within(FINE));
        assertThat(visitor.heightM()).isCloseTo(1.8, within(FINE));
    }

    @Test
    void theFilesOwnRateIsBelievedAndTheDifferenceIsSaid() throws IOException {
        final WalkerFile read = read("# made up\n# framerate: 25.00 fps\n1 0 0 0 1.7\n1 25 1 0 1.7\n", METRES);
        assertThat(read.crowd().visitor(0).leavesNs()).isEqualTo(Seconds.ns(1));
        assertThat(read.notes())
                .containsExactly(folder.resolve("walkers.txt")
                        + ": 25.0 frames a second, as its line 2 says, and not 10.0, as set");
    }

    @Test
    void theFilesOwnRateIsSaidWhenItIsTheOneGivenToo() throws IOException {
        assertThat(read("# Framerate: 10\n1 0 0 0 1.7\n", METRES).notes())
                .containsExactly(folder.resolve("walkers.txt") + ": 10.0 frames a second, as its line 1 says");
    }

    @Test
    void theRateThatWasGivenIsTakenAndSaidWhereTheFileHasNone() throws IOException {
        assertThat(read("1 0 0 0 1.7\n", METRES).notes())
                .containsExactly(folder.resolve("walkers.txt")
                        + ": does not say its frame rate; taken as 10.0 frames a second, as set");
    }

    @Test
    void heightsOfZeroAreAssumedAndSaid() throws IOException {
        final WalkerFile read = read("1 0 0 0 0\n1 1 1 0 0\n", METRES);
        assertThat(read.crowd().visitor(0).heightM()).isEqualTo(1.7);
        assertThat(read.notes()).contains(folder.resolve("walkers.txt") + ": has heights of 0; taken as 1.7 m");
    }

    @Test
    void idsAndFramesMayBeOutOfOrderAndFramesMayBeMissing() throws IOException {
        final Crowd crowd = read("9 30 3 0 1.7\n2 25 0 0 1.7\n9 10 1 0 1.7\n2 20 5 5 1.7\n", METRES)
                .crowd();
        assertThat(crowd.visitors()).extracting(Visitor::id).containsExactly(9, 2);
        assertThat(crowd.visitor(0).xM(Seconds.ns(1))).isCloseTo(2, within(FINE));
        assertThat(crowd.visitor(1).xM(crowd.visitor(1).arrivesNs())).isEqualTo(5);
    }

    @Test
    void somebodyInOneFrameOnlyIsHereForOneFrame() throws IOException {
        final Visitor visitor = read("1 5 2 3 1.7\n", METRES).crowd().visitor(0);
        assertThat(visitor.leavesNs()).isEqualTo(Seconds.ns(0.1));
        assertThat(visitor.pathM()).isEqualTo(0);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1 2 3 4              | :2: five numbers are wanted, id frame x y height, but here are 4
            1 2 3 4 1.7 6        | :2: five numbers are wanted, id frame x y height, but here are 6
            one 2 3 4 1.7        | :2: an id must be a number but is "one"
            1.5 2 3 4 1.7        | :2: an id must be a whole number but is "1.5"
            1 2e9 3 4 1.7        | :2: a frame must be a whole number but is "2e9"
            1 2 NaN 4 1.7        | :2: x must be a number but is "NaN"
            1 2 3 4,5 1.7        | :2: y must be a number but is "4,5"
            1 2 3 4 176          | :2: a height of 176.000 m; people have 0.3 to 2.5 m, so give the file's own unit \
            instead of 1.0 m
            1 2 30000 4 1.7      | :2: a place 30000 m away; correct it, or the unit, which is taken as 1.0 m
            1 1 3 4 1.7          | :2: person 1 is in frame 1 already, at line 1; leave one of them out
            # framerate: quick   | :2: a frame rate must be a number but is "quick"
            # framerate: 0       | :2: a frame rate of 0; give frames a second, above 0 and up to 1000
            """)
    void aBadLineIsOnePlainMessageWithItsPlace(final String line, final String message) throws IOException {
        final Path file = file("1 1 0 0 1.7\n" + line + "\n");
        assertThatThrownBy(() -> WalkerFile.read(file, METRES))
                .isInstanceOf(WalkerFileMistake.class)
                .hasMessage(file + message);
    }

    @Test
    void twoFrameRatesInOneFileAreAMistake() throws IOException {
        final Path file = file("# framerate: 16\n# framerate: 25\n1 1 0 0 1.7\n");
        assertThatThrownBy(() -> WalkerFile.read(file, METRES))
                .hasMessage(file + ":2: a second frame rate, 25; line 1 has another; leave one of them out");
    }

    @Test
    void aFileWithoutPositionsIsAMistake() throws IOException {
        for (final String text : new String[] {"", "\n\n", "# framerate: 25\n"}) {
            final Path file = file(text);
            assertThatThrownBy(() -> WalkerFile.read(file, METRES))
                    .isInstanceOf(WalkerFileMistake.class)
                    .hasMessage(file + ": no positions in it; lines of id frame x y height are wanted");
        }
    }

    @Test
    void aFileThatIsNotThereOrNoFileOrNoTextIsAMistake() throws IOException {
        final Path missing = folder.resolve("missing.txt");
        assertThatThrownBy(() -> WalkerFile.read(missing, METRES))
                .isInstanceOf(WalkerFileMistake.class)
                .hasMessage(missing + ": there is no such file; name a file of measured positions");
        assertThatThrownBy(() -> WalkerFile.read(folder, METRES))
                .isInstanceOf(WalkerFileMistake.class)
                .hasMessage(folder + ": this is no file; name a file of measured positions");
        final Path binary = Files.write(folder.resolve("binary"), new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
        assertThatThrownBy(() -> WalkerFile.read(binary, METRES))
                .isInstanceOf(WalkerFileMistake.class)
                .hasMessage(binary + ": not plain text in UTF-8; export the positions as text");
    }

    @Test
    void settingsWithoutARateAreAProgrammersMistake() {
        final Walkers none = new Walkers(0, 1, 0, new Point(0, 0));
        assertThatThrownBy(() -> new WalkerLines("walkers.txt", none)).isInstanceOf(IllegalArgumentException.class);
    }
}
