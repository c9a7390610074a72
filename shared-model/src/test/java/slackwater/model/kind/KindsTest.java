package slackwater.model.kind;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KindsTest {
    @TempDir
    private Path folder;

    /** A kind as somebody outside the project would write it. */
    public static final class Curtain implements OutputKind {
        @Override
        public String word() {
            return "stage-curtain";
        }

        @Override
        public Family family() {
            return Family.CONTACT;
        }
    }

    /** One that takes a word of ours. */
    public static final class OtherValve implements OutputKind {
        @Override
        public String word() {
            return "valve";
        }

        @Override
        public Family family() {
            return Family.LAMP;
        }
    }

    @Test
    void everyFamilyHasAKind() {
        assertThat(Arrays.stream(BuiltInOutput.values()).map(OutputKind::family))
                .containsExactly(Family.values());
        assertThat(Arrays.stream(BuiltInInput.values()).map(InputKind::family)).containsExactly(InputFamily.values());
    }

    @Test
    void aKindFromOutsideIsFoundByItsWord() throws IOException {
        final Kinds kinds = with(Curtain.class.getName());
        assertThat(kinds.output("stage-curtain")).isPresent();
        assertThat(kinds.outputWords()).endsWith("contact", "stage-curtain");
        assertThat(kinds.troubles()).isEmpty();
    }

    @Test
    void aKindFromOutsideCannotReplaceOneOfOurs() throws IOException {
        final Kinds kinds = with(OtherValve.class.getName());
        assertThat(kinds.output("valve")).contains(BuiltInOutput.VALVE);
        assertThat(kinds.troubles())
                .containsExactly(OtherValve.class.getName() + " takes the word \"valve\", which another kind has");
    }

    @Test
    void aKindThatCannotBeLoadedIsATroubleAndNoException() throws IOException {
        assertThat(with("nobody.Nothing").troubles()).singleElement().asString().contains("nobody.Nothing");
    }

    private Kinds with(final String className) throws IOException {
        final Path services = Files.createDirectories(folder.resolve("META-INF").resolve("services"));
        Files.writeString(services.resolve(OutputKind.class.getName()), className + "\n");
        final URL[] urls = {folder.toUri().toURL()};
        try (URLClassLoader loader = new URLClassLoader(urls, KindsTest.class.getClassLoader())) {
            return Kinds.of(loader);
        }
    }
}
