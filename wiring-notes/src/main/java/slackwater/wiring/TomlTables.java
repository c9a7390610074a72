package slackwater.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where the tables of a TOML text begin. It reads no values; it only has to know which lines lie inside a text of
 * several lines or an array, since those may look like a heading and are none (TOML 1.0).
 */
final class TomlTables {
    private static final String PART = "(?:[A-Za-z0-9_-]+|\"[^\"\\\\]*\"|'[^']*')";
    private static final Pattern HEADING = Pattern.compile(
            "\\uFEFF?([ \\t]*)\\[[ \\t]*(" + PART + "(?:[ \\t]*\\.[ \\t]*" + PART + ")*)[ \\t]*\\][ \\t]*(?:#.*)?");
    private static final Pattern ARRAY_HEADING = Pattern.compile("\\uFEFF?[ \\t]*\\[\\[.*");
    private static final Pattern PIN = Pattern.compile("[ \\t]*(?:pin|\"pin\"|'pin')[ \\t]*=.*");
    private static final Pattern KEY_PART = Pattern.compile(PART);

    /**
     * One table.
     *
     * @param name the parts of its name joined by dots, without quotes
     * @param indent the blanks before its heading
     * @param bodyAt where the line after its heading begins
     * @param lineEnd how its heading's line ends; the text's usual end where it is the last line
     * @param hasPin whether a key {@code pin} is in it
     */
    record Table(String name, String indent, int bodyAt, String lineEnd, boolean hasPin) {
        Table withPin() {
            return new Table(name, indent, bodyAt, lineEnd, true);
        }
    }

    private final List<Table> tables = new ArrayList<>();
    private final String usualEnd;

    private TomlTables(final String toml) {
        usualEnd = toml.contains("\r\n") ? "\r\n" : "\n";
    }

    static TomlTables of(final String toml) {
        final TomlTables read = new TomlTables(toml);
        final OpenValue openValue = new OpenValue();
        int at = 0;
        boolean isBelowHeading = false;
        while (at < toml.length()) {
            final int newline = toml.indexOf('\n', at);
            final int next = newline < 0 ? toml.length() : newline + 1;
            final String line = toml.substring(at, next);
            final String content = withoutEnd(line);
            if (!openValue.isOpen()) {
                final Matcher heading = HEADING.matcher(content);
                if (heading.matches()) {
                    read.begin(heading, next, line.substring(content.length()));
                    isBelowHeading = true;
                } else if (ARRAY_HEADING.matcher(content).matches()) {
                    isBelowHeading = false;
                } else if (isBelowHeading && PIN.matcher(content).matches()) {
                    read.tables.set(read.tables.size() - 1, read.last().withPin());
                }
            }
            openValue.pass(content);
            at = next;
        }
        return read;
    }

    Optional<Table> named(final String name) {
        return tables.stream().filter(table -> table.name().equals(name)).findFirst();
    }

    private Table last() {
        return tables.get(tables.size() - 1);
    }

    private void begin(final Matcher heading, final int bodyAt, final String lineEnd) {
        final List<String> parts = new ArrayList<>();
        final Matcher part = KEY_PART.matcher(heading.group(2));
        while (part.find()) {
            parts.add(unquoted(part.group()));
        }
        final String end = lineEnd.isEmpty() ? usualEnd : lineEnd;
        tables.add(new Table(String.join(".", parts), heading.group(1), bodyAt, end, false));
    }

    private static String unquoted(final String part) {
        final char first = part.charAt(0);
        return first == '"' || first == '\'' ? part.substring(1, part.length() - 1) : part;
    }

    private static String withoutEnd(final String line) {
        if (line.endsWith("\r\n")) {
            return line.substring(0, line.length() - 2);
        }
        return line.endsWith("\n") ? line.substring(0, line.length() - 1) : line;
    }

    /** Follows quotes and brackets from line to line, to know whether the next line begins inside a value. */
    private static final class OpenValue {
        private static final String BASIC = "\"\"\"";
        private static final String LITERAL = "'''";

        private String open = "";
        private int depth;

        boolean isOpen() {
            return isText() || depth > 0;
        }

        private boolean isText() {
            return !open.isEmpty();
        }

        void pass(final String line) {
            int at = 0;
            while (at < line.length()) {
                at = isText() ? inside(line, at) : outside(line, at);
            }
        }

        private int inside(final String line, final int at) {
            if (open.equals(BASIC) && line.charAt(at) == '\\') {
                return at + 2;
            }
            if (!line.startsWith(open, at)) {
                return at + 1;
            }
            final char quote = open.charAt(0);
            int after = at + open.length();
            // One or two quotes may stand directly before the three that end the text.
            while (after < line.length() && line.charAt(after) == quote && after < at + 5) {
                after++;
            }
            open = "";
            return after;
        }

        private int outside(final String line, final int at) {
            final char here = line.charAt(at);
            if (here == '#') {
                return line.length();
            }
            if (line.startsWith(BASIC, at) || line.startsWith(LITERAL, at)) {
                open = line.substring(at, at + 3);
                return at + 3;
            }
            if (here == '[') {
                depth++;
            } else if (here == ']') {
                depth--;
            }
            return here == '"' || here == '\'' ? afterShortText(line, at) : at + 1;
        }

        private static int afterShortText(final String line, final int at) {
            final char quote = line.charAt(at);
            int here = at + 1;
            while (here < line.length() && line.charAt(here) != quote) {
                here += quote == '"' && line.charAt(here) == '\\' ? 2 : 1;
            }
            return here + 1;
        }
    }
}
