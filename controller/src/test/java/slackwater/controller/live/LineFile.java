package slackwater.controller.live;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A controller's virtual lines as somebody outside sees and sets them. */
public final class LineFile {
    private static final int ROW = 47;
    private static final int LEVEL_AT = 45;

    private final Path file;

    public LineFile(final Path state) {
        file = state.resolve("virtual-lines");
    }

    private int row(final String name) throws IOException {
        final List<String> rows = Files.readString(file, StandardCharsets.UTF_8)
                .replace("\0", "")
                .lines()
                .toList();
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).startsWith(name + " ")) {
                return i;
            }
        }
        throw new IllegalArgumentException("no row " + name + " in " + rows);
    }

    /** The level of a line. */
    public boolean isHigh(final String name) throws IOException {
        final byte[] all = Files.readAllBytes(file);
        return all[row(name) * ROW + LEVEL_AT] == '1';
    }

    /** Sets a line from outside. */
    public void set(final String name, final boolean isHigh) throws IOException {
        try (RandomAccessFile rows = new RandomAccessFile(file.toFile(), "rw")) {
            rows.seek((long) row(name) * ROW + LEVEL_AT);
            rows.write(isHigh ? '1' : '0');
        }
    }
}
