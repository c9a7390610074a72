package slackwater.controller.install;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * What the kernel does with an output when its program dies (handbook 9.5): the makers' own kernels let it drive on, so that
 * a valve stays open. The setting is read, said, and never relied on.
 */
public final class BootSetting {
    private static final String SETTING = "sys/module/pinctrl_bcm2835/parameters/persist_gpio_outputs";

    /** What was read. */
    public enum Outputs {
        DRIVE_ON(
                "outputs drive on after the program dies: add the line dtparam=strict_gpiod to /boot/firmware/config.txt"
                        + " and boot again"),
        ARE_LET_GO("outputs are let go when the program dies, and the pull decides"),
        UNKNOWN("it cannot be read what outputs do after the program dies; to have them let go, add the line"
                + " dtparam=strict_gpiod to /boot/firmware/config.txt and boot again");

        private final String text;

        Outputs(final String text) {
            this.text = text;
        }

        /** One line for a person, with what to do. */
        public String text() {
            return text;
        }
    }

    private BootSetting() {}

    /** Reads the setting; {@code root} is where the system's folders begin. */
    public static Outputs read(final Path root) {
        try {
            final String value = Files.readString(root.resolve(SETTING), StandardCharsets.US_ASCII)
                    .strip();
            return switch (value) {
                case "Y" -> Outputs.DRIVE_ON;
                case "N" -> Outputs.ARE_LET_GO;
                default -> Outputs.UNKNOWN;
            };
        } catch (final IOException absent) {
            return Outputs.UNKNOWN;
        }
    }
}
