package slackwater.controller.live;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Optional;
import slackwater.controller.watchdog.BoardWatchdog;

/**
 * The board's watchdog device (handbook 9.1): opening it arms it, any byte feeds it, a {@code V} just before closing disarms
 * it. Java without native code cannot set its time-out; the service does that with {@code wdctl} before it starts the
 * controller, and here the time-out in force is read back from the kernel and must be the rig's.
 */
public final class DeviceWatchdog implements BoardWatchdog {
    private static final byte FEED = 0;
    private static final byte DISARM = 'V';
    /** Fed so many times within its time-out. */
    private static final int FEEDS = 4;

    private static final long FEED_NS_MAX = 1_000_000_000L;

    private final FileChannel device;
    private final ByteBuffer feed = ByteBuffer.allocateDirect(1);
    private final long every;
    private final boolean canDisarm;
    private long scans;
    private volatile Optional<String> trouble = Optional.empty();

    private DeviceWatchdog(final FileChannel device, final long every, final boolean canDisarm) {
        this.device = device;
        this.every = every;
        this.canDisarm = canDisarm;
    }

    /** It is missing, forbidden, busy, or set to another time-out; the message is the line that a person reads. */
    public static final class UnusableException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        UnusableException(final String message) {
            super(message);
        }
    }

    /**
     * Opens, and so arms, the board's first watchdog.
     *
     * @param root where the system's folders begin
     * @param wanted the time-out that the rig asks for
     * @param periodNs of the scans that will feed it
     * @throws UnusableException when it cannot do what the rig asks
     */
    public static DeviceWatchdog open(final Path root, final Duration wanted, final long periodNs) {
        final Path file = root.resolve("dev/watchdog0");
        final Path facts = root.resolve("sys/class/watchdog/watchdog0");
        if (Files.notExists(file)) {
            throw new UnusableException(
                    "the rig asks for a watchdog of " + wanted.toSeconds()
                            + " s, and this computer has no /dev/watchdog0: switch its driver on, or take watchdog out of the rig");
        }
        final String timeout = fact(facts, "timeout");
        if (!timeout.equals(Long.toString(wanted.toSeconds()))) {
            throw new UnusableException("the rig asks for a watchdog of " + wanted.toSeconds()
                    + " s, and /dev/watchdog0 is set to " + (timeout.isEmpty() ? "what cannot be read" : timeout + " s")
                    + ": as root, wdctl --settimeout " + wanted.toSeconds() + " /dev/watchdog0");
        }
        final long feedNs = Math.min(FEED_NS_MAX, wanted.toNanos() / FEEDS);
        try {
            return new DeviceWatchdog(
                    FileChannel.open(file, StandardOpenOption.WRITE),
                    Math.max(1, feedNs / periodNs),
                    !fact(facts, "nowayout").equals("1"));
        } catch (final IOException refused) {
            throw new UnusableException("/dev/watchdog0 cannot be opened (" + refused
                    + "): nothing else may hold it, and the user needs the rule that slackwater install makes");
        }
    }

    private static String fact(final Path facts, final String name) {
        try {
            return Files.readString(facts.resolve(name), StandardCharsets.US_ASCII)
                    .strip();
        } catch (final IOException unread) {
            return "";
        }
    }

    /** Never throws: a watchdog that cannot be fed resets the board, which is what it is for. */
    @Override
    public void feed() {
        if (scans++ % every == 0) {
            write(FEED);
        }
    }

    private void write(final byte what) {
        try {
            feed.clear();
            feed.put(0, what);
            device.write(feed);
        } catch (final IOException refused) {
            trouble = Optional.of("/dev/watchdog0 cannot be fed (" + refused + "): the board will reset");
        }
    }

    /** Why it cannot be fed. */
    public Optional<String> trouble() {
        return trouble;
    }

    /** Disarms it: only after a clean stop, with everything at rest. Returns whether it obeys. */
    public boolean disarm() {
        write(DISARM);
        close();
        return canDisarm;
    }

    /** Leaves it running: the board will reset. */
    public void close() {
        try {
            device.close();
        } catch (final IOException refused) {
            trouble = Optional.of("/dev/watchdog0 cannot be closed (" + refused + ")");
        }
    }
}
