package slackwater.model;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What an output uses up, by its own keys.
 *
 * @param of what
 * @param rate SI units a second on (kg/s or m3/s); for air m3 of free air a start
 * @param holds what its bottle or tray holds when full, in the same unit; empty where nothing was said, and for air
 */
public record Consumption(Kind of, double rate, OptionalDouble holds) {
    /** Density of fog fluid, water with glycol (common practice, no source). */
    public static final double FOG_FLUID_KG_PER_M3 = 1_030;
    /** Density of water, by which a weighing of a tray becomes a volume; at 4 C, from memory. */
    public static final double WATER_KG_PER_M3 = 1_000;

    /** What can be used up, and how a person reads it. */
    public enum Kind {
        /** Fog fluid in kg, told in grams. */
        FLUID("g", 1e3),
        /** Water in m3, told in millilitres. */
        WATER("ml", 1e6),
        /** Free air in m3, told in litres. */
        AIR("l", 1e3);

        private static final double FINE_BELOW = 10;

        private final String unit;
        private final double perSi;

        Kind(final String unit, final double perSi) {
            this.unit = unit;
            this.perSi = perSi;
        }

        /** The unit in which people read it. */
        public String unit() {
            return unit;
        }

        /** An amount in SI units as people read it. */
        public double shown(final double si) {
            return si * perSi;
        }

        /** The same with its unit, such as {@code 41 g} or {@code 0.8 g}. */
        public String text(final double si) {
            final double shown = shown(si);
            return String.format(Locale.ROOT, shown < FINE_BELOW ? "%.1f %s" : "%.0f %s", shown, unit);
        }
    }

    /** What an output uses up; empty where it uses nothing, or nobody said how much. */
    public static Optional<Consumption> of(final Output output) {
        final Facts facts = output.facts();
        return switch (output.family()) {
            case PUMP -> timed(Kind.FLUID, facts.si("flow"), scaled(facts.si("holds"), FOG_FLUID_KG_PER_M3));
            case MISTER -> timed(Kind.WATER, facts.si("uses"), facts.si("holds"));
            case VALVE -> timed(Kind.AIR, facts.si("air-per-stroke"), OptionalDouble.empty());
            case AIR_SUPPLY, HEATER, STROBE, LAMP, FAN, RELEASE, SOUNDER, CONTACT -> Optional.empty();
        };
    }

    private static Optional<Consumption> timed(final Kind of, final OptionalDouble rate, final OptionalDouble holds) {
        return rate.isPresent() && rate.getAsDouble() > 0
                ? Optional.of(new Consumption(of, rate.getAsDouble(), holds))
                : Optional.empty();
    }

    private static OptionalDouble scaled(final OptionalDouble amount, final double factor) {
        return amount.isPresent() ? OptionalDouble.of(amount.getAsDouble() * factor) : amount;
    }

    /** Whether it is counted down, so that its output is refused before it runs dry. */
    public boolean runsDry() {
        return holds.isPresent();
    }
}
