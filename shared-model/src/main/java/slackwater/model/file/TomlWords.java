package slackwater.model.file;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The parser's messages in words for somebody who has never written a grammar. */
final class TomlWords {
    private static final Pattern UNEXPECTED = Pattern.compile("Unexpected (.+?), expected .*", Pattern.DOTALL);
    private static final Pattern TAKEN =
            Pattern.compile("(.+) previously defined at line (\\d+), column (\\d+)", Pattern.DOTALL);
    private static final String END_OF_LINE = "it ends too early";

    private TomlWords() {}

    static String of(final String message) {
        final Matcher taken = TAKEN.matcher(message);
        if (taken.matches()) {
            return "\"" + taken.group(1) + "\" stands already in line " + taken.group(2);
        }
        final Matcher unexpected = UNEXPECTED.matcher(message);
        if (!unexpected.matches()) {
            return message.isEmpty()
                    ? message
                    : message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1);
        }
        final String what = unexpected.group(1);
        if (what.equalsIgnoreCase("end of line")) {
            return END_OF_LINE;
        }
        return what.equalsIgnoreCase("end of input") || what.equals("end-of-input")
                ? "the file ends too early"
                : what + " is not expected here";
    }

    static String fix(final String said, final String usual) {
        if (said.contains("stands already")) {
            return "keep one of the two";
        }
        return said.equals(END_OF_LINE) ? "close the quote or the bracket, or write the value" : usual;
    }
}
