package slackwater.controller.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import slackwater.model.event.Event;

/** One event a line, limited in size, and never in the way of the scan (S22). */
@Timeout(20)
final class JournalFileTest {
    private static final EventJson.Heading HEADING =
            new EventJson.Heading("Sea cave", "evening", "north", 3, 7, "ab12", 1_700_000_000_000L);
    private static final String FIRST = "{\"kind\":\"Begun\",\"rig\":\"Sea cave\",\"show\":\"evening\","
            + "\"controller\":\"north\",\"bootId\":3,\"seed\":7,\"rigSha256\":\"ab12\",\"epochMs\":1700000000000}";

    @TempDir
    private Path folder;

    private final List<String> said = Collections.synchronizedList(new ArrayList<>());

    private JournalFile journal(final Path where, final long fileBytes) {
        return new JournalFile(where, new JournalFile.Limits(fileBytes, 3), HEADING, said::add);
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().toList();
        }
    }

    @Test
    void everyEventIsALineAfterTheHeading() throws IOException {
        try (JournalFile journal = journal(folder, 1_000_000)) {
            assertThat(journal.offer(new Event.Switched(5, "lid", true))).isTrue();
            assertThat(journal.offer(new Event.Latched(6, "stop", "loop \"a\" is open")))
                    .isTrue();
        }
        assertThat(files()).hasSize(1);
        assertThat(Files.readAllLines(files().get(0)))
                .containsExactly(
                        FIRST,
                        "{\"atNs\":5,\"kind\":\"Switched\",\"output\":\"lid\",\"isEnergised\":true,"
                                + "\"text\":\"lid energised\"}",
                        "{\"atNs\":6,\"kind\":\"Latched\",\"what\":\"stop\","
                                + "\"text\":\"stop latched: loop \\\"a\\\" is open\"}");
        assertThat(said).isEmpty();
    }

    @Test
    void filesAreEndedAtTheirSizeAndTheOldestGoes() throws IOException {
        try (JournalFile journal = journal(folder, 1)) {
            for (int event = 0; event < 9; event++) {
                journal.offer(new Event.Dropped(event, event));
            }
        }
        assertThat(files().stream().map(file -> String.valueOf(file.getFileName())))
                .containsExactly(
                        "journal-0000000000000000003-0007.jsonl",
                        "journal-0000000000000000003-0008.jsonl",
                        "journal-0000000000000000003-0009.jsonl");
    }

    @Test
    void aFolderThatCannotBeWrittenIsSaidOnceAndEventsAreTakenAllTheSame() throws IOException {
        final Path nowhere = Files.writeString(folder.resolve("file"), "").resolve("state");
        try (JournalFile journal = journal(nowhere, 1_000)) {
            for (int event = 0; event < 50; event++) {
                assertThat(journal.offer(new Event.Dropped(event, event))).isTrue();
            }
        }
        assertThat(said).hasSize(1);
        assertThat(said.get(0))
                .startsWith("the journal cannot be written in " + nowhere)
                .endsWith("the scan goes on without it");
    }
}
