package slackwater.simulator.report;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.Optional;

/** Writes a report whole or not at all; what goes wrong is one line for a person, so that a run's summary still comes. */
public final class ReportFiles {
    private ReportFiles() {}

    /** Writes a report's text. */
    @FunctionalInterface
    public interface Body {
        void writeTo(Writer out) throws IOException;
    }

    /** Writes the file; answers the one line that says why it could not, or empty when it is there. */
    public static Optional<String> write(final Path target, final Body body) {
        if (Files.isDirectory(target)) {
            return Optional.of(problem(target, "it is a folder", "give a file name in it"));
        }
        try {
            if (Files.exists(target) && !Files.isRegularFile(target)) {
                // A device or a pipe takes the text as it comes; renaming a file over it would destroy it.
                writeTo(target, body);
            } else {
                writeBeside(Files.exists(target) ? target.toRealPath() : target.toAbsolutePath(), body);
            }
            return Optional.empty();
        } catch (final IOException broken) {
            return Optional.of(problem(target, reason(broken), remedy(target, broken)));
        }
    }

    private static void writeBeside(final Path target, final Body body) throws IOException {
        final Path part = target.resolveSibling("." + target.getFileName() + "."
                + Long.toString(ProcessHandle.current().pid(), Character.MAX_RADIX) + ".part");
        try {
            writeTo(part, body);
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static void writeTo(final Path target, final Body body) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(target, StandardCharsets.UTF_8)) {
            body.writeTo(out);
        }
    }

    private static String problem(final Path target, final String why, final String todo) {
        return "could not write " + target + ": " + why + "; " + todo;
    }

    private static String remedy(final Path target, final IOException broken) {
        final String why = reason(broken).toLowerCase(Locale.ROOT);
        if (why.contains("no space") || why.contains("quota")) {
            return "free some room, or write it to another disk";
        }
        final Path folder = target.toAbsolutePath().getParent();
        if (folder != null && Files.isRegularFile(folder)) {
            return folder + " is a file, name a folder";
        }
        return folder != null && !Files.isDirectory(folder)
                ? "make the folder " + folder + " first"
                : "choose a folder that you may write to";
    }

    /** The system's own words, without file names that the message already has. */
    public static String reason(final IOException broken) {
        if (broken instanceof NoSuchFileException) {
            return "no such file or folder";
        }
        if (broken instanceof AccessDeniedException) {
            return "permission denied";
        }
        final String own = broken instanceof FileSystemException known ? known.getReason() : "";
        final String text = own == null || own.isEmpty() ? String.valueOf(broken.getMessage()) : own;
        return text.lines().findFirst().orElse("unknown reason");
    }
}
