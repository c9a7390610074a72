package slackwater.controller.live;

import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** What must be looked at now and then and may be slow: service manager, time, the rig's files, the watchdog's trouble. */
final class Housekeeping {
    private static final long LOOK_MS = 250;
    private static final long FILES_NS = TimeUnit.SECONDS.toNanos(1);
    private static final long TIME_NS = TimeUnit.SECONDS.toNanos(30);
    private static final long END_MS = 500;

    private final Parts parts;
    private final Runnable rigChanged;
    private final Thread thread;
    private volatile boolean isEnding;
    private volatile String status = "";
    private boolean hasToldWatchdog;

    record Parts(ServiceNotifier notifier, WallClock wall, RigWatch rig, Optional<DeviceWatchdog> watchdog, Say say) {}

    Housekeeping(final Parts parts, final Runnable rigChanged) {
        this.parts = parts;
        this.rigChanged = rigChanged;
        thread = new Thread(this::run, "housekeeping");
        thread.setDaemon(true);
    }

    void start(final String first) {
        status = first;
        thread.start();
    }

    void stop() {
        isEnding = true;
        thread.interrupt();
        try {
            thread.join(END_MS);
        } catch (final InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        if (!parts.notifier().stopping()) {
            parts.say().line("the service manager could not be told that this ends");
        }
    }

    private void run() {
        if (!parts.notifier().ready(status)) {
            parts.say().line("the service manager could not be told: is systemd-notify there?");
        }
        long nextFilesNs = System.nanoTime();
        long nextTimeNs = nextFilesNs;
        while (!isEnding) {
            final long nowNs = System.nanoTime();
            parts.notifier().look(nowNs);
            if (nowNs - nextTimeNs >= 0) {
                parts.wall().look();
                nextTimeNs = nowNs + TIME_NS;
            }
            if (nowNs - nextFilesNs >= 0) {
                nextFilesNs = nowNs + FILES_NS;
                if (parts.rig().hasChanged()) {
                    rigChanged.run();
                }
            }
            tellOfTheWatchdog();
            pause();
        }
    }

    private void tellOfTheWatchdog() {
        final Optional<String> trouble = parts.watchdog().flatMap(DeviceWatchdog::trouble);
        if (trouble.isPresent() && !hasToldWatchdog) {
            hasToldWatchdog = true;
            parts.say().line(trouble.get());
        }
    }

    private void pause() {
        try {
            Thread.sleep(LOOK_MS);
        } catch (final InterruptedException ending) {
            isEnding = true;
        }
    }
}
