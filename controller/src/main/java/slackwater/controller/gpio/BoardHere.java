package slackwater.controller.gpio;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * Which computer this is, by the model in its device tree and the label of its GPIO chip. The library knows boards by other
 * means and goes on with one that it does not know; here a board that is not known, or not the rig's, is refused with what was
 * read. Models and labels are from memory of these boards' kernels; those of pi-4 were seen.
 */
public final class BoardHere {
    private static final String MODEL = "proc/device-tree/model";
    private static final String LABELS = "sys/class/gpio";
    private static final String DEVICES = "dev";
    private static final String CHIPS = "gpiochip*";
    /** What the library looks for in a label; it takes the first chip that has it. */
    private static final String TAKEN = "pinctrl";

    private static final List<Known> ALL = List.of(
            new Known("pi-3", "Raspberry Pi 3 Model", "pinctrl-bcm2835"),
            new Known("pi-4", "Raspberry Pi 4 Model", "pinctrl-bcm2711"),
            new Known("pi-5", "Raspberry Pi 5 Model", "pinctrl-rp1"),
            new Known("pi-zero-2-w", "Raspberry Pi Zero 2", "pinctrl-bcm2835"));

    private BoardHere() {}

    /**
     * A board as its kernel shows it.
     *
     * @param word the rig file's word
     * @param model how the device tree's model begins
     * @param chip the label of the chip behind the header
     */
    public record Known(String word, String model, String chip) {}

    /** The chip's label behind a board's header. */
    public static String chipOf(final String word) {
        return ALL.stream()
                .filter(one -> one.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no chip is known for board=" + word))
                .chip();
    }

    /**
     * Makes sure that this computer is the rig's board and that its chip may be used.
     *
     * @param root where the system's folders begin
     * @param wanted the rig file's word for its board
     * @throws LineRefusedException with what was read
     */
    public static void require(final Path root, final String wanted) {
        final String model = model(root)
                .orElseThrow(() -> new LineRefusedException("this computer is no board that is known: it has no /"
                        + MODEL + "; give --pins virtual to run without real pins"));
        final Known here = ALL.stream()
                .filter(one -> model.startsWith(one.model()))
                .findFirst()
                .orElseThrow(() -> new LineRefusedException("this computer is no board that is known: its model is \""
                        + model + "\"; known are " + String.join(", ", words())));
        if (!here.word().equals(wanted)) {
            throw new LineRefusedException("the rig is for a " + wanted + ", and this is a " + here.word() + " (\""
                    + model + "\"): correct board in the rig, or run it on the other computer");
        }
        requireChip(root, here);
        requirePermission(root);
    }

    private static List<String> words() {
        return ALL.stream().map(Known::word).toList();
    }

    private static Optional<String> model(final Path root) {
        try {
            return Optional.of(Files.readString(root.resolve(MODEL), StandardCharsets.UTF_8)
                    .replace("\0", "")
                    .strip());
        } catch (final IOException absent) {
            return Optional.empty();
        }
    }

    private static void requireChip(final Path root, final Known here) {
        final List<String> labels = labels(root);
        final List<String> taken =
                labels.stream().filter(label -> label.contains(TAKEN)).toList();
        if (!taken.equals(List.of(here.chip()))) {
            throw new LineRefusedException("a " + here.word() + " has one GPIO chip " + here.chip()
                    + "; the chips found here are " + (labels.isEmpty() ? "none" : String.join(", ", labels)));
        }
    }

    /** A kernel without the old interface lists its chips through the tools that the stop action needs in any case. */
    private static List<String> labels(final Path root) {
        final List<String> labels = new ArrayList<>();
        for (final Path chip : list(root.resolve(LABELS))) {
            try {
                labels.add(Files.readString(chip.resolve("label"), StandardCharsets.UTF_8)
                        .strip());
            } catch (final IOException unreadable) {
                labels.add("unreadable " + chip.getFileName());
            }
        }
        return labels.isEmpty() ? labelsFromTools() : labels;
    }

    private static List<String> labelsFromTools() {
        try {
            final Process tool =
                    new ProcessBuilder("gpiodetect").redirectErrorStream(true).start();
            final String text = new String(tool.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            tool.waitFor(2, TimeUnit.SECONDS);
            return text.lines()
                    .filter(line -> line.contains("[") && line.contains("]"))
                    .map(line -> line.substring(line.indexOf('[') + 1, line.indexOf(']')))
                    .toList();
        } catch (final IOException absent) {
            return List.of();
        } catch (final InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return List.of();
        }
    }

    /** The library opens every chip up to the right one. */
    private static void requirePermission(final Path root) {
        for (final Path chip : list(root.resolve(DEVICES))) {
            if (!Files.isReadable(chip) || !Files.isWritable(chip)) {
                throw new LineRefusedException("no permission for /" + root.relativize(chip)
                        + ": add the user to the group gpio (usermod -a -G gpio NAME) and log in again");
            }
        }
    }

    private static List<Path> list(final Path folder) {
        final List<Path> found = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, CHIPS)) {
            all.forEach(found::add);
        } catch (final IOException | DirectoryIteratorException absent) {
            return List.of();
        }
        final Path[] sorted = found.toArray(Path[]::new);
        Arrays.sort(sorted);
        return List.of(sorted);
    }
}
