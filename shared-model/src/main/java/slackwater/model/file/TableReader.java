package slackwater.model.file;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;
import slackwater.model.Condition;
import slackwater.model.Point;
import slackwater.model.finding.Findings.Words;
import slackwater.model.finding.Nearest;
import slackwater.model.finding.Position;
import slackwater.model.quantity.Dimension;
import slackwater.model.quantity.Parsed;
import slackwater.model.quantity.Quantities;
import slackwater.model.quantity.Quantity;

/**
 * One table of a file. Every getter reports what is wrong with its key and then answers as if the key had been left out, so
 * that reading goes on and finds the next mistake; {@link #finish} reports the keys that nobody asked for.
 */
final class TableReader {
    private static final String WHY_TYPE = "a value that is read otherwise than it was meant is worse than none";
    private static final String NOT = "not ";

    private final Context context;
    private final TomlTable table;
    private final String path;
    private final Set<String> known = new LinkedHashSet<>();

    TableReader(final Context context, final TomlTable table, final String path) {
        this.context = context;
        this.table = table;
        this.path = path;
    }

    Context context() {
        return context;
    }

    /** The table's name as in the file, such as {@code output.clam-lid}. */
    String path() {
        return path;
    }

    Optional<Position> at(final String key) {
        return context.places().value(path, key);
    }

    Optional<Position> heading() {
        return context.places().table(path);
    }

    void error(final String code, final String key, final Words words) {
        context.error(code, at(key), words);
    }

    boolean has(final String key) {
        known.add(key);
        return table.get(List.of(key)) != null;
    }

    Set<String> keys() {
        return table.keySet();
    }

    Optional<Object> raw(final String key) {
        known.add(key);
        return Optional.ofNullable(table.get(List.of(key)));
    }

    Optional<String> text(final String key) {
        return as(key, String.class, "a text in quotes");
    }

    String required(final String key, final String why, final String fix) {
        require(key, why, fix);
        return text(key).orElse("");
    }

    /** Reports a key that is not there. */
    void require(final String key, final String why, final String fix) {
        if (!has(key)) {
            context.error("missing-key", heading(), new Words(title() + " does not say \"" + key + "\"", why, fix));
        }
    }

    boolean flag(final String key) {
        return as(key, Boolean.class, "true or false, without quotes").orElse(false);
    }

    /** A whole number within bounds. */
    Optional<Long> count(final String key, final long least, final long most) {
        final String wanted = "a whole number from " + least + " to " + most + ", without quotes";
        final Optional<Long> count = as(key, Long.class, wanted);
        if (count.isPresent() && (count.get() < least || count.get() > most)) {
            error("out-of-range", key, new Words("\"" + key + "\" is " + count.get(), WHY_TYPE, "write " + wanted));
            return Optional.empty();
        }
        return count;
    }

    /** A number without a unit, whole or not, within bounds. */
    Optional<Double> number(final String key, final double least, final double most) {
        final Optional<Number> number = as(key, Number.class, "a number without quotes");
        if (number.isPresent()
                && !(number.get().doubleValue() >= least && number.get().doubleValue() <= most)) {
            final String fix = "write a number from " + Texts.plain(least) + " to " + Texts.plain(most);
            error("out-of-range", key, new Words("\"" + key + "\" is " + number.get(), WHY_TYPE, fix));
            return Optional.empty();
        }
        return number.map(Number::doubleValue);
    }

    Optional<Duration> duration(final String key) {
        return parsed(key, "a time in quotes, such as \"2.5 s\"", Quantities::duration);
    }

    /** A quantity that cannot be negative, unless it is an angle or a temperature. */
    Optional<Quantity> quantity(final String key, final Dimension dimension) {
        final Optional<Quantity> quantity = signed(key, dimension);
        final boolean mayBeNegative = dimension == Dimension.ANGLE || dimension == Dimension.TEMPERATURE;
        if (quantity.isPresent() && quantity.get().si() < 0 && !mayBeNegative) {
            final String message = "\"" + key + "\" is negative";
            error("bad-quantity", key, new Words(message, WHY_TYPE, Quantities.example(dimension)));
            return Optional.empty();
        }
        return quantity;
    }

