package slackwater.model.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;
import slackwater.model.finding.Findings;
import slackwater.model.finding.Findings.Words;
import slackwater.model.finding.Position;

/** Reads one TOML file, whatever is in it, into a table or into findings. */
final class TomlFile {
    /** A full evening's rig has about 15 kB. */
    static final long MOST_BYTES = 1_000_000;

    private static final int MOST_ERRORS = 20;
    private static final String FIX_TOML = "write key = value, one to a line; texts stand in \"quotes\"";
    private static final String WHY_UNREAD = "what cannot be read cannot be checked";
    private static final int BYTE_ORDER_MARK = '\uFEFF';

    private final Path path;
    private final Places places;
    private final Findings findings;

    TomlFile(final Path path, final Places places, final Findings findings) {
        this.path = path;
        this.places = places;
        this.findings = findings;
    }

    /** The file's table, or empty when findings say why not. */
    Optional<TomlTable> read() {
        try {
            final long size = Files.size(path);
            if (size > MOST_BYTES) {
                refuse("too-large", "has " + size + " bytes", "keep it below 1 MB; is it really a rig's file?");
                return Optional.empty();
            }
            return decode(Files.readAllBytes(path)).flatMap(this::parse);
        } catch (final IOException failed) {
            refuse("unreadable", "cannot be read (" + failed.getMessage() + ")", "make it a file that you may read");
            return Optional.empty();
        }
    }

    private Optional<String> decode(final byte[] bytes) {
        final CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        final ByteBuffer in = ByteBuffer.wrap(bytes);
        final CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        final CoderResult result = decoder.decode(in, out, true);
        out.flip();
        if (result.isError()) {
            final long line = out.chars().filter(point -> point == '\n').count() + 1;
            refuse(
                    "not-utf8",
                    "is not UTF-8 text: byte " + in.position() + ", in line " + line + ", is not part of any letter",
                    "save it as UTF-8");
            return Optional.empty();
        }
        final String text = out.toString();
        return Optional.of(!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text);
    }

    private Optional<TomlTable> parse(final String text) {
        final SourceFile file = SourceFile.of(path.toString(), text);
        places.addFile(file);
        final TomlParseResult result;
        try {
            result = Toml.parse(text);
        } catch (final StackOverflowError | RuntimeException broken) {
            refuse("not-toml", "is not TOML, or has brackets within brackets without end", FIX_TOML);
            return Optional.empty();
        }
        if (result.hasErrors()) {
            report(file, result.errors());
            return Optional.empty();
        }
        places.addAll(file, result);
        return Optional.of(result);
    }

    private void report(final SourceFile file, final List<TomlParseError> errors) {
        for (final TomlParseError error : errors.subList(0, Math.min(MOST_ERRORS, errors.size()))) {
            final int line =
                    Math.min(error.position().line(), Math.max(1, file.lines().size()));
            final Position at =
                    new Position(file.name(), line, Math.max(1, error.position().column()), 1);
            final String said = TomlWords.of(String.valueOf(error.getMessage()));
            findings.error(
                    "not-toml",
                    Optional.of(at),
                    new Words("this line is not TOML: " + said, WHY_UNREAD, TomlWords.fix(said, FIX_TOML)));
        }
        if (errors.size() > MOST_ERRORS) {
            refuse("not-toml", "has " + (errors.size() - MOST_ERRORS) + " more lines that are not TOML", FIX_TOML);
        }
    }

    private void refuse(final String code, final String what, final String fix) {
        findings.error(code, Optional.empty(), new Words(path + " " + what, WHY_UNREAD, fix));
    }
}
