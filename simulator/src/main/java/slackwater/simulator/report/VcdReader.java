package slackwater.simulator.report;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Reads a four-state value change dump (IEEE 1364-2005, clause 18) that any tool recorded: its one-bit lines. */
public final class VcdReader {
    private static final int MOST_CHANGES = 5_000_000;
    private static final int MOST_WARNINGS = 20;
    private static final String NO_VCD = "give a waveform file (VCD, text)";

    private final VcdTokens tokens;
    private final Predicate<Recording.Line> isWanted;
    private final List<Recording.Line> lines = new ArrayList<>();
    private final List<Recording.Change> changes = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();
    private final List<String> scopes = new ArrayList<>();
    private final Map<String, List<Signal>> signals = new LinkedHashMap<>();
    private VcdTime time = VcdTime.UNSAID;
    private long nowNs;

    private VcdReader(final VcdTokens tokens, final Predicate<Recording.Line> isWanted) {
        this.tokens = tokens;
        this.isWanted = isWanted;
    }

    /** Reads the wanted lines of a file; a mistake is one line that names file, line and what to do. */
    public static Recording read(final Path file, final Predicate<Recording.Line> isWanted) throws VcdException {
        if (Files.isDirectory(file)) {
            throw new VcdException(file + ": is a folder; " + NO_VCD);
        }
        if (!Files.exists(file)) {
            throw new VcdException(file + ": does not exist; check its name");
        }
        try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return read(in, file.toString(), isWanted);
        } catch (final CharacterCodingException broken) {
            throw new VcdException(file + ": is not a text in UTF-8; " + NO_VCD);
        } catch (final IOException broken) {
            throw new VcdException(file + ": cannot be read (" + ReportFiles.reason(broken) + "); check its rights");
        }
    }

    /** Reads from a stream; {@code file} is the name in messages. */
    public static Recording read(final Reader in, final String file, final Predicate<Recording.Line> isWanted)
            throws IOException, VcdException {
        final VcdReader reader = new VcdReader(new VcdTokens(in, file), isWanted);
        reader.header();
        reader.body();
        return new Recording(reader.lines, reader.changes, reader.warnings, reader.nowNs);
    }

    private void header() throws IOException, VcdException {
        String word = tokens.next();
        while (!word.equals("$enddefinitions")) {
            switch (word) {
                case "$timescale" -> time = VcdTime.read(tokens);
                case "$scope" -> scope();
                case "$upscope" -> upscope();
                case "$var" -> var();
                case "$date", "$version", "$comment" -> tokens.skip(word);
                default -> throw unexpected(word);
            }
            word = tokens.next();
        }
        tokens.skip(word);
        if (!time.isSaid()) {
            throw tokens.mistake("no $timescale before here", "add one such as: $timescale 1 us $end");
        }
    }

    private VcdException unexpected(final String word) {
        if (word.isEmpty()) {
            return tokens.mistake("the file ends before $enddefinitions", NO_VCD);
        }
        return word.startsWith("$")
                ? tokens.mistake("section " + shown(word) + " is not known here", NO_VCD)
                : tokens.mistake("\"" + shown(word) + "\" is no declaration", NO_VCD);
    }

    private void scope() throws IOException, VcdException {
        tokens.within("$scope");
        scopes.add(tokens.within("$scope"));
        tokens.skip("$scope");
    }

    private void upscope() throws IOException, VcdException {
        if (scopes.isEmpty()) {
            throw tokens.mistake("$upscope without a $scope", "record the file again");
        }
        scopes.remove(scopes.size() - 1);
        tokens.skip("$upscope");
    }

    private void var() throws IOException, VcdException {
        final String type = tokens.within("$var");
        final String size = tokens.within("$var");
        final String code = tokens.within("$var");
        final String written = tokens.within("$var");
        // An escaped identifier (3.7.1) begins with a stroke that is no part of its name.
        final String name = written.startsWith("\\") ? written.substring(1) : written;
        tokens.skip("$var");
        final Recording.Line line = new Recording.Line(String.join(".", scopes), name);
        final boolean isBit = size.equals("1") && !type.equals("real") && !type.equals("event");
        if (isBit) {
            lines.add(line);
        } else if (isWanted.test(line)) {
            warn(name + " is a " + type + " of " + size + " bits and is left out; only lines of one bit are read");
        }
        final boolean isKept = isBit && isWanted.test(line);
        signals.computeIfAbsent(code, key -> new ArrayList<>()).add(new Signal(line, isKept));
    }

    private void body() throws IOException, VcdException {
        String word = tokens.next();
        while (!word.isEmpty()) {
            switch (word.charAt(0)) {
                case '#' -> moment(word);
                case '0', '1', 'x', 'X', 'z', 'Z' -> scalar(word);
                case 'b', 'B' -> bits(word, tokens.within("a change"));
                case 'r', 'R' -> known(tokens.within("a change"));
                case '$' -> section(word);
                default -> throw tokens.mistake("\"" + shown(word) + "\" is no change", "record the file again");
            }
            word = tokens.next();
        }
    }

    private void section(final String word) throws IOException, VcdException {
        switch (word) {
            case "$comment" -> tokens.skip(word);
            case "$dumpvars", "$dumpall", "$dumpon", "$dumpoff", "$end" -> {
                // Only brackets around changes, which are read as all others.
            }
            default -> throw tokens.mistake("section " + shown(word) + " is not known here", "record the file again");
        }
    }

    private void moment(final String word) throws VcdException {
        final long atNs = time.toNs(word.substring(1), tokens);
        if (atNs < nowNs) {
            throw tokens.mistake("time " + shown(word) + " is before the one above it", "record the file again");
        }
        nowNs = atNs;
    }

    private void scalar(final String word) throws VcdException {
        change(known(word.substring(1)), Character.toLowerCase(word.charAt(0)));
    }

    /** A tool may write a line of one bit as a vector of one bit. */
    private void bits(final String word, final String code) throws VcdException {
        final List<Signal> meant = known(code);
        if (word.length() == 2) {
            change(meant, Character.toLowerCase(word.charAt(1)));
        } else if (word.length() < 2) {
            throw tokens.mistake("a vector without bits", "record the file again");
        }
    }

    private List<Signal> known(final String code) throws VcdException {
        final List<Signal> meant = signals.get(code);
        if (meant == null) {
            throw tokens.mistake("code \"" + shown(code) + "\" was never declared", "record the file again");
        }
        return meant;
    }

    private void change(final List<Signal> meant, final char level) throws VcdException {
        for (final Signal signal : meant) {
            if (signal.isKept) {
                change(signal, level);
            }
        }
    }

    private void change(final Signal signal, final char level) throws VcdException {
        if (level != '0' && level != '1') {
            // Unknown before its first level is how a recorder begins; later it is a line that nobody drives.
            if (signal.last != 'x') {
                throw tokens.mistake(
                        signal.line.name() + " becomes unknown (" + shown(String.valueOf(level)) + ")",
                        "a rehearsal needs 0 or 1: fit a pull-up or pull-down and record it again");
            }
            return;
        }
        if (level == signal.last) {
            return;
        }
        if (changes.size() == MOST_CHANGES) {
            throw tokens.mistake("more than " + MOST_CHANGES + " changes", "record a shorter time, or fewer lines");
        }
        signal.last = level;
        changes.add(new Recording.Change(signal.line, nowNs, level == '1'));
    }

    private void warn(final String text) {
        if (warnings.size() < MOST_WARNINGS) {
            warnings.add(tokens.here() + text);
        }
    }

    /** Words of a broken file go into a message shortened and without control characters. */
    static String shown(final String word) {
        final String plain = word.replaceAll("[^\\x21-\\x7e]", "?");
        return plain.length() <= 24 ? plain : plain.substring(0, 24) + "...";
    }

    /** A declared code's line and the level that it last had. */
    private static final class Signal {
        private final Recording.Line line;
        private final boolean isKept;
        private char last = 'x';

        private Signal(final Recording.Line line, final boolean isKept) {
            this.line = line;
            this.isKept = isKept;
        }
    }
}
