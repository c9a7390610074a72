package slackwater.controller.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import slackwater.controller.latch.Kept;
import slackwater.controller.latch.LatchStore;

/** Returned means on disk; a disk that is slow, full or dead never holds the scan for long (S5, S22). */
@Timeout(20)
final class DiskLatchStoreTest {
    private static final long PATIENT_NS = TimeUnit.SECONDS.toNanos(10);
    private static final long HASTY_NS = TimeUnit.MILLISECONDS.toNanos(1);
    private static final long RETRY_NS = TimeUnit.SECONDS.toNanos(1);
    private static final Kept ONE = latched("one");
    private static final Kept TWO = latched("two");

    @TempDir
    private Path path;

    private StateFolder folder;
    private final AtomicLong nowNs = new AtomicLong();

    private static Kept latched(final String what) {
        return new Kept(List.of(what), new TreeMap<>(), List.of(), -1);
    }

    @BeforeEach
    void open() {
        folder = StateFolder.open(path, 1L << 40);
    }

    @AfterEach
    void close() throws IOException {
        folder.close();
    }

    @Test
    void whatItReturnedFromIsOnDisk() throws IOException {
        try (DiskLatchStore store = new DiskLatchStore(folder, PATIENT_NS)) {
            for (final Kept kept : List.of(ONE, TWO, ONE)) {
                store.keep(kept);
                assertThat(KeptText.read(Files.readAllBytes(path.resolve("latches"))))
                        .contains(kept);
            }
        }
    }

    @Test
    void aSlowDiskIsWaitedForOnceAndAnsweredWhenItIsDone() throws InterruptedException {
        final CountDownLatch mayWrite = new CountDownLatch(1);
        final List<String> written = Collections.synchronizedList(new ArrayList<>());
        try (DiskLatchStore store = new DiskLatchStore(
                folder, (file, content) -> await(mayWrite, written, content), nowNs::get, HASTY_NS)) {
            assertThatThrownBy(() -> store.keep(ONE)).isInstanceOf(LatchStore.NotYetException.class);
            assertThatThrownBy(() -> store.keep(TWO)).isInstanceOf(LatchStore.NotYetException.class);
            mayWrite.countDown();
            keepUntilKept(store, TWO);
            assertThat(written).hasSize(2);
            assertThatCode(() -> store.keep(TWO)).doesNotThrowAnyException();
            assertThat(written).as("what is there is not written again").hasSize(2);
        }
    }

    private static void await(final CountDownLatch mayWrite, final List<String> written, final byte[] content) {
        try {
            mayWrite.await();
        } catch (final InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        written.add(content.length + " bytes");
    }

    private static void keepUntilKept(final DiskLatchStore store, final Kept kept) throws InterruptedException {
        while (true) {
            try {
                store.keep(kept);
                return;
            } catch (final LatchStore.NotYetException notYet) {
                Thread.sleep(1);
            }
        }
    }

    @Test
    void aFullDiskIsTriedOnceASecondAndNotByEveryScan() {
        final AtomicLong tries = new AtomicLong();
        final DiskLatchStore.Writing full = (file, content) -> {
            tries.incrementAndGet();
            throw new IOException("No space left on device");
        };
        try (DiskLatchStore store = new DiskLatchStore(folder, full, nowNs::get, PATIENT_NS)) {
            for (int scan = 0; scan < 100; scan++) {
                assertThatThrownBy(() -> store.keep(ONE)).hasMessageContaining("No space left on device");
            }
            assertThat(tries).hasValue(1);
            nowNs.set(RETRY_NS - 1);
            assertThatThrownBy(() -> store.keep(ONE)).hasMessageContaining("No space left on device");
            assertThat(tries).hasValue(1);
            nowNs.set(RETRY_NS);
            assertThatThrownBy(() -> store.keep(ONE)).hasMessageContaining("No space left on device");
            assertThat(tries).hasValue(2);
        }
    }

    @Test
    void itReadsWhatTheLastRunKept() throws IOException {
        try (DiskLatchStore store = new DiskLatchStore(folder, PATIENT_NS)) {
            assertThat(store.read()).contains(Kept.NOTHING);
            store.keep(ONE);
        }
        folder.close();
        try (StateFolder next = StateFolder.open(path, 1L << 40);
                DiskLatchStore again = new DiskLatchStore(next, PATIENT_NS)) {
            assertThat(again.read()).contains(ONE);
        }
    }
}
