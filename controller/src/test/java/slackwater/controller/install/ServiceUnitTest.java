package slackwater.controller.install;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.model.Rig;

/** The service that restarts at rest, never armed, and rests every line when it ends. */
final class ServiceUnitTest {
    private static final ServiceUnit.Places PLACES = new ServiceUnit.Places(
            Path.of("/usr/local/lib/slackwater/slackwater-controller"),
            Path.of("/srv/my rig 100%"),
            Path.of("/var/lib/slackwater/porch"),
            Path.of("/usr/local/lib/slackwater/slackwater-porch-rest"));

    @TempDir
    private Path folder;

    private String unit(final String text) throws IOException {
        final Rig rig = RestScriptTest.rig(folder, text);
        return ServiceUnit.text(rig, rig.controllers().get(0), "evening", PLACES);
    }

    @Test
    void itSaysWhatKeepsTheRigSafe() throws IOException {
        assertThat(unit(RestScriptTest.RIG).lines())
                .contains(
                        "Type=notify",
                        "NotifyAccess=all",
                        "WatchdogSec=10",
                        "User=slackwater",
                        "SupplementaryGroups=gpio",
                        "ExecStartPre=+/usr/bin/wdctl --settimeout 10 /dev/watchdog0",
                        "ExecStart=/usr/local/lib/slackwater/slackwater-controller run \"/srv/my rig 100%%\""
                                + " --controller porch --show evening --pins gpio --state /var/lib/slackwater/porch",
                        "ExecStopPost=/usr/local/lib/slackwater/slackwater-porch-rest",
                        "Restart=on-failure",
                        "RestartPreventExitStatus=2",
                        "LimitRTPRIO=50",
                        "MemoryMax=160M",
                        "ProtectSystem=strict",
                        "ReadWritePaths=/var/lib/slackwater/porch")
                .noneMatch(line -> line.startsWith("After=network") || line.startsWith("Wants="));
    }

    @Test
    void aRigThatAsksForNoWatchdogSetsNone() throws IOException {
        assertThat(unit(RestScriptTest.RIG.replace("watchdog = \"10 s\"\n", "")))
                .doesNotContain("wdctl");
    }

    @Test
    void whatTheKernelDoesWithAnOutputIsReadAndSaid() throws IOException {
        assertThat(BootSetting.read(folder)).isEqualTo(BootSetting.Outputs.UNKNOWN);
        final Path setting = folder.resolve("sys/module/pinctrl_bcm2835/parameters/persist_gpio_outputs");
        Files.createDirectories(setting.getParent());
        Files.writeString(setting, "Y\n");
        assertThat(BootSetting.read(folder)).isEqualTo(BootSetting.Outputs.DRIVE_ON);
        assertThat(BootSetting.read(folder).text())
                .isEqualTo("outputs drive on after the program dies: add the line dtparam=strict_gpiod to"
                        + " /boot/firmware/config.txt and boot again");
        Files.writeString(setting, "N\n");
        assertThat(BootSetting.read(folder)).isEqualTo(BootSetting.Outputs.ARE_LET_GO);
    }
}
