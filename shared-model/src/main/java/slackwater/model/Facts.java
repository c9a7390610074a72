package slackwater.model;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.model.quantity.Quantity;

/**
 * What a kind's own keys said, by key. Values were checked against the kind's keys when the file was read, so asking for
 * one with the wrong type is a programmer's mistake and throws {@link ClassCastException}.
 */
public record Facts(Map<String, Object> byKey) {

    public static final Facts NONE = new Facts(Map.of());

    public Facts {
        byKey = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(byKey));
    }

    /** A quantity in SI units. */
    public OptionalDouble si(final String key) {
        final Object value = byKey.get(key);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(((Quantity) value).si());
    }

    /** A quantity in SI units, or the value to assume. */
    public double siOr(final String key, final double assumed) {
        return si(key).orElse(assumed);
    }

    public Optional<Duration> duration(final String key) {
        return Optional.ofNullable((Duration) byKey.get(key));
    }

    public Optional<String> text(final String key) {
        return Optional.ofNullable((String) byKey.get(key));
    }

    public boolean flag(final String key) {
        return Boolean.TRUE.equals(byKey.get(key));
    }

    public Optional<Long> count(final String key) {
        return Optional.ofNullable((Long) byKey.get(key));
    }
}
