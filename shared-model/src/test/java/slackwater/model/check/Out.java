package slackwater.model.check;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slackwater.model.Contact;
import slackwater.model.Facts;
import slackwater.model.Level;
import slackwater.model.Limits;
import slackwater.model.Load;
import slackwater.model.Output;
import slackwater.model.Return;
import slackwater.model.kind.Family;
import slackwater.model.kind.OutputKind;
import slackwater.model.quantity.Dimension;
import slackwater.model.quantity.Quantity;

/** An output for a test, sound until something is changed. */
final class Out {
    private final String name;
    private final Family family;
    private String controller = "north";
    private String zone = "north";
    private OptionalInt pin = OptionalInt.empty();
    private Level energised = Level.HIGH;
    private Contact contact = Contact.NORMALLY_OPEN;
    private Output.Rest rest = Output.Rest.UNSAID;
    private Limits limits = Limits.NONE;
    private Load load = Load.NONE;
    private double reachM;
    private Optional<String> unguarded = Optional.empty();
    private final Map<String, Object> facts = new LinkedHashMap<>();

    private record Kind(String word, Family family) implements OutputKind {}

    private Out(final String name, final Family family) {
        this.name = name;
        this.family = family;
    }

    static Out of(final Family family, final String name) {
        return new Out(name, family);
    }

    static Out valve(final String name) {
        return new Out(name, Family.VALVE);
    }

    static Out lamp(final String name) {
        return new Out(name, Family.LAMP);
    }

    static Out strobe(final String name) {
        return new Out(name, Family.STROBE);
    }

    Out on(final String elsewhere) {
        controller = elsewhere;
        return this;
    }

    Out zone(final String other) {
        zone = other;
        return this;
    }

    Out pin(final int gpio) {
        pin = OptionalInt.of(gpio);
        return this;
    }

    Out activeLow() {
        energised = Level.LOW;
        return this;
    }

    Out normallyClosed() {
        contact = Contact.NORMALLY_CLOSED;
        return this;
    }

    Out onPowerLoss(final Return does) {
        rest = new Output.Rest(Optional.of(does), rest.onAirLoss(), rest.restraint(), rest.within());
        return this;
    }

    Out onAirLoss(final Return does) {
        rest = new Output.Rest(rest.onPowerLoss(), Optional.of(does), rest.restraint(), rest.within());
        return this;
    }

    Out restraint(final String text) {
        rest = new Output.Rest(rest.onPowerLoss(), rest.onAirLoss(), Optional.of(text), rest.within());
        return this;
    }

    Out timeToRestMs(final long ms) {
        rest = new Output.Rest(
                rest.onPowerLoss(), rest.onAirLoss(), rest.restraint(), Optional.of(Duration.ofMillis(ms)));
        return this;
    }

    Out longestOnMs(final long ms) {
        limits = new Limits(Optional.of(Duration.ofMillis(ms)), limits.shortestOff(), limits.starts());
        return this;
    }

    Out shortestOffMs(final long ms) {
        limits = new Limits(limits.longestOn(), Duration.ofMillis(ms), limits.starts());
        return this;
    }

    Out starts(final int most, final long withinMs) {
        limits = new Limits(
                limits.longestOn(),
                limits.shortestOff(),
                Optional.of(new Limits.Starts(most, Duration.ofMillis(withinMs))));
        return this;
    }

    Out draws(final double amps, final double inrushAmps) {
        load = new Load(amps, inrushAmps, Duration.ofMillis(30));
        return this;
    }

    Out reach(final double metres) {
        reachM = metres;
        return this;
    }

    Out unguarded(final String reason) {
        unguarded = Optional.of(reason);
        return this;
    }

    Out fact(final String key, final Object value) {
        facts.put(key, value);
        return this;
    }

    Out fact(final String key, final double si, final Dimension dimension) {
        facts.put(key, new Quantity(si, dimension, si + " " + dimension.unit()));
        return this;
    }

    Output made() {
        return new Output(
                name,
                new Kind(family.name(), family),
                zone,
                controller,
                pin,
                energised,
                contact,
                rest,
                limits,
                load,
                Optional.empty(),
                reachM,
                Output.Feedback.NONE,
                unguarded,
                new Facts(facts));
    }
}
