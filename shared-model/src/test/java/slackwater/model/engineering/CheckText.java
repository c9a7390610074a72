package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Values of the handbook that are words, or several numbers: the facts of the project, printed the same way. */
final class CheckText {

    private CheckText() {}

    /**
     * The values of a section that stand as text, each of which must have its text.
     *
     * @param texts by id
     */
    static Stream<CheckValue> stated(final String section, final Map<String, Supplier<String>> texts) {
        final var found = CheckValue.section(section).stream()
                .filter(value -> texts.containsKey(value.id()))
                .toList();
        assertThat(found).as("ids of section %s", section).hasSameSizeAs(texts.keySet());
        return found.stream();
    }

    /** A number as the handbook prints it: no digit more than it has. */
    static String number(final double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    static String range(final UsualRange range) {
        return range(range, 1);
    }

    /** A range in a unit of the handbook, rounded to nine digits because the unit is not the project's own. */
    static String range(final UsualRange range, final double unit) {
        return rounded(range.least() / unit) + ".." + rounded(range.most() / unit);
    }

    private static String rounded(final double value) {
        return number(Math.rint(value * 1e9) / 1e9);
    }
}
