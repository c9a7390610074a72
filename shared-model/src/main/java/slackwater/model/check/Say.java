package slackwater.model.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import slackwater.model.Cue;
import slackwater.model.Input;
import slackwater.model.Interlock;
import slackwater.model.Output;
import slackwater.model.finding.Findings.Words;

/** The names of tables, and numbers as a finding says them: exact, so that two that differ never read the same. */
final class Say {
    private static final long NS_PER_S = 1_000_000_000L;
    private static final long NS_PER_MIN = 60 * NS_PER_S;
    private static final long NS_PER_H = 60 * NS_PER_MIN;

    private Say() {}

    static Words words(final String message, final String why, final String fix) {
        return new Words(message, why, fix);
    }

    static String table(final Output output) {
        return "output." + output.name();
    }

    static String table(final Input input) {
        return "input." + input.name();
    }

    static String table(final Cue cue) {
        return "cue." + cue.name();
    }

    static String table(final Interlock interlock) {
        return kind(interlock) + "." + interlock.name();
    }

    private static String kind(final Interlock interlock) {
        if (interlock instanceof Interlock.Permissive) {
            return "permissive";
        }
        if (interlock instanceof Interlock.Trip) {
            return "trip";
        }
        if (interlock instanceof Interlock.Exclusion) {
            return "exclusion";
        }
        if (interlock instanceof Interlock.Shed) {
            return "shed";
        }
        return interlock instanceof Interlock.LoadLimit ? "load-limit" : "flash-limit";
    }

    static String quoted(final String name) {
        return '"' + name + '"';
    }

    static String quoted(final Collection<String> names) {
        return names.stream().map(Say::quoted).collect(Collectors.joining(", "));
    }

    static String numbers(final List<Integer> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** A length such as {@code 5 ms}, {@code 2.55 s}, {@code 20 min} or {@code 14 h}. */
    static String time(final Duration length) {
        final long ns = length.toNanos();
        if (ns != 0 && ns % NS_PER_H == 0) {
            return ns / NS_PER_H + " h";
        }
        if (ns != 0 && ns % NS_PER_MIN == 0) {
            return ns / NS_PER_MIN + " min";
        }
        return Math.abs(ns) < NS_PER_S
                ? BigDecimal.valueOf(ns, 6).stripTrailingZeros().toPlainString() + " ms"
                : BigDecimal.valueOf(ns, 9).stripTrailingZeros().toPlainString() + " s";
    }

    /** A number with at most so many decimals, without trailing zeros. */
    static String number(final double value, final int decimals) {
        final BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    static String amps(final double amps) {
        return number(amps, 3) + " A";
    }
}
