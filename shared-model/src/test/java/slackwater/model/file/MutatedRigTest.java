package slackwater.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.model.finding.FindingsPrinter;

class MutatedRigTest {
    private static final long SEED = 20_261_031L;
    private static final int COPIES = 2_000;
    private static final int BYTE_VALUES = 256;
    private static final Path SEA_CAVE = Path.of("..", "rigs", "sea-cave");

    @TempDir
    private Path folder;

    /**
     * Goal: whatever is in a file, reading it ends in a rig or in errors.
     * Method: 2,000 copies of the sea cave's rig, each with a few bytes flipped, a piece cut out or two pieces swapped.
     */
    @Test
    void aDamagedRigGivesFindingsAndNeverAnException() throws IOException {
        final byte[] whole = Files.readAllBytes(SEA_CAVE.resolve("rig.toml"));
        final byte[] show = Files.readAllBytes(SEA_CAVE.resolve("shows").resolve("evening.toml"));
        Folders.write(folder.resolve("shows").resolve("evening.toml"), show);
        final Random random = new Random(SEED);
        int withErrors = 0;
        for (int copy = 0; copy < COPIES; copy++) {
            Folders.write(folder.resolve("rig.toml"), damaged(whole, random));
            final Reading reading = Folders.read(folder);
            final boolean isRefused = reading.rig().isEmpty();
            assertThat(FindingsPrinter.text(reading.findings(), reading.filesRead()))
                    .as("copy %s of seed %s", copy, SEED)
                    .matches(text -> text.contains("Nothing was started") == isRefused);
            withErrors += isRefused ? 1 : 0;
        }
        assertThat(withErrors).as("copies refused").isBetween(COPIES / 2, COPIES - 1);
    }

    private static byte[] damaged(final byte[] whole, final Random random) {
        return switch (random.nextInt(3)) {
            case 0 -> flipped(whole, random);
            case 1 -> cut(whole, random);
            default -> swapped(whole, random);
        };
    }

    private static byte[] flipped(final byte[] whole, final Random random) {
        final byte[] bytes = whole.clone();
        final int flips = 1 + random.nextInt(3);
        for (int i = 0; i < flips; i++) {
            // Mostly printable, so that the damage often gets past the decoder and the parser.
            final int by = random.nextInt(4) == 0 ? random.nextInt(BYTE_VALUES) : ' ' + random.nextInt('~' - ' ');
            bytes[random.nextInt(bytes.length)] = (byte) by;
        }
        return bytes;
    }

    private static byte[] cut(final byte[] whole, final Random random) {
        final int from = random.nextInt(whole.length);
        final int to = Math.min(whole.length, from + 1 + random.nextInt(40));
        final byte[] bytes = Arrays.copyOf(whole, whole.length - (to - from));
        System.arraycopy(whole, to, bytes, from, whole.length - to);
        return bytes;
    }

    private static byte[] swapped(final byte[] whole, final Random random) {
        final byte[] bytes = whole.clone();
        final int length = 1 + random.nextInt(12);
        final int a = random.nextInt(bytes.length - length);
        final int b = random.nextInt(bytes.length - length);
        System.arraycopy(whole, a, bytes, b, length);
        System.arraycopy(whole, b, bytes, a, length);
        return bytes;
    }
}
