package slackwater.model.engineering;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How long parts last, reckoned as ISO 13849-1 does in its editions of 2006 and 2015 (handbook 6.6). For information, to see
 * which part wears out first: this project claims no performance level, and nothing here replaces an assessment by somebody who
 * is trained for it. Years, and events an hour, as in the standard.
 */
public final class Dependability {
    /** Longest MTTFd that a channel may be given, years (case 12). */
    public static final double CHANNEL_CAP_YEARS = 100;
    /** The same in category 4, years (case 12). */
    public static final double CATEGORY_4_CAP_YEARS = 2_500;
    /** Points against failures of a common cause that categories 2, 3 and 4 need (case 19). */
    public static final int COMMON_CAUSE_POINTS = 65;
    /** Operations until a tenth of pneumatic parts has failed dangerously (Table C.1, from memory). */
    public static final double PNEUMATIC_B10D = 20_000_000;
    /** The same for relays and contactors at their nominal load (Table C.1, from memory). */
    public static final double RELAY_AT_LOAD_B10D = 400_000;
    /** The same for an emergency-stop device or a push button (Table C.1, from memory). */
    public static final double STOP_BUTTON_B10D = 100_000;

    private static final double HOURS_PER_YEAR = 8_760;
    private static final double S_PER_HOUR = 3_600;
    private static final double FAILED_PART = 0.1;

    private Dependability() {}

    /** Range of a performance level (cases 1 to 5); it is the range's name, and no claim. */
    public enum Level {
        A(1e-5, 1e-4),
        B(3e-6, 1e-5),
        C(1e-6, 3e-6),
        D(1e-7, 1e-6),
        E(1e-8, 1e-7);

        private final double fromPerHour;
        private final double belowPerHour;

        Level(final double fromPerHour, final double belowPerHour) {
            this.fromPerHour = fromPerHour;
            this.belowPerHour = belowPerHour;
        }

        /** Least dangerous failures an hour; it belongs to the range. */
        public double fromPerHour() {
            return fromPerHour;
        }

        /** The range ends below so many dangerous failures an hour. */
        public double belowPerHour() {
            return belowPerHour;
        }
    }

    /** Name of a channel's mean time to a dangerous failure (case 7); 100 years still are high, and more is not claimed. */
    public enum Endurance {
        LOW(3),
        MEDIUM(10),
        HIGH(30);

        private final double fromYears;

        Endurance(final double fromYears) {
            this.fromYears = fromYears;
        }

        /** Least years; they belong to the name. */
        public double fromYears() {
            return fromYears;
        }
    }

    /**
     * A part of a channel.
     *
     * @param mttfdYears mean time to a dangerous failure, above 0
     * @param coverage share of its dangerous faults that is found, 0 to 1
     */
    public record Part(double mttfdYears, double coverage) {
        public Part {
            Given.positive("mttfdYears", mttfdYears);
            Given.within("coverage", coverage, 0, 1);
        }
    }

    /** The range that dangerous failures an hour fall in; empty when they are in none. */
    public static Optional<Level> levelOf(final double failuresPerHour) {
        Given.notNegative("failuresPerHour", failuresPerHour);
        return Arrays.stream(Level.values())
                .filter(level -> failuresPerHour >= level.fromPerHour && failuresPerHour < level.belowPerHour)
                .findFirst();
    }

    /** The name of a mean time to a dangerous failure; empty below 3 years. */
    public static Optional<Endurance> enduranceOf(final double mttfdYears) {
        Given.positive("mttfdYears", mttfdYears);
        return Arrays.stream(Endurance.values())
                .filter(endurance -> mttfdYears >= endurance.fromYears)
                .reduce((lower, higher) -> higher);
    }

    /**
     * Operations a year, n_op.
     *
     * @param daysPerYear above 0 to 366
     * @param hoursPerDay above 0 to 24
     * @param cycleS mean time between the beginnings of two operations
     */
    public static double operationsPerYear(final double daysPerYear, final double hoursPerDay, final double cycleS) {
        Given.within("daysPerYear", Given.positive("daysPerYear", daysPerYear), 0, 366);
        Given.within("hoursPerDay", Given.positive("hoursPerDay", hoursPerDay), 0, 24);
        return daysPerYear * hoursPerDay * S_PER_HOUR / Given.positive("cycleS", cycleS);
    }

    /** After so many years a part is to be replaced: until then a tenth of its kind has failed dangerously. */
    public static double t10dYears(final double b10d, final double operationsPerYear) {
        return Given.positive("b10d", b10d) / Given.positive("operationsPerYear", operationsPerYear);
    }

    /** Mean time to a dangerous failure, years, before any cap. */
    public static double mttfdYears(final double b10d, final double operationsPerYear) {
        return t10dYears(b10d, operationsPerYear) / FAILED_PART;
    }

    /** As much of a mean time as a channel may be given, years. */
    public static double cappedYears(final double mttfdYears) {
        return Math.min(CHANNEL_CAP_YEARS, Given.positive("mttfdYears", mttfdYears));
    }

    /** Mean time of a channel from its parts', any of which fails it (parts count method), years. */
    public static double channelYears(final List<Part> parts) {
        return 1 / failuresPerYear(parts);
    }

    /** One mean time for two channels that are not equal, years. */
    public static double symmetrisedYears(final double oneYears, final double otherYears) {
        Given.positive("oneYears", oneYears);
        Given.positive("otherYears", otherYears);
        return 2.0 / 3 * (oneYears + otherYears - 1 / (1 / oneYears + 1 / otherYears));
    }

    /** Dangerous failures an hour of a single channel without any test. */
    public static double singleChannelPerHour(final double mttfdYears) {
        return 1 / (Given.positive("mttfdYears", mttfdYears) * HOURS_PER_YEAR);
    }

    /** Mean share of found faults, DCavg, 0 to 1: parts that fail more often weigh more. */
    public static double averageCoverage(final List<Part> parts) {
        double found = 0;
        for (final Part part : parts) {
            found += part.coverage / part.mttfdYears;
        }
        return found / failuresPerYear(parts);
    }

    private static double failuresPerYear(final List<Part> parts) {
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a channel without parts has no mean time to a failure");
        }
        return parts.stream().mapToDouble(part -> 1 / part.mttfdYears).sum();
    }
}
