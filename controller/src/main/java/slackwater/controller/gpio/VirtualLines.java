package slackwater.controller.gpio;

import java.io.IOException;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import slackwater.model.Pull;

/**
 * Lines in a small file, one row each: name, direction, level. Whoever likes may read the outputs there and set the inputs,
 * while the program runs and after it; like real lines, they stay as they are when it dies. Pulses shorter than a scan are
 * not seen.
 */
public final class VirtualLines implements Lines {
    private static final int NAME = 40;
    private static final int LEVEL_AT = NAME + 5;
    private static final int ROW = LEVEL_AT + 2;
    private static final int ROWS_MAX = 128;
    private static final byte HIGH = '1';
    private static final byte LOW = '0';

    private final MappedByteBuffer rows;
    private int used;

    private VirtualLines(final MappedByteBuffer rows) {
        this.rows = rows;
    }

    /** Opens the file, or makes it. */
    public static VirtualLines open(final Path file) throws IOException {
        try (FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            return new VirtualLines(channel.map(FileChannel.MapMode.READ_WRITE, 0, (long) ROW * ROWS_MAX));
        }
    }

    @Override
    public Out claimOutput(final Wire wire, final boolean isHigh) {
        final int levelAt = row(wire, "out") + LEVEL_AT;
        rows.put(levelAt, isHigh ? HIGH : LOW);
        return new Row(rows, levelAt);
    }

    @Override
    public In claimInput(final Wire wire, final Pull pull) {
        final int at = used * ROW;
        final boolean isKnown = Arrays.equals(heading(wire, "in "), readHeading(at));
        final int levelAt = row(wire, "in ") + LEVEL_AT;
        if (!isKnown) {
            rows.put(levelAt, pull == Pull.UP ? HIGH : LOW);
        }
        return new Row(rows, levelAt);
    }

    @Override
    public void release() {
        rows.force();
    }

    private int row(final Wire wire, final String direction) {
        if (used == ROWS_MAX) {
            throw new LineRefusedException(wire + " finds no room among " + ROWS_MAX + " virtual lines");
        }
        final int at = used * ROW;
        used++;
        rows.put(at, heading(wire, direction));
        rows.put(at + ROW - 1, (byte) '\n');
        return at;
    }

    private byte[] readHeading(final int at) {
        final byte[] found = new byte[LEVEL_AT];
        rows.get(at, found);
        return found;
    }

    private static byte[] heading(final Wire wire, final String direction) {
        final byte[] heading = new byte[LEVEL_AT];
        Arrays.fill(heading, (byte) ' ');
        final byte[] name = wire.name().getBytes(StandardCharsets.UTF_8);
        System.arraycopy(name, 0, heading, 0, Math.min(name.length, NAME));
        System.arraycopy(direction.getBytes(StandardCharsets.US_ASCII), 0, heading, NAME + 1, direction.length());
        return heading;
    }

    private record Row(MappedByteBuffer rows, int levelAt) implements In, Out {
        @Override
        public boolean isHigh() {
            return rows.get(levelAt) == HIGH;
        }

        @Override
        public boolean takeEdges() {
            return false;
        }

        @Override
        public void write(final boolean isHigh) {
            rows.put(levelAt, isHigh ? HIGH : LOW);
        }

        @Override
        public boolean isPadHigh() {
            return isHigh();
        }
    }
}