    /** A quantity in SI units, 0 where it was left out. */
    double si(final String key, final Dimension dimension) {
        return quantity(key, dimension).map(Quantity::si).orElse(0.0);
    }

    /** A text read by a function that finds its own mistakes. */
    <T> Optional<T> parsed(final String key, final String wanted, final Function<String, Parsed<T>> read) {
        return as(key, String.class, wanted).flatMap(text -> value(key, text, read.apply(text)));
    }

    Optional<Quantity> signed(final String key, final Dimension dimension) {
        return parsed(key, wanted(dimension), text -> Quantities.parse(text, dimension));
    }

    /** One of several words. */
    <T> Optional<T> word(final String key, final Map<String, T> words) {
        final Optional<String> text = text(key);
        if (text.isPresent() && !words.containsKey(text.get())) {
            unknownWord(key, text.get(), List.copyOf(words.keySet()));
        }
        return text.map(words::get);
    }

    void unknownWord(final String key, final String word, final List<String> known) {
        unknown(key, word, known, "");
    }

    /** Kinds are open: the word may be right, and the library that brings it missing. */
    void unknownKind(final String word, final List<String> known) {
        unknown("kind", word, known, "; or put the library that brings it into the rig's lib folder");
    }

    private void unknown(final String key, final String word, final List<String> known, final String otherwise) {
        final String fix = Nearest.of(word, known)
                .map(near -> "did you mean \"" + near + "\"?")
                .orElse(Context.listed("write one of: ", known, "leave it out"));
        final String message = "\"" + keyOf(key) + "\" cannot be \"" + word + "\"";
        final String why = "the word decides which rules apply";
        error("unknown-word", key, new Words(message, why, fix + (fix.endsWith("?") ? "" : otherwise)));
    }

    /** The name of something that must exist. */
    Optional<String> name(final String key, final Context.Thing thing) {
        return text(key).filter(name -> isNamed(thing, name, key));
    }

