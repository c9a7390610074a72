package slackwater.controller.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Replaces a small file so that after a power cut it is the old one or the new one, whole: written beside it, synchronised,
 * renamed over it, and the folder synchronised.
 */
final class SafeFile {
    private static final String NEW = ".new";

    private SafeFile() {}

    static void replace(final Path file, final byte[] content) throws IOException {
        final Path fresh = file.resolveSibling(file.getFileName() + NEW);
        try (FileChannel channel = FileChannel.open(
                fresh, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            final ByteBuffer left = ByteBuffer.wrap(content);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
        Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        synchronise(file.resolveSibling("."));
    }

    private static void synchronise(final Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }
}
