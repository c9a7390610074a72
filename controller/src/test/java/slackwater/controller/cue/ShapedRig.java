package slackwater.controller.cue;

import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.kind.OutputKind;

/** A rig whose outputs are all of a kind from outside. */
final class ShapedRig {
    private ShapedRig() {}

    static Rig with(final Rig rig, final OutputKind kind) {
        return new Rig(
                rig.name(),
                rig.scan(),
                rig.place(),
                rig.controllers(),
                rig.zones(),
                rig.inputs(),
                rig.outputs().stream().map(output -> with(output, kind)).toList(),
                rig.interlocks(),
                rig.arming(),
                rig.people(),
                rig.surroundings());
    }

    private static Output with(final Output output, final OutputKind kind) {
        return new Output(
                output.name(),
                kind,
                output.zone(),
                output.controller(),
                output.pin(),
                output.energisedLevel(),
                output.contact(),
                output.rest(),
                output.limits(),
                output.load(),
                output.at(),
                output.reachM(),
                output.feedback(),
                output.unguarded(),
                output.facts());
    }
}
