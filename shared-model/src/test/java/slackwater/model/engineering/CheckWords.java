package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Check values that are words or several numbers: a test says from the main code what the handbook's text would be. */
final class CheckWords {
    private CheckWords() {}

    /** The values of a section with these ids, each of which must be there. */
    static Stream<CheckValue> of(final String section, final Set<String> ids) {
        final List<CheckValue> found = CheckValue.section(section).stream()
                .filter(value -> ids.contains(value.id()))
                .toList();
        assertThat(found).as("ids of section %s", section).hasSameSizeAs(ids);
        return found.stream();
    }

    /** What a test keeps under a value's id. */
    static <T> T of(final Map<String, T> byId, final CheckValue value) {
        return Objects.requireNonNull(byId.get(value.id()), value::toString);
    }

    static void agrees(final CheckValue value, final Supplier<String> said) {
        assertThat(said.get()).as(value.toString()).isEqualTo(value.expected());
    }

    /** A number as the handbook prints it: without a fraction when it is whole. */
    static String plain(final double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }
}
