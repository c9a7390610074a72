package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One value of the handbook, from {@code check-values.tsv}: what a formula is checked against, with its source. A value
 * whose status is from-memory is only as good as its tolerance; common-practice is a rule of thumb.
 */
record CheckValue(
        String id,
        String quantity,
        String inputs,
        String expected,
        String unit,
        String tolerance,
        String source,
        String status) {

    private static final int COLUMNS = 8;
    private static final Pattern NUMBER = Pattern.compile("^-?[0-9.]+(e-?[0-9]+)?");
    private static final Pattern RANGE = Pattern.compile("^([0-9.]+)\\.\\.([0-9.]+)");
    private static final double PRINTED_DIGITS = 1e-4;
    private static final List<CheckValue> ALL = read();

    /** All values of a section, such as 1.3, in the order of their numbers. */
    static List<CheckValue> section(final String section) {
        final List<CheckValue> found = ALL.stream()
                .filter(value -> value.id.matches(Pattern.quote(section) + "\\.[0-9]+"))
                .toList();
        assertThat(found).as("check values of section %s", section).isNotEmpty();
        return found;
    }

    /**
     * The values of a section that have a number to compare, each of which must have its computation.
     *
     * @param computed by id
     */
    static Stream<CheckValue> computed(final String section, final Map<String, DoubleSupplier> computed) {
        final List<CheckValue> found = section(section).stream()
                .filter(value -> computed.containsKey(value.id))
                .toList();
        assertThat(found).as("ids of section %s", section).hasSameSizeAs(computed.keySet());
        return found.stream();
    }

    /** That a computed value agrees within the stated tolerance; exact means to the digits that the handbook prints. */
    void agreesWith(final double computed) {
        final Matcher range = RANGE.matcher(expected);
        if (range.find()) {
            assertThat(computed)
                    .as(toString())
                    .isBetween(Double.parseDouble(range.group(1)), Double.parseDouble(range.group(2)));
            return;
        }
        assertThat(computed).as(toString()).isCloseTo(number(), within(allowed()));
    }

    /** The expected number. */
    double number() {
        return leadingNumber(expected);
    }

    /** The stated tolerance, in the value's own unit. */
    double allowed() {
        if (tolerance.startsWith("exact")) {
            return Math.abs(number()) * PRINTED_DIGITS;
        }
        final double stated = leadingNumber(tolerance);
        return tolerance.matches("^[0-9.]+ ?(%|percent).*") ? Math.abs(number()) * stated / 100 : stated;
    }

    @Override
    public String toString() {
        return id + " " + quantity + " (" + inputs + "): " + expected + " " + unit + " [" + status + "]";
    }

    private double leadingNumber(final String text) {
        final Matcher matcher = NUMBER.matcher(text);
        assertThat(matcher.find()).as("%s: a number in \"%s\"", id, text).isTrue();
        return Double.parseDouble(matcher.group());
    }

    private static List<CheckValue> read() {
        final InputStream stream =
                Objects.requireNonNull(CheckValue.class.getResourceAsStream("/check-values.tsv"), "check-values.tsv");
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("id\t"))
                    .map(line -> line.split("\t", -1))
                    .map(CheckValue::of)
                    .toList();
        } catch (final IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static CheckValue of(final String[] cells) {
        assertThat(cells).hasSize(COLUMNS);
        return new CheckValue(cells[0], cells[1], cells[2], cells[3], cells[4], cells[5], cells[6], cells[7]);
    }
}
