package slackwater.model.check;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slackwater.model.Facts;
import slackwater.model.Input;
import slackwater.model.Level;
import slackwater.model.Pull;
import slackwater.model.kind.InputFamily;
import slackwater.model.kind.InputKind;
import slackwater.model.quantity.Dimension;
import slackwater.model.quantity.Quantity;

/** An input for a test, sound until something is changed. */
final class In {
    private final String name;
    private final InputFamily family;
    private List<String> controllers = List.of("north");
    private Optional<String> zone = Optional.of("north");
    private final Map<String, Integer> pins = new LinkedHashMap<>();
    private Level active = Level.HIGH;
    private Pull pull = Pull.DOWN;
    private Duration activeAfter = Duration.ZERO;
    private Duration inactiveAfter = Duration.ofMillis(200);
    private Input.Use use = Input.Use.SENSE;
    private List<String> reachOf = List.of();
    private final Map<String, Object> facts = new LinkedHashMap<>();

    private record Kind(String word, InputFamily family) implements InputKind {}

    private In(final String name, final InputFamily family) {
        this.name = name;
        this.family = family;
    }

    static In of(final InputFamily family, final String name) {
        return new In(name, family);
    }

    static In beam(final String name) {
        return new In(name, InputFamily.BEAM);
    }

    static In stopLoop(final String name, final String... controllers) {
        final In loop = new In(name, InputFamily.STOP_LOOP).on(controllers);
        loop.zone = Optional.empty();
        return loop;
    }

    In on(final String... elsewhere) {
        controllers = List.of(elsewhere);
        return this;
    }

    In zone(final String other) {
        zone = Optional.of(other);
        return this;
    }

    In pin(final int gpio) {
        controllers.forEach(controller -> pins.put(controller, gpio));
        return this;
    }

    In activeLowPulledUp() {
        active = Level.LOW;
        pull = Pull.UP;
        return this;
    }

    In activeAfterMs(final long ms) {
        activeAfter = Duration.ofMillis(ms);
        return this;
    }

    In inactiveAfterMs(final long ms) {
        inactiveAfter = Duration.ofMillis(ms);
        return this;
    }

    In use(final Input.Use what) {
        use = what;
        return this;
    }

    In reachOf(final String... outputs) {
        reachOf = List.of(outputs);
        return this;
    }

    In fact(final String key, final Object value) {
        facts.put(key, value);
        return this;
    }

    In distanceMm(final double mm) {
        facts.put("distance", new Quantity(mm / 1_000, Dimension.LENGTH, mm + " mm"));
        return this;
    }

    In resolutionMm(final double mm) {
        facts.put("resolution", new Quantity(mm / 1_000, Dimension.LENGTH, mm + " mm"));
        return this;
    }

    In respondsInMs(final long ms) {
        facts.put("responds-in", Duration.ofMillis(ms));
        return this;
    }

    Input made() {
        return new Input(
                name,
                new Kind(family.name(), family),
                zone,
                controllers,
                pins,
                active,
                pull,
                new Input.Proving(activeAfter, inactiveAfter, Duration.ZERO, Optional.empty()),
                use,
                reachOf,
                Input.Sees.NOTHING,
                new Facts(facts));
    }
}
