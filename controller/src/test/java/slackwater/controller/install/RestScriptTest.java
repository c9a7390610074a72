package slackwater.controller.install;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slackwater.model.Rig;
import slackwater.model.file.RigFolder;
import slackwater.model.finding.Finding;

/** The stop action, run by a real shell against tools that write down what they were asked. */
@Timeout(20)
final class RestScriptTest {
    static final String RIG = """
            [controller.porch]
            board = "pi-4"
            watchdog = "10 s"
            hold-up = { pin = 12, drop-out = "400 ms" }

            [output.lid]
            kind = "valve"
            pin = 17
            active = "high"
            on-power-loss = "spring-returns"
            longest-on = "2 s"
            unguarded = "bench block, nothing fitted"

            [output.lamp]
            kind = "lamp"
            pin = 6
            active = "low"
            unguarded = "12 V lamp, touch-safe"
            """;

    @TempDir
    private Path folder;

    private Rig rig;

    @BeforeEach
    void make() throws IOException {
        rig = rig(folder, RIG);
        Files.writeString(
                folder.resolve("rest"), RestScript.text(rig, rig.controllers().get(0)));
    }

    static Rig rig(final Path folder, final String text) throws IOException {
        Files.writeString(folder.resolve("rig.toml"), text);
        final var reading = RigFolder.read(folder, Optional.empty(), RestScriptTest.class.getClassLoader());
        assertThat(reading.findings()).noneMatch(Finding::isError);
        return reading.rig().orElseThrow();
    }

    private void tool(final String name, final String body) throws IOException {
        final Path file = Files.writeString(folder.resolve(name), "#!/bin/sh\n" + body);
        assertThat(file.toFile().setExecutable(true)).isTrue();
    }

    private void tools(final String version, final String busy) throws IOException {
        tool("gpiodetect", """
                echo 'gpiochip1 [raspberrypi-exp-gpio] (8 lines)'
                echo 'gpiochip3 [pinctrl-bcm2711] (58 lines)'
                """);
        tool("gpioset", """
                if [ "$1" = --version ]; then echo '%s'; exit 0; fi
                echo "$@" >>%s
                case " $* " in *" %s "*) exit 1 ;; esac
                """.formatted(version, folder.resolve("told"), busy));
    }

    private int run() throws IOException, InterruptedException {
        final ProcessBuilder shell =
                new ProcessBuilder("/bin/sh", folder.resolve("rest").toString());
        shell.environment().put("PATH", folder + ":/usr/bin:/bin");
        final Process process = shell.redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile())
                .start();
        assertThat(process.waitFor(10, TimeUnit.SECONDS)).isTrue();
        return process.exitValue();
    }

    private List<String> told() throws IOException {
        return Files.readAllLines(folder.resolve("told"), StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @CsvSource({
        "gpioset (libgpiod) v1.6.3, --mode=exit gpiochip3 17=0 6=1 12=0",
        "gpioset (libgpiod) v2.2, --chip gpiochip3 --toggle 0 17=0 6=1 12=0"
    })
    void everyOutputAndTheHoldUpLineGoToRestAtOnce(final String version, final String asked)
            throws IOException, InterruptedException {
        tools(version, "none");
        assertThat(run()).isZero();
        assertThat(told()).containsExactly(asked);
    }

    @Test
    void aLineThatIsHeldDoesNotKeepTheOthersFromRest() throws IOException, InterruptedException {
        tools("gpioset (libgpiod) v1.6.3", "6=1");
        assertThat(run()).isEqualTo(1);
        assertThat(told())
                .containsExactly(
                        "--mode=exit gpiochip3 17=0 6=1 12=0",
                        "--mode=exit gpiochip3 17=0",
                        "--mode=exit gpiochip3 6=1",
                        "--mode=exit gpiochip3 12=0");
    }

    @Test
    void aBoardWithoutTheChipOrTheToolsIsToldInOneLine() throws IOException, InterruptedException {
        tool("gpiodetect", "echo 'gpiochip0 [pinctrl-rp1] (54 lines)'\n");
        assertThat(run()).isEqualTo(1);
        assertThat(Files.readAllLines(folder.resolve("said")))
                .containsExactly("slackwater: no GPIO chip pinctrl-bcm2711, or gpiodetect is missing"
                        + " (apt-get install gpiod)");
    }

    @Test
    void outputsWithoutAPinAreNamed() throws IOException {
        final Rig unwired = rig(folder, RIG.replace("pin = 17\n", "").replace("pin = 12, ", ""));
        assertThat(RestScript.unwired(unwired, unwired.controllers().get(0))).containsExactly("lid", "hold-up");
        assertThat(RestScript.unwired(rig, rig.controllers().get(0))).isEmpty();
    }
}
