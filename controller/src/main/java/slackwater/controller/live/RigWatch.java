package slackwater.controller.live;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;

/**
 * Notices that the rig was changed under a running controller: what is built, and the code that it brings. The show may be
 * changed at any time; it is read at the next start.
 */
public final class RigWatch {
    private static final String RIG_FILE = "rig.toml";

    private final Path folder;
    private final String first;
    private String lookedAt;

    public RigWatch(final Path folder) {
        this.folder = folder;
        first = sum();
        lookedAt = marks();
    }

    /** SHA-256 of the rig's files as they were at the start. */
    public String firstSum() {
        return first;
    }

    /** Whether they are different now; a file that was only touched is not. */
    public boolean hasChanged() {
        final String marks = marks();
        if (marks.equals(lookedAt)) {
            return false;
        }
        lookedAt = marks;
        return !sum().equals(first);
    }

    private String marks() {
        final StringBuilder marks = new StringBuilder();
        for (final Path file : files()) {
            try {
                marks.append(file).append(Files.getLastModifiedTime(file)).append(Files.size(file));
            } catch (final IOException gone) {
                marks.append("gone");
            }
        }
        return marks.toString();
    }

    private String sum() {
        try {
            final MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (final Path file : files()) {
                digest.update(Files.readAllBytes(file));
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (final NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        } catch (final IOException unreadable) {
            return "unreadable";
        }
    }

    private List<Path> files() {
        final List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> jars = Files.newDirectoryStream(folder.resolve("lib"), "*.jar")) {
            jars.forEach(files::add);
        } catch (final IOException | DirectoryIteratorException none) {
            files.clear();
        }
        Collections.sort(files);
        files.add(0, folder.resolve(RIG_FILE));
        return files;
    }
}
