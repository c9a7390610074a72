package slackwater.model.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slackwater.model.Condition;
import slackwater.model.Cue;
import slackwater.model.Input;
import slackwater.model.Interlock;
import slackwater.model.Output;
import slackwater.model.Step;
import slackwater.model.finding.Findings.Words;

/**
 * Repeats the tables of a zone. An interlock or a cue of which everything it energises was left out is left out with it; one
 * of which a part was left out is a finding, because half of it would be something that nobody wrote.
 */
final class Mirroring {
    private final Context context;
    private final Mirror mirror;

    Mirroring(final Context context, final Mirror mirror) {
        this.context = context;
        this.mirror = mirror;
    }

    List<Input> inputs(final List<Input> all) {
        final List<Input> made = new ArrayList<>();
        for (final Input input : all) {
            if (input.zone().equals(Optional.of(mirror.names().of())) && isRepeated("input", input.name())) {
                made.add(mirror.input(input));
            }
        }
        return made;
    }

    List<Output> outputs(final List<Output> all) {
        final List<Output> made = new ArrayList<>();
        for (final Output output : all) {
            if (output.zone().equals(mirror.names().of()) && isRepeated("output", output.name())) {
                made.add(mirror.output(output));
            }
        }
        return made;
    }

    /** Interlocks all of whose outputs are in the zone; one that reaches beyond it belongs to the whole rig. */
    List<Interlock> interlocks(final String group, final List<Interlock> all, final List<Output> outputs) {
        final List<String> inZone = outputs.stream()
                .filter(output -> output.zone().equals(mirror.names().of()))
                .map(Output::name)
                .toList();
        final List<Interlock> made = new ArrayList<>();
        for (final Interlock interlock : all) {
            final boolean isOfZone = !interlock.outputs().isEmpty() && inZone.containsAll(interlock.outputs());
            final String table = group + "." + interlock.name();
            if (isOfZone
                    && isWhole(table, interlock.name(), interlock.outputs(), inputs(interlock))
                    && isRepeated(group, interlock.name())) {
                made.add(mirror.interlock(interlock));
            }
        }
        return made;
    }

    List<Cue> cues(final List<Cue> all) {
        final List<Cue> made = new ArrayList<>();
        for (final Cue cue : all) {
            if (cue.zone().equals(mirror.names().of())
                    && isWhole("cue." + cue.name(), cue.name(), energised(cue.steps()), inputs(cue))
                    && isRepeated("cue", cue.name())) {
                made.add(mirror.cue(cue));
            }
        }
        return made;
    }

    private boolean isRepeated(final String group, final String name) {
        if (mirror.names().without().contains(name)) {
            return false;
        }
        final String table = group + "." + name;
        if (!mirror.names().hasPrefix(name)) {
            final String prefix = mirror.names().of() + "-";
            context.error(
                    "mirror-prefix",
                    context.places().table(table),
                    new Words(
                            "\"" + name + "\" is in a zone that is mirrored, but does not begin with \"" + prefix
                                    + "\"",
                            "its copy would have no name of its own",
                            "call it \"" + prefix + name + "\", or name it in mirror." + mirror.zone()
                                    + "'s \"without\""));
            return false;
        }
        context.places().addMirrored(group + "." + mirror.names().renamed(name), table);
        return true;
    }

    private boolean isWhole(
            final String table, final String name, final List<String> outputs, final List<String> inputs) {
        final List<String> without = mirror.names().without();
        final boolean isEmptied = !outputs.isEmpty() && without.containsAll(outputs);
        if (without.contains(name) || isEmptied) {
            return false;
        }
        final Optional<String> missing = Stream.concat(outputs.stream(), inputs.stream())
                .filter(without::contains)
                .findFirst();
        missing.ifPresent(left -> context.error(
                "mirror-torn",
                context.places().table(table),
                new Words(
                        "mirror." + mirror.zone() + " repeats \"" + name + "\", but leaves out \"" + left + "\"",
                        "half of it would be something that nobody wrote",
                        "name \"" + name + "\" in mirror." + mirror.zone() + "'s \"without\" too")));
        return missing.isEmpty();
    }

    private static List<String> inputs(final Interlock interlock) {
        if (interlock instanceof Interlock.Permissive permissive) {
            return permissive.needs().stream().map(Condition::input).toList();
        }
        if (interlock instanceof Interlock.Trip trip) {
            return trip.when().stream().map(Condition::input).toList();
        }
        if (interlock instanceof Interlock.Shed shed) {
            return shed.needs().stream().map(Condition::input).toList();
        }
        return List.of();
    }

    private static List<String> inputs(final Cue cue) {
        final List<String> inputs = new ArrayList<>(cue.start().inputs());
        cue.provided().forEach(condition -> inputs.add(condition.input()));
        for (final Step step : cue.steps()) {
            if (step instanceof Step.Await await) {
                inputs.add(await.condition().input());
            }
        }
        return inputs;
    }

    private static List<String> energised(final List<Step> steps) {
        final List<String> outputs = new ArrayList<>();
        for (final Step step : steps) {
            if (step instanceof Step.Energise energise) {
                outputs.addAll(energise.outputs());
            } else if (step instanceof Step.OneOf oneOf) {
                oneOf.choices().forEach(choice -> outputs.addAll(energised(choice)));
            }
        }
        return outputs;
    }
}
