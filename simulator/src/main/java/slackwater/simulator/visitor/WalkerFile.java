package slackwater.simulator.visitor;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import slackwater.model.Walkers;

/**
 * Measured positions of real people, from a text file: a line for each person and frame with id, frame, x, y and
 * height, separated by blanks. Lines beginning with # are headers, of which {@code # framerate: 25.00} is believed over
 * the settings.
 *
 * @param crowd the people, the first frame at 0 ns
 * @param notes what was assumed, one line each, for the person who named the file
 */
public record WalkerFile(Crowd crowd, List<String> notes) {
    /** More than this is no evening's walkers: about three million lines. */
    private static final long BYTES_MAX = 128L << 20;

    public WalkerFile {
        notes = List.copyOf(notes);
    }

    /**
     * Reads one file; several are joined with {@link Crowd#then}.
     *
     * @throws WalkerFileMistake where the file cannot be used, saying what to do
     */
    public static WalkerFile read(final Path file, final Walkers settings) throws WalkerFileMistake {
        if (!Files.exists(file)) {
            throw new WalkerFileMistake(file + ": there is no such file; name a file of measured positions");
        }
        if (!Files.isRegularFile(file)) {
            throw new WalkerFileMistake(file + ": this is no file; name a file of measured positions");
        }
        final WalkerLines lines = new WalkerLines(file.toString(), settings);
        try {
            if (Files.size(file) > BYTES_MAX) {
                throw new WalkerFileMistake(file + ": longer than " + (BYTES_MAX >> 20) + " MB; cut it into parts");
            }
            readInto(lines, file);
        } catch (final CharacterCodingException notText) {
            throw new WalkerFileMistake(file + ": not plain text in UTF-8; export the positions as text");
        } catch (final WalkerFileMistake mistake) {
            throw mistake;
        } catch (final IOException unreadable) {
            throw new WalkerFileMistake(file + ": cannot be read (" + unreadable.getMessage() + ")");
        }
        return new WalkerFile(lines.crowd(), lines.notes());
    }

    private static void readInto(final WalkerLines lines, final Path file) throws IOException {
        try (BufferedReader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                lines.add(line);
            }
        }
    }
}
