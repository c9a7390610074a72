package slackwater.simulator.yard;

import slackwater.model.Rig;

/** Hands out places in the two arrays of a {@link State} while a yard is being built. */
final class Slots {
    private final int controllers;
    private final int outputs;
    private final int inputs;
    private int wholes;
    private int reals;

    Slots(final Rig rig) {
        controllers = rig.controllers().size();
        outputs = rig.outputs().size();
        inputs = rig.inputs().size();
        wholes = State.fixedWholes(controllers, outputs, inputs);
    }

    /** So many places for whole numbers, first 0; returns the first of them. */
    int takeWholes(final int count) {
        final int first = wholes;
        wholes += count;
        return first;
    }

    /** So many places for real numbers, first 0; returns the first of them. */
    int takeReals(final int count) {
        final int first = reals;
        reals += count;
        return first;
    }

    State newState() {
        return new State(controllers, outputs, inputs, new long[wholes], new double[reals]);
    }
}
