package slackwater.simulator.referee;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import slackwater.model.Condition;
import slackwater.model.Controller;
import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.Zone;

/**
 * The rig by numbers, read once. An input wired to several controllers is sensed once on each of them: a sense is one
 * input on one controller's pin.
 */
final class Wiring {
    /** One input on one controller's pin. */
    record Sense(int index, int inputIndex, Input input, int controller) {}

    private final List<Controller> controllers;
    private final List<Zone> zones;
    private final List<Output> outputs;
    private final List<Sense> senses;
    private final long periodNs;
    private final long warningNs;

    Wiring(final Rig rig) {
        controllers = rig.controllers();
        zones = rig.zones();
        outputs = rig.outputs();
        periodNs = rig.scan().toNanos();
        warningNs = rig.arming().warning().toNanos();
        senses = sensesOf(rig);
    }

    private static List<Sense> sensesOf(final Rig rig) {
        final List<String> names =
                rig.controllers().stream().map(Controller::name).toList();
        final List<Sense> found = new ArrayList<>();
        for (int index = 0; index < rig.inputs().size(); index++) {
            final Input input = rig.inputs().get(index);
            for (final String controller : input.controllers()) {
                found.add(new Sense(found.size(), index, input, indexIn(names, controller)));
            }
        }
        return List.copyOf(found);
    }

    private static int indexIn(final List<String> names, final String wanted) {
        final int index = names.indexOf(wanted);
        if (index < 0) {
            throw new IllegalArgumentException("\"" + wanted + "\" is none of " + names);
        }
        return index;
    }

    long periodNs() {
        return periodNs;
    }

    long warningNs() {
        return warningNs;
    }

    List<Output> outputs() {
        return outputs;
    }

    Output output(final int index) {
        return outputs.get(index);
    }

    String outputName(final int index) {
        return outputs.get(index).name();
    }

    int controllers() {
        return controllers.size();
    }

    String controllerName(final int index) {
        return controllers.get(index).name();
    }

    int zones() {
        return zones.size();
    }

    List<Sense> senses() {
        return senses;
    }

    int outputIndex(final String name) {
        return indexIn(outputs.stream().map(Output::name).toList(), name);
    }

    int zoneIndex(final String name) {
        return indexIn(zones.stream().map(Zone::name).toList(), name);
    }

    boolean hasZone(final String name) {
        return zones.stream().anyMatch(zone -> zone.name().equals(name));
    }

    int controllerOf(final int output) {
        return indexIn(
                controllers.stream().map(Controller::name).toList(),
                outputs.get(output).controller());
    }

    int zoneOf(final int output) {
        return zoneIndex(outputs.get(output).zone());
    }

    int[] indicesOf(final List<String> names) {
        return names.stream().mapToInt(this::outputIndex).toArray();
    }

    /** Where a controller senses a condition's input: at its own pin, or at the input's first where it has none. */
    int senseOf(final Condition condition, final int controller) {
        int first = -1;
        for (final Sense sense : senses) {
            if (sense.input().name().equals(condition.input())) {
                if (sense.controller() == controller) {
                    return sense.index();
                }
                first = first < 0 ? sense.index() : first;
            }
        }
        if (first < 0) {
            throw new IllegalArgumentException("no input \"" + condition.input() + "\" in the rig");
        }
        return first;
    }

    static long ns(final Duration duration) {
        return duration.toNanos();
    }
}
