package slackwater.model.quantity;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slackwater.model.quantity.Parsed.Mistake;
import slackwater.model.quantity.Parsed.Value;

/** Reads the number at the beginning of a text. */
final class Numbers {
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+(\\.[0-9]+)?");
    private static final Pattern EXPONENT = Pattern.compile("[eE][+-]?[0-9]");
    private static final Pattern GROUPED = Pattern.compile("[_' ][0-9]");
    private static final int MOST_CHARACTERS = 30;

    private Numbers() {}

    /** How many characters the leading number has, 0 when there is none. */
    static int length(final String text) {
        final Matcher matcher = NUMBER.matcher(text);
        return matcher.lookingAt() ? matcher.end() : 0;
    }

    static Parsed<BigDecimal> leading(final String text, final String example) {
        final int length = length(text);
        if (length == 0) {
            return none(text, example);
        }
        if (length > MOST_CHARACTERS) {
            return new Mistake<>(0, length, "the number has more than " + MOST_CHARACTERS + " characters", example);
        }
        final String rest = text.substring(length);
        if (rest.startsWith(",")) {
            return new Mistake<>(length, 1, "\"" + text + "\" has a decimal comma", "write a decimal point");
        }
        if (rest.startsWith(".")) {
            return new Mistake<>(length, 1, "\"" + text + "\" has a point without digits on both sides", example);
        }
        if (EXPONENT.matcher(rest).lookingAt()) {
            return new Mistake<>(length, 1, "\"" + text + "\" has an exponent", "write the number out");
        }
        if (GROUPED.matcher(rest).lookingAt()) {
            return new Mistake<>(length, 1, "\"" + text + "\" has its digits in groups", "write the digits together");
        }
        if (rest.startsWith("  ") || rest.startsWith("\t")) {
            return new Mistake<>(length, 1, "there is more than one space before the unit", example);
        }
        return new Value<>(new BigDecimal(text.substring(0, length)));
    }

    private static Parsed<BigDecimal> none(final String text, final String example) {
        if (text.startsWith(" ")) {
            return new Mistake<>(0, 1, "there is a space before the number", example);
        }
        if (text.startsWith(".")) {
            return new Mistake<>(0, 1, "\"" + text + "\" has a point without digits on both sides", example);
        }
        return new Mistake<>(0, Math.max(1, text.length()), "\"" + text + "\" does not begin with a number", example);
    }
}
