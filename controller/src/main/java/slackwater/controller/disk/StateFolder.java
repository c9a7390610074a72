package slackwater.controller.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import slackwater.controller.latch.Kept;

/**
 * One controller's folder: its latches, its count of starts, its journal. A folder that nothing was ever kept in is a
 * controller that was never used; one that has counted starts and lost its latches is locked out (S5).
 */
public final class StateFolder implements AutoCloseable {
    private static final String LATCHES = "latches";
    private static final String STARTS = "starts";
    private static final String LOCK = "lock";

    private final Path folder;
    private final @Nullable FileChannel lock;
    private final long bootId;
    private final Optional<Kept> kept;
    private final Optional<String> trouble;

    private StateFolder(
            final Path folder,
            final @Nullable FileChannel lock,
            final long bootId,
            final Optional<Kept> kept,
            final Optional<String> trouble) {
        this.folder = folder;
        this.lock = lock;
        this.bootId = bootId;
        this.kept = kept;
        this.trouble = trouble;
    }

    /** Another program has the folder. */
    public static final class TakenException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        TakenException(final Path folder) {
            super("another controller runs with the state folder " + folder
                    + ": end it, or give --state another folder");
        }
    }

    /**
     * Opens the folder, makes it where it is missing, and counts this start. A folder that cannot be written is told by
     * {@link #trouble} and does not keep the controller from running.
     *
     * @param unusual a number for this start, used only when the count cannot be read or kept
     * @throws TakenException when another program has it
     */
    public static StateFolder open(final Path folder, final long unusual) {
        @Nullable FileChannel lock = null;
        final Optional<Long> starts;
        final Optional<Kept> kept;
        Optional<String> trouble = Optional.empty();
        try {
            Files.createDirectories(folder);
            lock = lock(folder);
        } catch (final IOException unwritable) {
            trouble = Optional.of(told(folder, unwritable));
        }
        starts = starts(folder.resolve(STARTS));
        final boolean isNew = starts.equals(Optional.of(0L)) && Files.notExists(folder.resolve(LATCHES));
        kept = isNew ? Optional.of(Kept.NOTHING) : latches(folder.resolve(LATCHES));
        long bootId = starts.map(count -> count + 1).orElse(unusual);
        if (trouble.isEmpty()) {
            try {
                if (isNew) { // before the count: a count without latches means that they were lost
                    SafeFile.replace(folder.resolve(LATCHES), KeptText.write(Kept.NOTHING));
                }
                SafeFile.replace(folder.resolve(STARTS), (bootId + "\n").getBytes(StandardCharsets.US_ASCII));
            } catch (final IOException unwritable) {
                trouble = Optional.of(told(folder, unwritable));
            }
        }
        if (trouble.isPresent()) {
            bootId = unusual; // the same count again would make an old request valid (S3)
        }
        return new StateFolder(folder, lock, bootId, kept, trouble);
    }

    private static FileChannel lock(final Path folder) throws IOException {
        final FileChannel channel =
                FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            final @Nullable FileLock held = channel.tryLock();
            if (held == null) {
                channel.close();
                throw new TakenException(folder);
            }
            return channel;
        } catch (final OverlappingFileLockException here) {
            channel.close();
            throw new TakenException(folder);
        }
    }

    /** Empty when it is there and cannot be read. */
    private static Optional<Long> starts(final Path file) {
        try {
            return Optional.of(Long.valueOf(
                    Files.readString(file, StandardCharsets.US_ASCII).strip()));
        } catch (final NoSuchFileException never) {
            return Optional.of(0L);
        } catch (final IOException | NumberFormatException broken) {
            return Optional.empty();
        }
    }

    private static Optional<Kept> latches(final Path file) {
        try {
            return KeptText.read(Files.readAllBytes(file));
        } catch (final IOException unreadable) {
            return Optional.empty();
        }
    }

    private static String told(final Path folder, final IOException unwritable) {
        return "nothing can be kept in " + folder + " (" + unwritable
                + "): latches and lockouts will not outlive a restart; make room or give --state another folder";
    }

    /** Why nothing can be kept, in one line. */
    public Optional<String> trouble() {
        return trouble;
    }

    /** This start's own number; requests quote it. */
    public long bootId() {
        return bootId;
    }

    /** What was kept; empty when it cannot be read. */
    public Optional<Kept> kept() {
        return kept;
    }

    /** Where the latches are kept. */
    Path latchFile() {
        return folder.resolve(LATCHES);
    }

    public Path folder() {
        return folder;
    }

    @Override
    public void close() throws IOException {
        if (lock != null) {
            lock.close();
        }
    }
}
