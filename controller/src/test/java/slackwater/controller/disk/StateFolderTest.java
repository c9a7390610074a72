package slackwater.controller.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.controller.latch.Kept;

/** What a start finds in the folder that the last one left, however it ended (S5). */
final class StateFolderTest {
    private static final long UNUSUAL = 1L << 40;
    private static final Kept LOCKED = new Kept(List.of("stop"), new TreeMap<>(), List.of(), -1);

    @TempDir
    private Path folder;

    private StateFolder open() {
        return StateFolder.open(folder, UNUSUAL);
    }

    private void startedAndKept(final Kept kept) throws IOException {
        try (StateFolder first = open();
                DiskLatchStore store = new DiskLatchStore(first, 5_000_000_000L)) {
            store.keep(kept);
        }
    }

    @Test
    void theFirstStartIsNumberOneAndNothingIsLatched() throws IOException {
        try (StateFolder first = open()) {
            assertThat(first.bootId()).isEqualTo(1);
            assertThat(first.kept()).contains(Kept.NOTHING);
            assertThat(first.trouble()).isEmpty();
        }
    }

    @Test
    void everyStartHasTheNextNumberAndFindsWhatWasKept() throws IOException {
        startedAndKept(LOCKED);
        for (int start = 2; start < 5; start++) {
            try (StateFolder next = open()) {
                assertThat(next.bootId()).isEqualTo(start);
                assertThat(next.kept()).contains(LOCKED);
            }
        }
    }

    @Test
    void latchesCutOffAtAnyByteAreUnreadableSoEverythingIsLockedOut() throws IOException {
        startedAndKept(LOCKED);
        final byte[] whole = Files.readAllBytes(folder.resolve("latches"));
        for (int length = 0; length < whole.length; length++) {
            Files.write(folder.resolve("latches"), Arrays.copyOf(whole, length));
            try (StateFolder torn = open()) {
                assertThat(torn.kept()).as("%d bytes left", length).isEmpty();
            }
        }
    }

    @Test
    void aHalfWrittenNewFileBesideTheOldOneChangesNothing() throws IOException {
        startedAndKept(LOCKED);
        final byte[] next = KeptText.write(Kept.NOTHING);
        for (int length = 0; length <= next.length; length++) {
            Files.write(folder.resolve("latches.new"), Arrays.copyOf(next, length));
            try (StateFolder again = open()) {
                assertThat(again.kept()).as("%d bytes written", length).contains(LOCKED);
            }
        }
    }

    @Test
    void latchesThatAreGoneAlthoughThereWereStartsAreLockedOut() throws IOException {
        startedAndKept(LOCKED);
        Files.delete(folder.resolve("latches"));
        try (StateFolder again = open()) {
            assertThat(again.kept()).isEmpty();
        }
    }

    @Test
    void aPowerCutBetweenTheFirstLatchesAndTheFirstCountIsStillAFirstStart() throws IOException {
        startedAndKept(Kept.NOTHING);
        Files.delete(folder.resolve("starts"));
        try (StateFolder again = open()) {
            assertThat(again.bootId()).isEqualTo(1);
            assertThat(again.kept()).contains(Kept.NOTHING);
        }
    }

    @Test
    void aCountThatCannotBeReadGivesANumberThatNoStartHadBefore() throws IOException {
        startedAndKept(LOCKED);
        Files.writeString(folder.resolve("starts"), "1x");
        try (StateFolder again = open()) {
            assertThat(again.bootId()).isEqualTo(UNUSUAL);
            assertThat(again.kept()).contains(LOCKED);
        }
        try (StateFolder after = open()) {
            assertThat(after.bootId()).as("counted on from there").isEqualTo(UNUSUAL + 1);
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldInOneLineAndTheStartGoesOn() throws IOException {
        final Path file = Files.writeString(folder.resolve("file"), "no folder");
        try (StateFolder none = StateFolder.open(file.resolve("state"), UNUSUAL)) {
            assertThat(none.trouble())
                    .hasValueSatisfying(line -> assertThat(line)
                            .startsWith("nothing can be kept in " + file.resolve("state"))
                            .contains("will not outlive a restart")
                            .doesNotContain("\n"));
            assertThat(none.bootId()).isEqualTo(UNUSUAL);
        }
    }

    @Test
    void aSecondControllerIsRefusedTheFolder() throws IOException {
        try (StateFolder first = open()) {
            assertThatThrownBy(this::open)
                    .isInstanceOf(StateFolder.TakenException.class)
                    .hasMessage("another controller runs with the state folder " + first.folder()
                            + ": end it, or give --state another folder");
        }
        try (StateFolder later = open()) {
            assertThat(later.bootId()).isEqualTo(2);
        }
    }
}
