package slackwater.simulator.junit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.controller.app.RigLoader;
import slackwater.controller.app.RigLoader.Loaded;
import slackwater.controller.cue.CueCode;
import slackwater.model.Rig;
import slackwater.model.finding.Finding;
import slackwater.simulator.bench.BenchListener;
import slackwater.simulator.bench.Setup;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.evening.Keeper;

/** The example of a kind and a cue in code, built from its sources as make-lib builds it. */
class LanternRigTest {
    private static final Path EXAMPLE = Path.of("..", "rigs", "lantern");
    private static final Duration ARMED = Duration.ofSeconds(10);
    private static final long NS_PER_MS = 1_000_000L;

    @TempDir
    private static Path built;

    @TempDir
    private Path folder;

    @BeforeAll
    static void buildTheLibrary() throws IOException, URISyntaxException {
        final JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        final Path classes = Files.createDirectories(built.resolve("classes"));
        try (StandardJavaFileManager files =
                        compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8);
                Stream<Path> sources = Files.list(EXAMPLE.resolve("src/lantern"))) {
            final List<String> options = List.of(
                    "--release",
                    "17",
                    "-proc:none",
                    "-Xlint:all,-classfile",
                    "-Werror",
                    "-cp",
                    classPath(),
                    "-d",
                    classes.toString());
            final boolean isBuilt = compiler.getTask(
                            null, files, null, options, null, files.getJavaFileObjectsFromPaths(sources.toList()))
                    .call();
            assertThat(isBuilt).isTrue();
        }
        copy(EXAMPLE.resolve("src/META-INF"), classes.resolve("META-INF"));
        jar(classes, built.resolve("lantern.jar"));
    }

    @BeforeEach
    void copyTheRig() throws IOException {
        Files.copy(EXAMPLE.resolve("rig.toml"), folder.resolve("rig.toml"));
        copy(EXAMPLE.resolve("shows"), folder.resolve("shows"));
        Files.createDirectories(folder.resolve("lib"));
    }

    @Test
    void withItsLibraryTheRigIsWithoutFindings() throws IOException {
        final Loaded loaded = loadWithLibrary();

        assertThat(loaded.findings()).isEmpty();
        assertThat(loaded.codes()).extracting(CueCode::word).containsExactly("swell-count");
    }

    @Test
    void itsKindAndItsCueKeepTheContract() throws IOException {
        KindContract.of(loadWithLibrary()).check();
    }

    @Test
    void everyVisitIsShownOneLanternMoreUntilItBeginsAgain() throws IOException {
        final VirtualBench bench = opened(loadWithLibrary(), BenchListener.NOBODY);

        assertThat(Stream.of(1, 2, 3, 4).map(visit -> litOneByOne(bench)))
                .containsExactly(
                        List.of("bow"), List.of("bow", "mast"), List.of("bow", "mast", "stern"), List.of("bow"));
        assertThat(bench.violations()).isEmpty();
    }

    @Test
    void aLanternBurnsAndBlinksByItsPattern() throws IOException {
        final List<Long> changesMs = new ArrayList<>();
        final VirtualBench bench = opened(loadWithLibrary(), new BenchListener() {
            @Override
            public void output(final long atNs, final int output, final boolean isEnergised) {
                changesMs.add(atNs / NS_PER_MS);
            }
        });

        bench.set("path", true).advance(Duration.ofSeconds(5));

        final List<Long> lengthsMs = new ArrayList<>();
        for (int i = 1; i < changesMs.size(); i++) {
            lengthsMs.add(changesMs.get(i) - changesMs.get(i - 1));
        }
        assertThat(lengthsMs).startsWith(900L, 80L, 450L, 80L, 1_580L); // quarters 4, 2, 7 of 0.9 s, out for 0.08 s
    }

    @Test
    void withoutItsLibraryTheFindingsSayWhatIsMissing() {
        final Loaded loaded = RigLoader.load(folder, Optional.empty());

        assertThat(loaded.rig()).isEmpty();
        assertThat(loaded.findings()).extracting(Finding::code).containsOnly("unknown-word");
        assertThat(loaded.findings()).allSatisfy(finding -> {
            assertThat(finding.message()).isEqualTo("\"kind\" cannot be \"ship-lantern\"");
            assertThat(finding.fix()).endsWith("; or put the library that brings it into the rig's lib folder");
        });
    }

    /** Lets somebody come and go, and returns the lanterns in the order in which they were first lit. */
    private static List<String> litOneByOne(final VirtualBench bench) {
        final List<String> lit = new ArrayList<>();
        bench.set("path", true);
        for (int step = 0; step < 200; step++) {
            bench.advance(Duration.ofMillis(100)).set("path", step < 5);
            for (final String lantern : List.of("bow", "mast", "stern")) {
                if (bench.isEnergised(lantern) && !lit.contains(lantern)) {
                    lit.add(lantern);
                }
            }
        }
        return lit;
    }

    private static VirtualBench opened(final Loaded loaded, final BenchListener listener) {
        final Rig rig = loaded.rig().orElseThrow();
        final VirtualBench bench =
                new VirtualBench(Setup.of(rig, loaded.show()).withCodes(loaded.codes())).listen(listener);
        return bench.advance(new Keeper(rig, loaded.show()).open(bench).plus(ARMED));
    }

    private Loaded loadWithLibrary() throws IOException {
        Files.copy(built.resolve("lantern.jar"), folder.resolve("lib/lantern.jar"));
        return RigLoader.load(folder, Optional.empty());
    }

    private static String classPath() throws URISyntaxException {
        final List<String> places = new ArrayList<>();
        for (final Class<?> type : List.of(CueCode.class, Rig.class, org.jspecify.annotations.NullMarked.class)) {
            places.add(Path.of(type.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString());
        }
        return String.join(java.io.File.pathSeparator, places);
    }

    private static void copy(final Path from, final Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (final Path each : all.toList()) {
                Files.copy(each, to.resolve(from.relativize(each).toString()));
            }
        }
    }

    private static void jar(final Path classes, final Path to) throws IOException {
        try (OutputStream file = Files.newOutputStream(to);
                JarOutputStream jar = new JarOutputStream(file);
                Stream<Path> all = Files.walk(classes)) {
            for (final Path each : all.filter(Files::isRegularFile).toList()) {
                jar.putNextEntry(
                        new JarEntry(classes.relativize(each).toString().replace('\\', '/')));
                jar.write(Files.readAllBytes(each));
            }
        }
    }
}
