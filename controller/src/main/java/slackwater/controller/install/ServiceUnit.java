package slackwater.controller.install;

import java.nio.file.Path;
import slackwater.model.Controller;
import slackwater.model.Rig;

/** The service manager's unit for one controller, and the rule that lets its user feed the watchdog. */
public final class ServiceUnit {
    private ServiceUnit() {}

    /**
     * Where things are on the board.
     *
     * @param program the launcher of the packaged controller
     * @param rig the rig's folder
     * @param state the folder that alone is written
     * @param restScript what rests every line without Java
     */
    public record Places(Path program, Path rig, Path state, Path restScript) {}

    /** The unit's name without its ending. */
    public static String name(final Controller controller) {
        return "slackwater-" + controller.name();
    }

    /** The unit. */
    public static String text(final Rig rig, final Controller controller, final String show, final Places places) {
        return """
                # Made from the rig by "slackwater install".
                [Unit]
                Description=Slackwater controller %1$s of %2$s
                # No network: a display that runs alone must start alone.
                After=local-fs.target
                StartLimitIntervalSec=120
                StartLimitBurst=5

                [Service]
                Type=notify
                # The program tells through systemd-notify, a process of its own.
                NotifyAccess=all
                WatchdogSec=10
                User=slackwater
                SupplementaryGroups=gpio
                %3$sExecStart=%4$s run %5$s --controller %1$s%6$s --pins gpio --state %7$s
                # Killed, out of memory, hung: every line is driven to rest without Java.
                ExecStopPost=%8$s
                # A start after a failure comes up at rest and is never armed by itself; what was given wrongly (2) stays so.
                Restart=on-failure
                RestartSec=2
                RestartPreventExitStatus=2
                SuccessExitStatus=143
                TimeoutStartSec=90
                TimeoutStopSec=5
                LimitRTPRIO=50
                MemoryMax=160M
                MemorySwapMax=0
                OOMPolicy=stop
                TasksMax=64
                NoNewPrivileges=yes
                PrivateTmp=yes
                ProtectHome=read-only
                ProtectSystem=strict
                ReadWritePaths=%7$s

                [Install]
                WantedBy=multi-user.target
                """.formatted(
                        controller.name(),
                        rig.name(),
                        watchdogLine(controller),
                        word(places.program()),
                        word(places.rig()),
                        show.isEmpty() ? "" : " --show " + word(Path.of(show)),
                        word(places.state()),
                        word(places.restScript()));
    }

    private static String watchdogLine(final Controller controller) {
        return controller
                .watchdog()
                .map(time ->
                        "# As root: only it may set the board's watchdog.\nExecStartPre=+/usr/bin/wdctl --settimeout "
                                + time.toSeconds() + " /dev/watchdog0\n")
                .orElse("");
    }

    /** The rule for the device manager. */
    public static String watchdogRule() {
        return """
                # The controller's user may feed the board's watchdog.
                KERNEL=="watchdog0", SUBSYSTEM=="watchdog", GROUP="gpio", MODE="0660"
                """;
    }

    /** A path as one word of a unit: quoted, its percent signs doubled. */
    private static String word(final Path path) {
        final String text =
                path.toString().replace("\\", "\\\\").replace("\"", "\\\"").replace("%", "%%");
        return text.equals(path.toString()) && text.chars().noneMatch(Character::isWhitespace)
                ? text
                : "\"" + text + "\"";
    }
}
