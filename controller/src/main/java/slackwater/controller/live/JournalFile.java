package slackwater.controller.live;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;
import slackwater.controller.journal.Journal;
import slackwater.model.event.Event;

/**
 * The journal on disk: JSON lines, one event a line, written by a thread of its own from a bounded queue. Files and their
 * number are limited, the oldest goes first. A disk that fails is told once, and events are lost and counted; the scan goes on.
 */
public final class JournalFile implements Journal, AutoCloseable {
    private static final int QUEUE_MAX = 1_024;
    private static final long LOOK_NS = TimeUnit.MILLISECONDS.toNanos(100);
    private static final long CLOSE_MS = 500;
    private static final String PATTERN = "journal-*.jsonl";

    private final Path folder;
    private final Limits limits;
    private final Say say;
    private final String heading;
    private final long bootId;
    private final Ring ring = new Ring(QUEUE_MAX);
    private final Thread thread;
    private volatile boolean isClosing;
    private @Nullable BufferedWriter out;
    private long written;
    private int part;
    private boolean hasTold;

    /**
     * How much is kept.
     *
     * @param fileBytes a file is ended after so much
     * @param files so many are kept
     */
    public record Limits(long fileBytes, int files) {
        /** 16 files of 4 MiB: a night of a busy rig is a few megabytes. */
        public static final Limits USUAL = new Limits(4L << 20, 16);
    }

    JournalFile(final Path folder, final Limits limits, final EventJson.Heading heading, final Say say) {
        this.folder = folder;
        this.limits = limits;
        this.say = say;
        this.heading = EventJson.heading(heading);
        bootId = heading.bootId();
        thread = new Thread(this::write, "journal");
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public boolean offer(final Event event) {
        return ring.offer(event);
    }

    private void write() {
        line(heading);
        boolean isLastLook = false;
        while (true) {
            boolean hasWritten = false;
            for (@Nullable Event event = ring.poll(); event != null; event = ring.poll()) {
                line(EventJson.line(event));
                hasWritten = true;
            }
            if (hasWritten || isLastLook) {
                flush();
            }
            if (isLastLook) {
                end();
                return;
            }
            isLastLook = isClosing;
            if (!isLastLook) {
                LockSupport.parkNanos(this, LOOK_NS);
            }
        }
    }

    private void line(final String text) {
        try {
            BufferedWriter now = out;
            if (now == null || written >= limits.fileBytes()) {
                end();
                now = begin();
            }
            now.write(text);
            now.write('\n');
            written += text.length() + 1;
        } catch (final IOException broken) {
            trouble(broken);
        }
    }

    private BufferedWriter begin() throws IOException {
        final BufferedWriter next = Files.newBufferedWriter(
                folder.resolve(String.format(Locale.ROOT, "journal-%019d-%04d.jsonl", bootId, part)),
                StandardCharsets.UTF_8);
        out = next;
        part++;
        written = 0;
        dropOldest();
        return next;
    }

    private void dropOldest() throws IOException {
        final List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, PATTERN)) {
            found.forEach(files::add);
        }
        Collections.sort(files);
        for (int i = 0; i < files.size() - limits.files(); i++) {
            Files.delete(files.get(i));
        }
    }

    private void flush() {
        final BufferedWriter now = out;
        try {
            if (now != null) {
                now.flush();
            }
        } catch (final IOException broken) {
            trouble(broken);
        }
    }

    private void end() {
        final BufferedWriter now = out;
        out = null;
        try {
            if (now != null) {
                now.close();
            }
        } catch (final IOException broken) {
            trouble(broken);
        }
    }

    /** Once for each trouble that ends: a full disk says so every time otherwise. */
    private void trouble(final IOException broken) {
        if (!hasTold) {
            hasTold = true;
            say.line("the journal cannot be written in " + folder + " (" + broken + "); the scan goes on without it");
        }
    }

    /** Writes what waits, for a bounded time. */
    @Override
    public void close() {
        isClosing = true;
        LockSupport.unpark(thread);
        try {
            thread.join(CLOSE_MS);
        } catch (final InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
