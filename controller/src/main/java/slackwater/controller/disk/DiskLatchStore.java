package slackwater.controller.disk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.locks.LockSupport;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import slackwater.controller.latch.Kept;
import slackwater.controller.latch.LatchStore;

/**
 * Latches on disk. The scan may not wait for a slow card, so a thread of its own writes; {@link #keep} waits a moment for it,
 * and where that is not enough it says "not yet" and the scan asks again. Returning without an exception still means: on disk.
 */
public final class DiskLatchStore implements LatchStore, AutoCloseable {
    private static final long RETRY_NS = TimeUnit.SECONDS.toNanos(1);
    private static final long CLOSE_MS = 500;

    private final Path file;
    private final Optional<Kept> first;
    private final Writing writing;
    private final LongSupplier clockNs;
    private final long patienceNs;
    private final AtomicReference<@Nullable Job> job = new AtomicReference<>();
    private final Thread writer;
    private volatile boolean isClosing;
    private @Nullable Job last;

    /** Puts a whole file in place of another, synchronised. */
    interface Writing {
        void replace(Path file, byte[] content) throws IOException;
    }

    private static final class Job {
        private final Kept kept;
        private final CountDownLatch done = new CountDownLatch(1);
        private volatile @Nullable IOException broken;
        private volatile long doneAtNs;

        Job(final Kept kept) {
            this.kept = kept;
        }
    }

    /** The store of a folder; a scan waits for it at most for the patience. */
    public DiskLatchStore(final StateFolder folder, final long patienceNs) {
        this(folder, SafeFile::replace, System::nanoTime, patienceNs);
    }

    DiskLatchStore(final StateFolder folder, final Writing writing, final LongSupplier clockNs, final long patienceNs) {
        file = folder.latchFile();
        first = folder.kept();
        this.writing = writing;
        this.clockNs = clockNs;
        this.patienceNs = patienceNs;
        writer = new Thread(this::write, "latch-writer");
        writer.setDaemon(true);
        writer.start();
    }

    @Override
    public Optional<Kept> read() {
        return first;
    }

    @Override
    public void keep(final Kept kept) {
        final Job before = last;
        if (before != null && before.done.getCount() > 0) {
            throw new NotYetException(); // one wait for each write, not one a scan
        }
        if (before != null) {
            final IOException broken = before.broken;
            if (broken == null && before.kept.equals(kept)) {
                return;
            }
            if (broken != null && clockNs.getAsLong() - before.doneAtNs < RETRY_NS) {
                throw new IllegalStateException(String.valueOf(broken));
            }
        }
        final Job next = new Job(kept);
        last = next;
        job.set(next);
        LockSupport.unpark(writer);
        await(next);
    }

    private void await(final Job next) {
        try {
            if (!next.done.await(patienceNs, TimeUnit.NANOSECONDS)) {
                throw new NotYetException();
            }
        } catch (final InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the controller is being ended", interrupted);
        }
        final IOException broken = next.broken;
        if (broken != null) {
            throw new IllegalStateException(String.valueOf(broken));
        }
    }

    private void write() {
        while (true) {
            final @Nullable Job next = job.getAndSet(null);
            if (next == null) {
                if (isClosing) {
                    return;
                }
                LockSupport.park(this);
                continue;
            }
            try {
                writing.replace(file, KeptText.write(next.kept));
            } catch (final IOException broken) {
                next.broken = broken;
            } finally {
                next.doneAtNs = clockNs.getAsLong();
                next.done.countDown();
            }
        }
    }

    /** Lets the write that is under way end, for a bounded time. */
    @Override
    public void close() {
        isClosing = true;
        LockSupport.unpark(writer);
        try {
            writer.join(CLOSE_MS);
        } catch (final InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
