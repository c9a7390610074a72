package slackwater.simulator.junit;

import java.lang.reflect.Field;
import java.lang.reflect.InaccessibleObjectException;
import java.lang.reflect.Modifier;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import slackwater.controller.cue.Asking;
import slackwater.controller.image.Image;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;

/**
 * Looks for anything that an object from outside the project could remember outside the run (S25): fields that are not
 * final, and final ones that hold something which can change. Numbers in an array are seen by the behaviour only.
 */
final class HiddenState {
    private static final List<String> PROJECT = List.of("slackwater.controller.", "slackwater.model.");
    private static final List<Class<?>> CHANGES = List.of(RunState.class, Layout.class, Image.class, Asking.class);
    private static final List<String> PLATFORM = List.of("java.", "javax.", "jdk.", "sun.");
    /** Of the platform, what is known never to change; anything else is refused rather than trusted. */
    private static final List<String> UNCHANGING = List.of(
            "java.lang.String",
            "java.lang.Boolean",
            "java.lang.Byte",
            "java.lang.Character",
            "java.lang.Short",
            "java.lang.Integer",
            "java.lang.Long",
            "java.lang.Float",
            "java.lang.Double",
            "java.lang.Class",
            "java.lang.Object",
            "java.math.BigDecimal",
            "java.math.BigInteger",
            "java.time.",
            "java.util.Locale",
            "java.util.OptionalDouble",
            "java.util.OptionalInt",
            "java.util.OptionalLong",
            "java.util.regex.Pattern");

    private static final List<String> UNCHANGING_COLLECTIONS = List.of(
            "java.util.ImmutableCollections",
            "java.util.Collections$Unmodifiable",
            "java.util.Collections$Empty",
            "java.util.Collections$Singleton");

    private final Set<String> found = new LinkedHashSet<>();
    private final Set<Class<?>> seenClasses = new HashSet<>();
    private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());

    /** Looks at an object and at everything that it holds. */
    void look(final Object object) {
        look(object, object.getClass().getName());
    }

    /** What was found, each in one line. */
    List<String> found() {
        return List.copyOf(found);
    }

    private void look(final Object object, final String place) {
        if (!seen.add(object)) {
            return;
        }
        final Class<?> type = object.getClass();
        if (object instanceof Optional<?> optional) {
            optional.ifPresent(held -> look(held, place));
        } else if (object instanceof Object[] several) {
            Stream.of(several).filter(Objects::nonNull).forEach(held -> look(held, place));
        } else if (object instanceof Collection<?> several && isOneOf(type, UNCHANGING_COLLECTIONS)) {
            several.forEach(held -> look(held, place));
        } else if (object instanceof Map<?, ?> map && isOneOf(type, UNCHANGING_COLLECTIONS)) {
            map.values().forEach(held -> look(held, place));
        } else if (canChange(type)) {
            found.add(place + " holds a " + type.getName() + ", which is not known never to change");
        } else if (!isOneOf(type, PROJECT) && !isOneOf(type, PLATFORM) && !type.isArray()) {
            lookInside(object, type);
        }
    }

    private static boolean canChange(final Class<?> type) {
        return CHANGES.contains(type) || (isOneOf(type, PLATFORM) && !isOneOf(type, UNCHANGING));
    }

    private void lookInside(final Object object, final Class<?> type) {
        judgeNested(type);
        for (Class<?> at = type; at != null && !isOneOf(at, PLATFORM); at = at.getSuperclass()) {
            judge(at);
            for (final Field field : at.getDeclaredFields()) {
                if (Modifier.isFinal(field.getModifiers()) && !field.getType().isPrimitive()) {
                    held(object, field).ifPresent(value -> look(value, name(field)));
                }
            }
        }
    }

    private void judge(final Class<?> type) {
        if (!seenClasses.add(type)) {
            return;
        }
        for (final Field field : type.getDeclaredFields()) {
            if (!Modifier.isFinal(field.getModifiers()) && !field.isSynthetic()) {
                found.add(name(field) + " is not final: what it remembers is not in the run");
            }
        }
    }

    /** The classes that a class declares, whether or not an object of them is about. */
    private void judgeNested(final Class<?> type) {
        for (final Class<?> nested : type.getDeclaredClasses()) {
            judge(nested);
            judgeNested(nested);
        }
    }

    private Optional<Object> held(final Object object, final Field field) {
        try {
            field.setAccessible(true);
            return Optional.ofNullable(field.get(object));
        } catch (final InaccessibleObjectException | IllegalAccessException closed) {
            found.add(name(field) + " cannot be looked into: " + closed.getMessage());
            return Optional.empty();
        }
    }

    private static String name(final Field field) {
        return field.getDeclaringClass().getName() + "." + field.getName();
    }

    private static boolean isOneOf(final Class<?> type, final List<String> starts) {
        return starts.stream().anyMatch(type.getName()::startsWith);
    }
}
