package slackwater.model.file;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The words of a file for the constants of an enumeration: SPRING_RETURNS is written {@code spring-returns}. */
final class Choices {
    private Choices() {}

    static <E extends Enum<E>> Map<String, E> of(final Class<E> type) {
        final Map<String, E> words = new LinkedHashMap<>();
        for (final E constant : type.getEnumConstants()) {
            words.put(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'), constant);
        }
        return words;
    }
}
