package slackwater.model.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slackwater.model.file.Reading;
import slackwater.model.file.RigFolder;
import slackwater.model.finding.Finding;

/** The examples are what people copy, so they are sound. */
class ExampleRigsTest {
    private static final Path RIGS = Path.of("..", "rigs");

    static List<Path> rigs() throws IOException {
        try (Stream<Path> folders = Files.list(RIGS)) {
            return folders.filter(Files::isDirectory)
                    .filter(folder ->
                            !Files.isDirectory(folder.resolve("src"))) // its own code is built and tried elsewhere
                    .sorted()
                    .toList();
        }
    }

    private static List<String> findings(final Path folder) {
        final Reading reading = RigFolder.read(folder, Optional.empty(), ExampleRigsTest.class.getClassLoader());
        final List<Finding> all = new ArrayList<>(reading.findings());
        reading.rig().ifPresent(rig -> all.addAll(Rules.check(Draft.of(rig, reading.show(), reading.where()))));
        assertThat(reading.rig()).as("findings while reading: %s", all).isPresent();
        return all.stream()
                .map(finding -> finding.severity() + " " + finding.code() + ": " + finding.message())
                .toList();
    }

    @Test
    void thereAreExamples() throws IOException {
        assertThat(rigs()).extracting(path -> path.getFileName().toString()).contains("first", "driftwood", "sea-cave");
    }

    @ParameterizedTest
    @MethodSource("rigs")
    void everyExampleIsWithoutErrors(final Path folder) {
        assertThat(findings(folder)).noneMatch(finding -> finding.startsWith("ERROR"));
    }

    /** A first rig has no pins yet, and that is all there is to say about it. */
    @Test
    void theFirstRigIsCleanButForItsPins() {
        assertThat(findings(RIGS.resolve("first")))
                .containsExactly("WARNING not-wired: on controller \"porch\" no pin is given for \"path\", \"lid\"");
    }

    @Test
    void driftwoodIsClean() {
        assertThat(findings(RIGS.resolve("driftwood"))).isEmpty();
    }

    @Test
    void theSeaCaveIsClean() {
        assertThat(findings(RIGS.resolve("sea-cave"))).isEmpty();
    }
}
