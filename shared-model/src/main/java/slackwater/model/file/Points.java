package slackwater.model.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tomlj.TomlArray;
import slackwater.model.Point;
import slackwater.model.finding.Position;
import slackwater.model.quantity.Dimension;
import slackwater.model.quantity.Parsed;
import slackwater.model.quantity.Quantities;
import slackwater.model.quantity.Quantity;

/** Reads points on the plan: pairs of lengths, x to the east and y to the north. */
final class Points {
    static final String WANTED = "a point, such as [\"3 m\", \"2 m\"]";

    private final TableReader reader;

    Points(final TableReader reader) {
        this.reader = reader;
    }

    List<Point> all(final TomlArray array, final String place) {
        final List<Point> points = new ArrayList<>();
        for (int i = 0; i < array.size(); i++) {
            final String element = place + "[" + i + "]";
            if (array.get(i) instanceof TomlArray pair) {
                point(pair, element).ifPresent(points::add);
            } else {
                reader.wrongType(element, WANTED);
            }
        }
        return points;
    }

    Optional<Point> point(final TomlArray pair, final String place) {
        if (pair.size() != 2) {
            reader.wrongType(place, WANTED);
            return Optional.empty();
        }
        final Optional<Quantity> x = length(pair.get(0), place + "[0]");
        final Optional<Quantity> y = length(pair.get(1), place + "[1]");
        return x.isPresent() && y.isPresent()
                ? Optional.of(new Point(x.get().si(), y.get().si()))
                : Optional.empty();
    }

    /** The place within a quoted text where a mistake is; the whole text where it has escapes or several lines. */
    static Position within(final Position whole, final String text, final Parsed.Mistake<?> mistake) {
        final int quotes = 2;
        if (whole.length() != text.codePointCount(0, text.length()) + quotes) {
            return whole;
        }
        final int offset = text.codePointCount(0, Math.min(text.length(), mistake.offset()));
        final int end = text.codePointCount(0, Math.min(text.length(), mistake.offset() + mistake.length()));
        return new Position(whole.file(), whole.line(), whole.column() + 1 + offset, Math.max(1, end - offset));
    }

    private Optional<Quantity> length(final Object value, final String place) {
        if (value instanceof String text) {
            return reader.value(place, text, Quantities.parse(text, Dimension.LENGTH));
        }
        reader.wrongType(place, WANTED);
        return Optional.empty();
    }
}
