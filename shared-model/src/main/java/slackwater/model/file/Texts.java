package slackwater.model.file;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalTime;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slackwater.model.Feed.Cable;
import slackwater.model.Limits.Starts;
import slackwater.model.Schedule.TimeOfDay;
import slackwater.model.quantity.Dimension;
import slackwater.model.quantity.Parsed;
import slackwater.model.quantity.Parsed.Mistake;
import slackwater.model.quantity.Parsed.Value;
import slackwater.model.quantity.Quantities;
import slackwater.model.quantity.Quantity;

/** Texts that are made of several quantities. */
final class Texts {
    static final String STARTS = "a number of starts and a time, such as \"6 in 1 min\"";
    static final String INRUSH = "a current and a time, such as \"0.8 A for 30 ms\"";
    static final String CABLE = "a length and a cross-section, such as \"12 m of 0.75 mm2\" or \"40 ft of 18 AWG\"";
    static final String TIME_OF_DAY = "a time of day, such as \"18:30\", \"dusk + 15 min\" or \"sunset - 10 min\"";

    private static final Pattern STARTS_FORM = Pattern.compile("([1-9][0-9]{0,4}) in (.+)");
    private static final Pattern INRUSH_FORM = Pattern.compile("(.+?) for (.+)");
    private static final Pattern CABLE_FORM = Pattern.compile("(.+?) of (.+)");
    private static final Pattern CLOCK_FORM = Pattern.compile("([01][0-9]|2[0-3]):([0-5][0-9])");
    private static final Pattern SUN_FORM = Pattern.compile("(dusk|sunset)( ([+-]) (.+))?");
    private static final int SUN_OFFSET = 4;
    private static final Duration LONGEST_OFFSET = Duration.ofHours(12);

    private Texts() {}

    /** Current while a load starts, and how long. */
    record Inrush(double amps, Duration lasts) {}

    /** At most so many starts within a time: {@code 6 in 1 min}. */
    static Parsed<Starts> starts(final String text) {
        final Matcher matcher = STARTS_FORM.matcher(text);
        if (!matcher.matches()) {
            return whole(text, STARTS);
        }
        final Parsed<Duration> within = Quantities.duration(matcher.group(2));
        if (within instanceof Mistake<Duration> mistake) {
            return mistake.within(matcher.start(2));
        }
        final Duration time = ((Value<Duration>) within).value();
        return time.isZero() ? whole(text, STARTS) : new Value<>(new Starts(Integer.parseInt(matcher.group(1)), time));
    }

    /** {@code 0.8 A for 30 ms}. */
    static Parsed<Inrush> inrush(final String text) {
        final Matcher matcher = INRUSH_FORM.matcher(text);
        if (!matcher.matches()) {
            return whole(text, INRUSH);
        }
        final Parsed<Quantity> amps = Quantities.parse(matcher.group(1), Dimension.CURRENT);
        if (amps instanceof Mistake<Quantity> mistake) {
            return mistake.within(0);
        }
        final Parsed<Duration> lasts = Quantities.duration(matcher.group(2));
        if (lasts instanceof Mistake<Duration> mistake) {
            return mistake.within(matcher.start(2));
        }
        return new Value<>(new Inrush(((Value<Quantity>) amps).value().si(), ((Value<Duration>) lasts).value()));
    }

    /** {@code 12 m of 0.75 mm2}. */
    static Parsed<Cable> cable(final String text) {
        final Matcher matcher = CABLE_FORM.matcher(text);
        if (!matcher.matches()) {
            return whole(text, CABLE);
        }
        final Parsed<Quantity> length = Quantities.parse(matcher.group(1), Dimension.LENGTH);
        if (length instanceof Mistake<Quantity> mistake) {
            return mistake.within(0);
        }
        final Parsed<Quantity> wire = Quantities.parse(matcher.group(2), Dimension.AREA);
        if (wire instanceof Mistake<Quantity> mistake) {
            return mistake.within(matcher.start(2));
        }
        final Cable cable = new Cable(
                ((Value<Quantity>) length).value().si(),
                ((Value<Quantity>) wire).value().si());
        return cable.lengthM() > 0 && cable.wireM2() > 0 ? new Value<>(cable) : whole(text, CABLE);
    }

    /** {@code 18:30}, {@code dusk + 15 min}, {@code sunset - 10 min}, {@code dusk}. */
    static Parsed<TimeOfDay> timeOfDay(final String text) {
        final Matcher clock = CLOCK_FORM.matcher(text);
        if (clock.matches()) {
            return new Value<>(new TimeOfDay.Clock(
                    LocalTime.of(Integer.parseInt(clock.group(1)), Integer.parseInt(clock.group(2)))));
        }
        final Matcher sun = SUN_FORM.matcher(text);
        return sun.matches() ? bySun(text, sun) : whole(text, TIME_OF_DAY);
    }

    /** A number as a person would write it. */
    static String plain(final double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    private static Parsed<TimeOfDay> bySun(final String text, final Matcher sun) {
        final String moved = sun.group(SUN_OFFSET);
        Duration offset = Duration.ZERO;
        if (moved != null) {
            final Parsed<Duration> length = Quantities.duration(moved);
            if (length instanceof Mistake<Duration> mistake) {
                return mistake.within(sun.start(SUN_OFFSET));
            }
            offset = ((Value<Duration>) length).value();
            if (offset.compareTo(LONGEST_OFFSET) > 0) {
                return new Mistake<>(
                        sun.start(SUN_OFFSET),
                        moved.length(),
                        "\"" + text + "\" is moved by more than 12 h",
                        "write " + TIME_OF_DAY);
            }
            offset = "-".equals(sun.group(3)) ? offset.negated() : offset;
        }
        return new Value<>("dusk".equals(sun.group(1)) ? new TimeOfDay.Dusk(offset) : new TimeOfDay.Sunset(offset));
    }

    private static <T> Mistake<T> whole(final String text, final String wanted) {
        return new Mistake<>(0, Math.max(1, text.length()), "\"" + text + "\" is not " + wanted, "write " + wanted);
    }
}
