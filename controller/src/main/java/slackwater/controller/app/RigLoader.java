package slackwater.controller.app;

import java.io.IOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.jar.JarFile;
import slackwater.controller.cue.CueCode;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.check.Draft;
import slackwater.model.check.Rules;
import slackwater.model.file.Reading;
import slackwater.model.file.RigFolder;
import slackwater.model.finding.Finding;
import slackwater.model.finding.FindingsPrinter;
import slackwater.model.finding.Severity;

/** Reads and checks a rig folder with the libraries in its {@code lib} folder. */
public final class RigLoader {
    private static final String LIB = "lib";
    private static final String JARS = "*.jar";
    private static final String UNASKED =
            "Once these are mended, check looks at pins, guards, limits and cues as well." + System.lineSeparator();

    private RigLoader() {}

    /**
     * A rig folder, read and checked.
     *
     * @param rig empty when anything is wrong with it
     * @param show the show that was asked for; one without cues where the folder has none
     * @param findings everything found, reader's and rules'
     * @param wereRulesAsked whether the files could be read well enough to ask the rules of the trade
     */
    public record Loaded(
            Optional<Rig> rig,
            Show show,
            List<CueCode> codes,
            List<Finding> findings,
            int filesRead,
            boolean wereRulesAsked) {
        public Loaded {
            codes = List.copyOf(codes);
            findings = List.copyOf(findings);
        }

        public boolean hasErrors() {
            return findings.stream().anyMatch(Finding::isError);
        }

        /** The findings as a person reads them. */
        public String text() {
            final String text = FindingsPrinter.text(findings, filesRead);
            return wereRulesAsked || filesRead == 0 ? text : text + UNASKED;
        }
    }

    /** Reads a folder; never throws for what a person wrote. */
    public static Loaded load(final Path folder, final Optional<String> showName) {
        final List<Finding> findings = new ArrayList<>();
        final ClassLoader loader = libraries(folder, findings);
        final Reading reading = RigFolder.read(folder, showName, loader);
        final Show show = reading.show().orElse(new Show("", List.of(), Optional.empty()));
        findings.addAll(reading.findings());
        final List<CueCode> codes = new ArrayList<>();
        if (reading.rig().isPresent()) {
            findings.addAll(Rules.check(new Draft(reading.rig().get(), show, reading.where())));
            codes.addAll(codes(loader, show, findings));
        }
        final boolean isGood = findings.stream().noneMatch(Finding::isError);
        return new Loaded(
                isGood ? reading.rig() : Optional.empty(),
                show,
                codes,
                findings,
                reading.filesRead(),
                reading.rig().isPresent());
    }

    private static List<CueCode> codes(final ClassLoader loader, final Show show, final List<Finding> findings) {
        final List<CueCode> codes = new ArrayList<>();
        try {
            ServiceLoader.load(CueCode.class, loader).forEach(codes::add);
        } catch (final ServiceConfigurationError | LinkageError broken) {
            findings.add(finding(
                    "bad-code", "a library in lib brings a cue in code that cannot be made: " + firstLine(broken)));
        }
        show.cues().stream().flatMap(cue -> cue.code().stream()).forEach(word -> {
            if (codes.stream().noneMatch(code -> code.word().equals(word))) {
                findings.add(finding("unknown-code", "no library in lib brings a cue in code called \"" + word + "\""));
            }
        });
        return codes;
    }

    private static Finding finding(final String code, final String message) {
        return new Finding(
                Severity.ERROR,
                code,
                Optional.empty(),
                "",
                message,
                "the cue could not be played",
                "put its jar into the rig's lib folder, or take the cue out of the show");
    }

    private static String firstLine(final Throwable broken) {
        return String.valueOf(broken.getMessage()).lines().findFirst().orElse("");
    }

    private static ClassLoader libraries(final Path folder, final List<Finding> findings) {
        final List<URL> jars = new ArrayList<>();
        final Path lib = folder.resolve(LIB);
        if (Files.isDirectory(lib)) {
            try (DirectoryStream<Path> found = Files.newDirectoryStream(lib, JARS)) {
                final List<Path> sorted = new ArrayList<>();
                found.forEach(sorted::add);
                sorted.sort(Path::compareTo);
                for (final Path jar : sorted) {
                    if (isJar(jar)) {
                        jars.add(url(jar));
                    } else {
                        findings.add(badLibrary(jar));
                    }
                }
            } catch (final IOException | DirectoryIteratorException unreadable) {
                return RigLoader.class.getClassLoader(); // its kinds are then reported as unknown, by name
            }
        }
        return new URLClassLoader(jars.toArray(URL[]::new), RigLoader.class.getClassLoader());
    }

    /** A class loader passes over a broken jar without a word, so it is opened here first. */
    private static boolean isJar(final Path file) {
        try (JarFile jar = new JarFile(file.toFile())) {
            return jar.size() >= 0;
        } catch (final IOException broken) {
            return false;
        }
    }

    private static Finding badLibrary(final Path jar) {
        return new Finding(
                Severity.ERROR,
                "bad-library",
                Optional.empty(),
                "",
                jar + " is no jar that can be opened",
                "the kinds and cues that it brings would be missing",
                "copy it again, or take it out of the lib folder");
    }

    private static URL url(final Path jar) {
        try {
            return jar.toUri().toURL();
        } catch (final MalformedURLException impossible) {
            throw new IllegalStateException("a file always has a URL: " + jar, impossible);
        }
    }
}
