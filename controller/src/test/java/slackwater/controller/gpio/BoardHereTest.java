package slackwater.controller.gpio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slackwater.model.board.Boards;

/** The board is the rig's, with the one chip that the library will take, or it is refused with what was read. */
final class BoardHereTest {
    @TempDir
    private Path root;

    @BeforeEach
    void aPi4() throws IOException {
        model("Raspberry Pi 4 Model B Rev 1.4\0");
        chip(512, "pinctrl-bcm2711");
        chip(570, "raspberrypi-exp-gpio");
    }

    private void model(final String model) throws IOException {
        final Path file = root.resolve("proc/device-tree/model");
        Files.createDirectories(file.getParent());
        Files.writeString(file, model);
    }

    private void chip(final int base, final String label) throws IOException {
        final Path folder = Files.createDirectories(root.resolve("sys/class/gpio/gpiochip" + base));
        Files.writeString(folder.resolve("label"), label + "\n");
    }

    @Test
    void theRigsOwnBoardIsTaken() {
        assertThatCode(() -> BoardHere.require(root, "pi-4")).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @CsvSource({
        "Raspberry Pi 3 Model B Plus Rev 1.3, pi-3, pinctrl-bcm2835",
        "Raspberry Pi 5 Model B Rev 1.0, pi-5, pinctrl-rp1",
        "Raspberry Pi Zero 2 W Rev 1.0, pi-zero-2-w, pinctrl-bcm2835"
    })
    void theOtherBoardsAreKnownToo(final String model, final String word, final String label) throws IOException {
        model(model);
        chip(512, label);
        assertThatCode(() -> BoardHere.require(root, word)).doesNotThrowAnyException();
    }

    @Test
    void everyBoardThatARigMayNameHasAChip() {
        assertThat(Boards.words())
                .allSatisfy(word -> assertThat(BoardHere.chipOf(word)).startsWith("pinctrl-"));
    }

    @Test
    void aRigForAnotherBoardIsRefused() {
        assertThatThrownBy(() -> BoardHere.require(root, "pi-5"))
                .hasMessage("the rig is for a pi-5, and this is a pi-4 (\"Raspberry Pi 4 Model B Rev 1.4\"):"
                        + " correct board in the rig, or run it on the other computer");
    }

    @Test
    void anUnknownBoardIsRefusedWithWhatWasRead() throws IOException {
        model("Banana Board 7\0");
        assertThatThrownBy(() -> BoardHere.require(root, "pi-4"))
                .hasMessage("this computer is no board that is known: its model is \"Banana Board 7\"; known are pi-3,"
                        + " pi-4, pi-5, pi-zero-2-w");
    }

    @Test
    void aComputerWithoutADeviceTreeIsRefused() throws IOException {
        Files.delete(root.resolve("proc/device-tree/model"));
        assertThatThrownBy(() -> BoardHere.require(root, "pi-4"))
                .hasMessage("this computer is no board that is known: it has no /proc/device-tree/model;"
                        + " give --pins virtual to run without real pins");
    }

    /** The library takes the first chip whose label says so, whichever that is. */
    @Test
    void aSecondChipThatTheLibraryCouldTakeIsRefused() throws IOException {
        chip(100, "pinctrl-decoy");
        assertThatThrownBy(() -> BoardHere.require(root, "pi-4"))
                .hasMessage("a pi-4 has one GPIO chip pinctrl-bcm2711; the chips found here are pinctrl-decoy,"
                        + " pinctrl-bcm2711, raspberrypi-exp-gpio");
    }

    @Test
    void anotherBoardsChipIsRefused() throws IOException {
        chip(512, "pinctrl-bcm2835");
        assertThatThrownBy(() -> BoardHere.require(root, "pi-4"))
                .hasMessage("a pi-4 has one GPIO chip pinctrl-bcm2711; the chips found here are pinctrl-bcm2835,"
                        + " raspberrypi-exp-gpio");
    }
}