    /** Names of things that must exist: a list, or a single text. */
    List<String> names(final String key, final Context.Thing thing) {
        final List<String> texts = texts(key);
        final boolean isList = raw(key).filter(TomlArray.class::isInstance).isPresent();
        final List<String> names = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            final String name = texts.get(i);
            final String place = isList ? key + "[" + i + "]" : key;
            if (isNamed(thing, name, place) && names.contains(name)) {
                error(
                        "named-twice",
                        place,
                        new Words("\"" + name + "\" stands twice in \"" + key + "\"", WHY_TYPE, "keep it once"));
            }
            names.add(name);
        }
        return names;
    }

    /** Conditions such as {@code "gate"} and {@code "not gate"}. */
    List<Condition> conditions(final String key) {
        final List<String> texts = texts(key);
        final boolean isList = raw(key).filter(TomlArray.class::isInstance).isPresent();
        final List<Condition> conditions = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            conditions.add(condition(texts.get(i), isList ? key + "[" + i + "]" : key));
        }
        return conditions;
    }

    Condition condition(final String text, final String place) {
        final boolean isNegated = text.startsWith(NOT);
        final String input = isNegated ? text.substring(NOT.length()) : text;
        isNamed(Context.Thing.INPUT, input, place);
        return new Condition(input, !isNegated);
    }

    /** Texts: a list, or a single one. */
    List<String> texts(final String key) {
        final Optional<Object> raw = raw(key);
        if (raw.isEmpty()) {
            return List.of();
        }
        final List<Object> elements = raw.get() instanceof TomlArray array ? array.toList() : List.of(raw.get());
        final List<String> texts = new ArrayList<>();
        for (final Object element : elements) {
            if (!(element instanceof String text)) {
                wrongType(key, "a list of texts, such as [\"one\", \"two\"]");
                return List.of();
            }
            texts.add(text);
        }
        return texts;
    }

    Optional<Point> point(final String key) {
        final Optional<TomlArray> pair = as(key, TomlArray.class, Points.WANTED);
        return pair.flatMap(array -> new Points(this).point(array, key));
    }

    List<Point> points(final String key) {
        return as(key, TomlArray.class, "a list of points, such as [[\"0 m\", \"0 m\"], [\"12 m\", \"0 m\"]]")
                .map(array -> new Points(this).all(array, key))
                .orElse(List.of());
    }

    /** A table within this one. */
    Optional<TableReader> table(final String key) {
        return as(key, TomlTable.class, "a table, such as { ... }")
                .map(inner -> new TableReader(context, inner, Places.path(path, key)));
    }

    /** The tables of a list, such as the steps of a cue. */
    List<TableReader> tables(final String key) {
        return as(key, TomlArray.class, "a list of tables, such as [ { ... }, { ... } ]")
                .map(array -> tables(array, key))
                .orElse(List.of());
    }

    List<TableReader> tables(final TomlArray array, final String place) {
        final List<TableReader> tables = new ArrayList<>();
        for (int i = 0; i < array.size(); i++) {
            final String element = place + "[" + i + "]";
            if (array.get(i) instanceof TomlTable inner) {
                tables.add(new TableReader(context, inner, Places.path(path, element)));
            } else {
                wrongType(element, "a table, such as { energise = \"lamp\", for = \"2 s\" }");
            }
        }
        return tables;
    }

    /** The value of a parsed text, or a finding with the caret where the mistake is. */
    <T> Optional<T> value(final String place, final String text, final Parsed<T> parsed) {
        if (parsed instanceof Parsed.Mistake<T> mistake) {
            final Optional<Position> at = at(place).map(whole -> Points.within(whole, text, mistake));
            context.error("bad-quantity", at, new Words(mistake.words(), WHY_TYPE, mistake.fix()));
            return Optional.empty();
        }
        return Optional.of(((Parsed.Value<T>) parsed).value());
    }

    void wrongType(final String place, final String wanted) {
        final String message = "\"" + keyOf(place) + "\" is not " + wanted;
        error("wrong-type", place, new Words(message, WHY_TYPE, "write " + wanted));
    }

    /** Reports every key that nobody asked for. */
    void finish() {
        for (final String key : table.keySet()) {
            if (!known.contains(key)) {
                final String fix = Nearest.of(key, known)
                        .map(near -> "did you mean \"" + near + "\"?")
                        .orElse(Context.listed("the keys here are: ", List.copyOf(known), "leave it out"));
                context.error(
                        "unknown-key",
                        context.places().key(path, key),
                        new Words(
                                title() + " knows no key \"" + key + "\"",
                                "a key that nobody reads would be a limit that nobody keeps",
                                fix));
            }
        }
    }

    /** What this table is, for a message. */
    String title() {
        final String whole = path.contains(".") ? path.replaceFirst("\\.", " \"") + "\"" : path;
        return whole.isEmpty() ? "the file" : whole;
    }

    static String wanted(final Dimension dimension) {
        return Quantities.example(dimension).replaceFirst("write ", "").replace(", such", " in quotes, such");
    }

    /** A key without the index of an element. */
    private static String keyOf(final String place) {
        return place.contains("[") ? place.substring(0, place.indexOf('[')) : place;
    }

    private boolean isNamed(final Context.Thing thing, final String name, final String place) {
        final boolean isKnown = context.names().of(thing).contains(name);
        if (!isKnown) {
            context.unknown(thing, name, at(place));
        }
        return isKnown;
    }

    private <T> Optional<T> as(final String key, final Class<T> type, final String wanted) {
        final Optional<Object> raw = raw(key);
        if (raw.isPresent() && !type.isInstance(raw.get())) {
            wrongType(key, wanted);
            return Optional.empty();
        }
        return raw.map(type::cast);
    }
}
