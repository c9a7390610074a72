package slackwater.controller.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whether what is built is still what was checked. */
final class RigWatchTest {
    @TempDir
    private Path rig;

    @BeforeEach
    void write() throws IOException {
        Files.writeString(rig.resolve("rig.toml"), "a");
        Files.createDirectories(rig.resolve("shows"));
        Files.writeString(rig.resolve("shows/one.toml"), "b");
    }

    @Test
    void aRigLeftAloneOrOnlyTouchedHasNotChanged() throws IOException {
        final RigWatch watch = new RigWatch(rig);
        assertThat(watch.hasChanged()).isFalse();
        Files.setLastModifiedTime(rig.resolve("rig.toml"), FileTime.fromMillis(1_000));
        assertThat(watch.hasChanged()).isFalse();
        Files.writeString(rig.resolve("shows/one.toml"), "another show");
        assertThat(watch.hasChanged()).isFalse();
    }

    @Test
    void anotherWordInTheRigIsAChange() throws IOException {
        final RigWatch watch = new RigWatch(rig);
        Files.writeString(rig.resolve("rig.toml"), "ab");
        assertThat(watch.hasChanged()).isTrue();
    }

    @Test
    void aRigThatIsGoneIsAChange() throws IOException {
        final RigWatch watch = new RigWatch(rig);
        Files.delete(rig.resolve("rig.toml"));
        assertThat(watch.hasChanged()).isTrue();
    }

    @Test
    void anotherLibraryIsAChange() throws IOException {
        final RigWatch watch = new RigWatch(rig);
        Files.createDirectories(rig.resolve("lib"));
        Files.writeString(rig.resolve("lib/kind.jar"), "c");
        assertThat(watch.hasChanged()).isTrue();
    }
}
