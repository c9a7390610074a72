package slackwater.simulator.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;

class ReportFilesTest {
    private static final Path FULL = Path.of("/dev/full");

    @TempDir
    Path folder;

    static boolean hasFullDevice() {
        return Files.isWritable(FULL);
    }

    private long filesInFolder() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.count();
        }
    }

    @Test
    void aReportIsWrittenAndReplacesAnOlderOne() throws IOException {
        final Path target = folder.resolve("evening.html");
        assertThat(ReportFiles.write(target, out -> out.write("first"))).isEmpty();
        assertThat(ReportFiles.write(target, out -> out.write("µ second"))).isEmpty();
        assertThat(target).hasContent("µ second");
        assertThat(filesInFolder()).isEqualTo(1);
    }

    @Test
    void aReportThatBreaksOffLeavesTheOlderOneAndNothingBesideIt() throws IOException {
        final Path target = Files.writeString(folder.resolve("evening.vcd"), "older");
        assertThat(ReportFiles.write(target, out -> {
                    out.write("half");
                    throw new IOException("No space left on device");
                }))
                .contains("could not write " + target
                        + ": No space left on device; free some room, or write it to another disk");
        assertThat(target).hasContent("older");
        assertThat(filesInFolder()).isEqualTo(1);
    }

    @Test
    @EnabledIf("hasFullDevice")
    void aFullDiskIsOneLineAndADeviceIsNotReplaced() {
        assertThat(ReportFiles.write(FULL, out -> out.write("x".repeat(100_000))))
                .contains("could not write /dev/full: No space left on device;"
                        + " free some room, or write it to another disk");
        assertThat(Files.isRegularFile(FULL)).isFalse();
    }

    @Test
    void aFolderThatIsAFileIsOneLine() throws IOException {
        final Path file = Files.writeString(folder.resolve("reports"), "");
        final Path target = file.resolve("evening.html");
        assertThat(ReportFiles.write(target, out -> out.write("x")))
                .contains("could not write " + target + ": Not a directory; " + file + " is a file, name a folder");
    }

    @Test
    void aFolderThatIsMissingAndATargetThatIsAFolderAreOneLineEach() {
        final Path target = folder.resolve("none").resolve("evening.html");
        assertThat(ReportFiles.write(target, out -> out.write("x")))
                .contains("could not write " + target + ": no such file or folder; make the folder "
                        + target.getParent() + " first");
        assertThat(ReportFiles.write(folder, out -> out.write("x")))
                .contains("could not write " + folder + ": it is a folder; give a file name in it");
    }

    @Test
    void aLinkIsWrittenThroughAndStaysALink() throws IOException {
        final Path real = Files.writeString(folder.resolve("real.html"), "older");
        final Path link = Files.createSymbolicLink(folder.resolve("link.html"), real);
        assertThat(ReportFiles.write(link, out -> out.write("newer"))).isEmpty();
        assertThat(real).hasContent("newer");
        assertThat(Files.isSymbolicLink(link)).isTrue();
    }
}
