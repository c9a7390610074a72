package slackwater.simulator.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Figures over time as a picture: greys of different strokes, each with its word at its end, and limits as dashed lines.
 *
 * @param title what it shows
 * @param unit of every figure
 * @param everyS seconds from one figure to the next
 * @param series what is drawn
 * @param limits lines across it, such as a breaker's rating
 */
public record LinePlot(String title, String unit, double everyS, List<Series> series, List<Limit> limits) {
    private static final double LEFT_PX = 56;
    private static final double TOP_PX = 30;
    private static final double PLOT_PX = 880;
    private static final double HEIGHT_PX = 190;
    private static final double WORDS_PX = 230;
    private static final double BELOW_PX = 26;
    private static final double LINE_PX = 15;
    private static final double S_PER_MIN = 60;
    private static final int TICKS = 6;
    private static final String[] STROKES = {"", "9 4", "3 3", "12 3 3 3"};

    /** One line of figures; what is not a number is left out. */
    public record Series(String name, List<Double> values) {
        public Series {
            values = List.copyOf(values);
        }

        /** The same from an array. */
        public static Series of(final String name, final double[] values) {
            return new Series(name, Arrays.stream(values).boxed().toList());
        }
    }

    /** A level that should not be crossed. */
    public record Limit(String name, double value) {}

    public LinePlot {
        series = List.copyOf(series);
        limits = List.copyOf(limits);
    }

    /** The picture as SVG. */
    public String svg() {
        final double highest = highest();
        final double widthPx = LEFT_PX + PLOT_PX + WORDS_PX;
        final double heightPx = TOP_PX + HEIGHT_PX + BELOW_PX;
        final StringBuilder text = new StringBuilder("<svg viewBox=\"0 0 " + Svg.px(widthPx) + " " + Svg.px(heightPx)
                + "\" width=\"" + Svg.px(widthPx) + "\" role=\"img\" aria-label=\"" + Svg.escaped(title) + "\">\n");
        text.append(Svg.words("group", LEFT_PX, TOP_PX - 12, title + ", " + unit));
        axes(highest, text);
        for (final Limit limit : limits) {
            final double yPx = yPx(limit.value(), highest);
            text.append("<path class=\"limit\" d=\"M" + Svg.px(LEFT_PX) + " " + Svg.px(yPx) + "h" + Svg.px(PLOT_PX)
                    + "\"/>\n");
        }
        final List<Double> taken = new ArrayList<>();
        for (int i = 0; i < series.size(); i++) {
            line(series.get(i), i, highest, text);
        }
        for (int i = 0; i < series.size(); i++) {
            final List<Double> values = series.get(i).values();
            final double last = values.isEmpty() ? 0 : values.get(values.size() - 1);
            text.append(word("word", series.get(i).name(), yPx(last, highest), taken));
        }
        for (final Limit limit : limits) {
            text.append(word("says-violation", limit.name(), yPx(limit.value(), highest), taken));
        }
        return text.append("</svg>\n").toString();
    }

    private void axes(final double highest, final StringBuilder text) {
        text.append("<path class=\"rule\" d=\"M" + Svg.px(LEFT_PX) + " " + Svg.px(TOP_PX) + "v" + Svg.px(HEIGHT_PX)
                + "h" + Svg.px(PLOT_PX) + "\"/>\n");
        for (int tick = 0; tick <= TICKS / 2; tick++) {
            final double value = highest * tick / (TICKS / 2);
            text.append(Svg.words("tick", LEFT_PX - 26, yPx(value, highest) + 4, number(value)));
        }
        final double endMin = lengthS() / S_PER_MIN;
        for (int tick = 0; tick <= TICKS; tick++) {
            text.append(Svg.words(
                    "tick",
                    LEFT_PX + PLOT_PX * tick / TICKS,
                    TOP_PX + HEIGHT_PX + 16,
                    number(endMin * tick / TICKS) + (tick == TICKS ? " min" : "")));
        }
    }

    private void line(final Series one, final int index, final double highest, final StringBuilder text) {
        final StringBuilder data = new StringBuilder();
        boolean isDown = false;
        for (int i = 0; i < one.values().size(); i++) {
            final double value = one.values().get(i);
            if (Double.isNaN(value)) {
                isDown = false;
                continue;
            }
            final double xPx = LEFT_PX + PLOT_PX * i * everyS / Math.max(everyS, lengthS());
            data.append(isDown ? "L" : "M").append(Svg.px(xPx)).append(' ').append(Svg.px(yPx(value, highest)));
            isDown = true;
        }
        text.append("<path class=\"gauge\" stroke-dasharray=\"" + STROKES[index % STROKES.length] + "\" d=\"" + data
                + "\"/>\n");
    }

    /** Words at the right, moved down where another stands already. */
    private static String word(final String style, final String name, final double wantedPx, final List<Double> taken) {
        double yPx = wantedPx + 4;
        boolean isFree = false;
        while (!isFree) {
            final double here = yPx;
            isFree = taken.stream().noneMatch(other -> Math.abs(other - here) < LINE_PX);
            yPx = isFree ? yPx : yPx + LINE_PX;
        }
        taken.add(yPx);
        return Svg.words(style, LEFT_PX + PLOT_PX + 8, yPx, name);
    }

    private double lengthS() {
        return everyS
                * (series.stream().mapToInt(one -> one.values().size()).max().orElse(1) - 1);
    }

    private double highest() {
        double highest = 1e-9;
        for (final Series one : series) {
            for (final double value : one.values()) {
                highest = value > highest ? value : highest;
            }
        }
        for (final Limit limit : limits) {
            highest = Math.max(highest, limit.value());
        }
        return 1.05 * highest;
    }

    private static double yPx(final double value, final double highest) {
        return TOP_PX + HEIGHT_PX * (1 - Math.max(0, value) / highest);
    }

    private static String number(final double value) {
        final BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(2));
        return String.format(
                Locale.ROOT,
                "%s",
                rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString());
    }
}
