package slackwater.controller.gpio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.controller.gpio.Lines.Wire;
import slackwater.model.Pull;

/** Lines in a file: seen and set from outside, and left as they are by a program that dies. */
final class VirtualLinesTest {
    @TempDir
    private Path folder;

    private VirtualLines open() throws IOException {
        return VirtualLines.open(folder.resolve("lines"));
    }

    private static Wire wire(final String name) {
        return new Wire(name, OptionalInt.empty());
    }

    private String text() throws IOException {
        return Files.readString(folder.resolve("lines"), StandardCharsets.UTF_8).replace("\0", "");
    }

    @Test
    void anOutputIsARowWithTheLevelItWasClaimedAtAndThenTheOneWritten() throws IOException {
        final Lines.Out lamp = open().claimOutput(wire("lamp"), true);
        assertThat(text()).isEqualTo("lamp" + " ".repeat(37) + "out 1\n");
        lamp.write(false);
        assertThat(text()).endsWith("out 0\n");
        assertThat(lamp.isPadHigh()).isFalse();
    }

    @Test
    void anInputBeginsAtItsPullAndStaysWhereSomebodyPutIt() throws IOException {
        final Lines.In path = open().claimInput(wire("path"), Pull.UP);
        assertThat(path.isHigh()).isTrue();
        final byte[] rows = Files.readAllBytes(folder.resolve("lines"));
        rows[45] = '0';
        Files.write(folder.resolve("lines"), rows);
        assertThat(open().claimInput(wire("path"), Pull.UP).isHigh()).isFalse();
        assertThat(open().claimInput(wire("other"), Pull.UP).isHigh())
                .as("another input begins anew")
                .isTrue();
    }
}
