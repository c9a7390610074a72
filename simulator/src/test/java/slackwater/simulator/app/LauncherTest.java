package slackwater.simulator.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher runs in a folder of its own, with stand-ins for java and mvn that say what the test wants. */
class LauncherTest {
    private static final List<String> SHELL_TOOLS =
            List.of("sh", "dirname", "readlink", "sed", "head", "find", "mkdir", "mv", "tail");
    private static final long PATIENCE_S = 20;
    private static final String JAVA_17 = "echo 'openjdk version \"17.0.15\" 2025-04-15' >&2";
    private static final String MAVEN_38 = "echo 'Apache Maven 3.8.0'";

    @TempDir
    private Path folder;

    private Path home;
    private Path bin;

    private record Outcome(int exitCode, String out, String err) {}

    @BeforeEach
    void copyTheLauncherAndOfferTheShellTools() throws IOException {
        home = Files.createDirectories(folder.resolve("home"));
        bin = Files.createDirectories(folder.resolve("bin"));
        final Path launcher = Path.of("..", "slackwater").toAbsolutePath().normalize();
        Files.copy(launcher, home.resolve("slackwater"), StandardCopyOption.COPY_ATTRIBUTES);
        for (final String tool : SHELL_TOOLS) {
            fake(tool, "exec " + whereIs(tool) + " \"$@\"");
        }
    }

    @Test
    void javaThatIsMissingIsNamedWithItsPackage() throws Exception {
        final Outcome outcome = launch();

        assertRefused(outcome, "Java is missing", "openjdk-17-jdk-headless");
    }

    @Test
    void java16IsTooOld() throws Exception {
        fake("java", "echo 'openjdk version \"16.0.2\" 2021-07-20' >&2");

        assertRefused(launch(), "too old (Java 16)", "openjdk-17-jdk-headless");
    }

    @Test
    void javaWithTheOldKindOfVersionNumberIsTooOld() throws Exception {
        fake("java", "echo 'java version \"1.8.0_402\"' >&2");

        assertRefused(launch(), "too old (Java 1)", "openjdk-17-jdk-headless");
    }

    @Test
    void javaWithoutItsCompilerCannotBuild() throws Exception {
        fake("java", JAVA_17);
        fake("mvn", MAVEN_38);

        assertRefused(launch(), "no compiler", "openjdk-17-jdk-headless");
    }

    @Test
    void mavenThatIsMissingIsNamedWithItsPackage() throws Exception {
        fake("java", JAVA_17);
        fake("javac", "exit 0");

        assertRefused(launch(), "Maven is missing", "apt-get install maven");
    }

    @Test
    void maven37IsTooOld() throws Exception {
        fake("java", JAVA_17);
        fake("javac", "exit 0");
        fake("mvn", "echo 'Apache Maven 3.7.9'");

        assertRefused(launch(), "Maven is too old (3.7)", "apt-get install maven");
    }

    @Test
    void maven38IsNewEnoughAndAFailedBuildShowsItsLastLinesAndWhereTheLogIs() throws Exception {
        fake("java", JAVA_17);
        fake("javac", "exit 0");
        fake("mvn", "[ \"$1\" = -version ] && " + MAVEN_38 + " && exit 0\necho 'disk is full'\nexit 1");

        final Outcome outcome = launch();

        assertThat(outcome.exitCode()).isEqualTo(1);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err())
                .contains("building, about a minute the first time", "disk is full", "slackwater-build.log");
    }

    @Test
    void aProgramThatIsBuiltStartsWithoutMavenAndGetsEveryArgumentAsItWas() throws Exception {
        fake("java", "[ \"$1\" = -version ] && " + JAVA_17 + " && exit 0\nfor a; do echo \"<$a>\"; done\nexit 7");
        pretendItIsBuilt();

        final Outcome outcome = launch("check", "my rig");

        assertThat(outcome.exitCode()).isEqualTo(7);
        assertThat(outcome.out()).endsWith("<check>\n<my rig>\n");
        assertThat(outcome.err()).isEmpty();
    }

    @Test
    void aSourceThatChangedSinceTheBuildIsBuiltAgain() throws Exception {
        fake("java", JAVA_17);
        pretendItIsBuilt();
        Files.writeString(
                Files.createDirectories(home.resolve("controller/src/main")).resolve("New.java"), "");

        assertRefused(launch(), "no compiler", "openjdk-17-jdk-headless");
    }

    @Test
    void theLauncherFindsItsFolderThroughALink() throws Exception {
        fake("java", "[ \"$1\" = -version ] && " + JAVA_17 + " && exit 0\nfor a; do echo \"$a\"; done");
        pretendItIsBuilt();
        final Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("home", "slackwater"));

        final Outcome outcome = run(List.of("sh", link.toString()));

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out()).contains(home.toRealPath() + "/simulator/target/");
    }

    private void pretendItIsBuilt() throws IOException {
        final Path target = Files.createDirectories(home.resolve("simulator/target"));
        Files.writeString(target.resolve("simulator-0.1.0-SNAPSHOT.jar"), "");
        final Path built = Files.createDirectories(home.resolve("target")).resolve("slackwater.built");
        Files.writeString(built, "");
        // Long ago: what a test writes now is newer, however coarse the file system's clock is.
        Files.setLastModifiedTime(built, FileTime.fromMillis(0));
    }

    private static void assertRefused(final Outcome outcome, final String what, final String remedy) {
        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).hasLineCount(1).contains(what, remedy);
    }

    private Outcome launch(final String... arguments) throws IOException, InterruptedException {
        final List<String> command =
                new ArrayList<>(List.of("sh", home.resolve("slackwater").toString()));
        command.addAll(List.of(arguments));
        return run(command);
    }

    private Outcome run(final List<String> command) throws IOException, InterruptedException {
        final Path out = folder.resolve("out.txt");
        final Path err = folder.resolve("err.txt");
        final ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().clear();
        builder.environment().put("PATH", bin.toString());
        final Process process = builder.start();
        assertThat(process.waitFor(PATIENCE_S, TimeUnit.SECONDS)).isTrue();
        return new Outcome(process.exitValue(), Files.readString(out), Files.readString(err));
    }

    private void fake(final String name, final String body) throws IOException {
        final Path script = bin.resolve(name);
        Files.writeString(script, "#!/bin/sh\n" + body + "\n");
        assertThat(script.toFile().setExecutable(true)).isTrue();
    }

    private static Path whereIs(final String tool) {
        for (final String place : List.of("/usr/bin", "/bin")) {
            final Path path = Path.of(place, tool);
            if (Files.isExecutable(path)) {
                return path;
            }
        }
        throw new IllegalStateException("no " + tool + " in /usr/bin or /bin");
    }
}
