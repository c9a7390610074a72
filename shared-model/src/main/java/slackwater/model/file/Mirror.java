package slackwater.model.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slackwater.model.Condition;
import slackwater.model.Cue;
import slackwater.model.Facts;
import slackwater.model.Feed;
import slackwater.model.Field;
import slackwater.model.Input;
import slackwater.model.Interlock;
import slackwater.model.Load;
import slackwater.model.Output;
import slackwater.model.Point;
import slackwater.model.Ray;
import slackwater.model.Start;
import slackwater.model.Step;

/**
 * How {@code [mirror.NEW]} changes what it repeats: names, references to what is repeated too, the controller, and places.
 *
 * @param zone the zone that it makes
 * @param on the controller to which the new bank is wired
 * @param acrossYM the line y = c that turns it over, metres; empty when the bank is only shifted
 * @param shift added after turning over
 * @param names how things are called
 * @param renamed new names of inputs and outputs, by old ones
 */
record Mirror(
        String zone,
        String on,
        Optional<Double> acrossYM,
        Point shift,
        MirrorNames names,
        Map<String, String> renamed) {
    private static final double FULL_TURN_DEG = 360;

    Mirror {
        renamed = Map.copyOf(renamed);
    }

    Input input(final Input input) {
        final Map<String, Integer> pins = new LinkedHashMap<>();
        input.pins().values().forEach(pin -> pins.put(on, pin));
        final Input.Sees sees = new Input.Sees(
                input.sees().field().map(this::field), input.sees().ray().map(this::ray));
        return new Input(
                name(input.name()),
                input.kind(),
                Optional.of(zone),
                List.of(on),
                pins,
                input.activeLevel(),
                input.pull(),
                input.proving(),
                input.use(),
                names(input.reachOf()),
                sees,
                facts(input.facts()));
    }

    Output output(final Output output) {
        return new Output(
                name(output.name()),
                output.kind(),
                zone,
                on,
                output.pin(),
                output.energisedLevel(),
                output.contact(),
                output.rest(),
                output.limits(),
                load(output.load()),
                output.at().map(this::point),
                output.reachM(),
                output.feedback(),
                output.unguarded(),
                facts(output.facts()));
    }

    Interlock interlock(final Interlock interlock) {
        final String name = names.renamed(interlock.name());
        final List<String> outputs = names(interlock.outputs());
        if (interlock instanceof Interlock.Permissive permissive) {
            return new Interlock.Permissive(name, outputs, conditions(permissive.needs()), permissive.begun());
        }
        if (interlock instanceof Interlock.Trip trip) {
            return new Interlock.Trip(name, outputs, conditions(trip.when()), trip.begun());
        }
        if (interlock instanceof Interlock.Exclusion exclusion) {
            return new Interlock.Exclusion(name, outputs, exclusion.clearAfter());
        }
        if (interlock instanceof Interlock.Shed shed) {
            return new Interlock.Shed(name, outputs, conditions(shed.needs()), shed.nextAfter());
        }
        // Everything mirrored is on one controller, which needs no shares.
        if (interlock instanceof Interlock.LoadLimit load) {
            return new Interlock.LoadLimit(name, outputs, load.amps(), Map.of());
        }
        return new Interlock.FlashLimit(name, outputs, ((Interlock.FlashLimit) interlock).flashes(), Map.of());
    }

    Cue cue(final Cue cue) {
        return new Cue(
                names.renamed(cue.name()),
                zone,
                cue.priority(),
                start(cue.start()),
                conditions(cue.provided()),
                cue.againAfterClear(),
                cue.holdOff(),
                cue.steps().stream().map(this::step).toList(),
                cue.code(),
                facts(cue.facts()));
    }

    private Start start(final Start start) {
        if (start instanceof Start.OnInput one) {
            return new Start.OnInput(name(one.input()));
        }
        if (start instanceof Start.InOrder pair) {
            return new Start.InOrder(name(pair.first()), name(pair.second()), pair.within());
        }
        return new Start.AllWithin(names(start.inputs()), ((Start.AllWithin) start).within());
    }

    private Step step(final Step step) {
        if (step instanceof Step.Energise energise) {
            return new Step.Energise(
                    names(energise.outputs()), energise.at(), energise.lasts(), energise.vary(), energise.blink());
        }
        if (step instanceof Step.Await await) {
            return new Step.Await(condition(await.condition()), await.atMost(), await.goesOn());
        }
        if (step instanceof Step.OneOf oneOf) {
            final List<List<Step>> choices = new ArrayList<>();
            oneOf.choices()
                    .forEach(choice ->
                            choices.add(choice.stream().map(this::step).toList()));
            return new Step.OneOf(choices);
        }
        return step;
    }

    private Load load(final Load old) {
        final Feed feed = old.feed();
        return new Load(
                old.amps(),
                old.inrushAmps(),
                old.inrushLasts(),
                new Feed(feed.from().map(this::name), feed.cable(), feed.through(), feed.type()));
    }

    private String name(final String name) {
        return renamed.getOrDefault(name, name);
    }

    private List<String> names(final List<String> old) {
        return old.stream().map(this::name).toList();
    }

    private List<Condition> conditions(final List<Condition> old) {
        return old.stream().map(this::condition).toList();
    }

    private Condition condition(final Condition old) {
        return new Condition(name(old.input()), old.isActive());
    }

    /** A kind's key may name something that is repeated too, such as the heater of a pump. */
    private Facts facts(final Facts old) {
        final Map<String, Object> facts = new LinkedHashMap<>();
        old.byKey().forEach((key, value) -> facts.put(key, value instanceof String text ? name(text) : value));
        return new Facts(facts);
    }

    private Point point(final Point old) {
        final double turned = acrossYM.map(c -> 2 * c - old.yM()).orElse(old.yM());
        return new Point(old.xM() + shift.xM(), turned + shift.yM());
    }

    private Field field(final Field old) {
        final double turned = (FULL_TURN_DEG - old.facingDeg()) % FULL_TURN_DEG;
        return new Field(
                point(old.at()), acrossYM.isPresent() ? turned : old.facingDeg(), old.angleDeg(), old.rangeM());
    }

    private Ray ray(final Ray old) {
        return new Ray(point(old.from()), point(old.to()), old.heightM());
    }
}
