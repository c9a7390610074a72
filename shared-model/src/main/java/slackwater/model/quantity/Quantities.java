package slackwater.model.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import slackwater.model.finding.Nearest;
import slackwater.model.quantity.Parsed.Mistake;
import slackwater.model.quantity.Parsed.Value;

/**
 * Reads quantities as people write them into a rig file: a number with a decimal point, at most one space, a unit. Whatever
 * could be read in two ways is refused: a decimal comma, an exponent, digit groups, a number without a unit.
 */
public final class Quantities {
    private static final int NS_DIGITS = 9;
    private static final BigInteger NS_PER_S = BigInteger.TEN.pow(NS_DIGITS);
    private static final BigDecimal LONGEST_S =
            new BigDecimal(Duration.ofDays(366).toSeconds());

    private Quantities() {}

    /** Reads a quantity of a wanted dimension. Only lengths, angles, temperatures and voltages may be negative. */
    public static Parsed<Quantity> parse(final String text, final Dimension wanted) {
        final Parsed<Written> parsed = written(text, Optional.of(wanted));
        if (parsed instanceof Mistake<Written> mistake) {
            return mistake.within(0);
        }
        return quantity(text, ((Value<Written>) parsed).value());
    }

    /** Reads a quantity of whatever dimension its unit has. */
    public static Parsed<Quantity> parseAny(final String text) {
        final Parsed<Written> parsed = written(text, Optional.empty());
        if (parsed instanceof Mistake<Written> mistake) {
            return mistake.within(0);
        }
        return quantity(text, ((Value<Written>) parsed).value());
    }

    /** Reads a length of time, exact to the nanosecond, from 0 to 366 days. */
    public static Parsed<Duration> duration(final String text) {
        final Parsed<Written> parsed = written(text, Optional.of(Dimension.TIME));
        if (parsed instanceof Mistake<Written> mistake) {
            return mistake.within(0);
        }
        final Written written = ((Value<Written>) parsed).value();
        final BigDecimal seconds = written.unit().toSi(written.number());
        final int numberLength = Math.max(1, written.numberLength());
        if (seconds.compareTo(LONGEST_S) > 0) {
            return new Mistake<>(0, numberLength, "\"" + text + "\" is longer than a year", example(Dimension.TIME));
        }
        final BigDecimal ns = seconds.movePointRight(NS_DIGITS);
        if (ns.stripTrailingZeros().scale() > 0) {
            return new Mistake<>(
                    0, numberLength, "\"" + text + "\" is finer than a nanosecond", example(Dimension.TIME));
        }
        final BigInteger[] parts =
                ns.setScale(0, RoundingMode.UNNECESSARY).toBigIntegerExact().divideAndRemainder(NS_PER_S);
        return new Value<>(Duration.ofSeconds(parts[0].longValueExact(), parts[1].longValueExact()));
    }

    /** What to write for a dimension, such as {@code write a time, such as "2.5 s"}. */
    public static String example(final Dimension dimension) {
        return "write " + DimensionWords.of(dimension).noun() + ", such as \""
                + DimensionWords.of(dimension).example() + "\"";
    }

    private record Written(BigDecimal number, int numberLength, Unit unit) {}

    private static Parsed<Quantity> quantity(final String text, final Written written) {
        final Dimension dimension = written.unit().dimension();
        if (written.unit().word().equals(Unit.AWG)) {
            final OptionalDouble areaM2 = WireGauge.areaM2(written.number());
            return areaM2.isPresent()
                    ? new Value<>(new Quantity(areaM2.getAsDouble(), dimension, text))
                    : new Mistake<>(
                            0,
                            written.numberLength(),
                            "there is no wire gauge \"" + text + "\"",
                            "write a whole gauge from 0 to 40, such as \"14 AWG\"");
        }
        return new Value<>(new Quantity(written.unit().toSi(written.number()).doubleValue(), dimension, text));
    }

    private static Parsed<Written> written(final String text, final Optional<Dimension> wanted) {
        final String example = wanted.map(Quantities::example).orElse("write a number and a unit, such as \"2.5 s\"");
        final Parsed<BigDecimal> number = Numbers.leading(text, example);
        if (number instanceof Mistake<BigDecimal> mistake) {
            return mistake.within(0);
        }
        final int numberLength = Numbers.length(text);
        final int unitOffset =
                numberLength < text.length() && text.charAt(numberLength) == ' ' ? numberLength + 1 : numberLength;
        final String word = text.substring(unitOffset);
        final Optional<Unit> unit = Unit.named(word);
        if (unit.isEmpty()) {
            return noUnit(text, unitOffset, wanted, example);
        }
        final Dimension dimension = unit.get().dimension();
        if (wanted.isPresent() && dimension != wanted.get()) {
            return new Mistake<>(
                    unitOffset,
                    word.length(),
                    "\"" + word + "\" measures " + DimensionWords.of(dimension).noun() + ", but "
                            + DimensionWords.of(wanted.get()).noun() + " is wanted",
                    example);
        }
        final BigDecimal value = ((Value<BigDecimal>) number).value();
        if (value.signum() < 0 && !DimensionWords.of(dimension).mayBeNegative()) {
            return new Mistake<>(0, 1, "\"" + text + "\" is negative", example);
        }
        return new Value<>(new Written(value, numberLength, unit.get()));
    }

    private static Parsed<Written> noUnit(
            final String text, final int unitOffset, final Optional<Dimension> wanted, final String example) {
        final String word = text.substring(unitOffset);
        if (word.isBlank()) {
            return new Mistake<>(
                    0,
                    Math.max(1, text.length()),
                    "\"" + text + "\" has no unit",
                    wanted.map(Quantities::addOneOf).orElse(example));
        }
        final List<String> known =
                wanted.map(Unit::words).orElse(Unit.ALL.stream().map(Unit::word).toList());
        final String fix = DimensionWords.meant(word)
                .filter(known::contains)
                .or(() -> Nearest.of(word, known))
                .map(near -> "did you mean \"" + near + "\"?")
                .orElse(wanted.map(Quantities::addOneOf).orElse(example));
        return new Mistake<>(unitOffset, word.length(), "there is no unit \"" + word + "\"", fix);
    }

    private static String addOneOf(final Dimension dimension) {
        return Unit.words(dimension).stream()
                .collect(Collectors.joining(
                        ", ",
                        "add one of: ",
                        " (for example \"" + DimensionWords.of(dimension).example() + "\")"));
    }
}
