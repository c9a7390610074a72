package slackwater.controller.image;

import java.util.ArrayList;
import java.util.List;
import slackwater.model.Condition;
import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.Zone;

/**
 * One controller's part of a rig, with every name as a position in the image.
 *
 * @param controller the controller's name
 * @param inputs what it senses, in the order of the rig
 * @param outputs what it energises, in the order of the rig
 * @param zones the zones that it has something in, in the order of the rig
 */
public record Places(String controller, List<Input> inputs, List<Output> outputs, List<Zone> zones) {

    public Places {
        inputs = List.copyOf(inputs);
        outputs = List.copyOf(outputs);
        zones = List.copyOf(zones);
    }

    public static Places of(final Rig rig, final String controller) {
        final List<Input> inputs = rig.inputsOf(controller);
        final List<Output> outputs = rig.outputsOf(controller);
        final List<Zone> zones = rig.zones().stream()
                .filter(zone -> inputs.stream().anyMatch(in -> in.zone().equals(java.util.Optional.of(zone.name())))
                        || outputs.stream().anyMatch(out -> out.zone().equals(zone.name())))
                .toList();
        return new Places(controller, inputs, outputs, zones);
    }

    public Image newImage() {
        return new Image(inputs.size(), outputs.size(), zones.size());
    }

    /** The position of an input; asking for one that is not wired here is a programmer's mistake. */
    public int input(final String name) {
        for (int i = 0; i < inputs.size(); i++) {
            if (inputs.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("input=" + name + " is not on controller=" + controller);
    }

    /** The position of an output; asking for one that is not wired here is a programmer's mistake. */
    public int output(final String name) {
        for (int i = 0; i < outputs.size(); i++) {
            if (outputs.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("output=" + name + " is not on controller=" + controller);
    }

    public boolean hasOutput(final String name) {
        return outputs.stream().anyMatch(output -> output.name().equals(name));
    }

    /** The position of a zone; asking for one that has nothing here is a programmer's mistake. */
    public int zone(final String name) {
        for (int i = 0; i < zones.size(); i++) {
            if (zones.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("zone=" + name + " is not on controller=" + controller);
    }

    /** The zone's position of each output. */
    public int[] zoneOfOutput() {
        return outputs.stream().mapToInt(output -> zone(output.zone())).toArray();
    }

    /** Positions of those named outputs that are on this controller, in the order given. */
    public int[] outputsHere(final List<String> names) {
        return names.stream().filter(this::hasOutput).mapToInt(this::output).toArray();
    }

    /** Conditions as positions. */
    public Conditions conditions(final List<Condition> conditions) {
        final List<Integer> at = new ArrayList<>();
        conditions.forEach(condition -> at.add(input(condition.input())));
        final boolean[] isActive = new boolean[conditions.size()];
        for (int i = 0; i < isActive.length; i++) {
            isActive[i] = conditions.get(i).isActive();
        }
        return new Conditions(at.stream().mapToInt(Integer::intValue).toArray(), isActive);
    }
}
