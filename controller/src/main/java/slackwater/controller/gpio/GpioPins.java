package slackwater.controller.gpio;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slackwater.controller.gpio.Lines.In;
import slackwater.controller.gpio.Lines.Out;
import slackwater.controller.gpio.Lines.Wire;
import slackwater.controller.pins.Pins;
import slackwater.model.Controller;
import slackwater.model.HoldUp;
import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.model.Pull;
import slackwater.model.Rig;

/**
 * One controller's pins on real lines. Every output is claimed at its rest level before any input is; a line that is refused
 * puts those already claimed to rest and gives them back, so that nothing is ever half there.
 */
public final class GpioPins implements Pins {
    private final Lines lines;
    private final Out[] outputs;
    private final boolean[] restIsHigh;
    private final boolean[] isPadRead;
    private final In[] inputs;
    private final boolean[] level;
    private final boolean[] edge;
    private final Optional<Out> holdUp;
    private final Optional<In> holdUpSeen;
    private boolean isHoldUpSeen;

    private GpioPins(final Lines lines, final List<Output> rigOutputs, final Claimed claimed) {
        this.lines = lines;
        outputs = claimed.outputs.toArray(Out[]::new);
        inputs = claimed.inputs.toArray(In[]::new);
        level = new boolean[inputs.length];
        edge = new boolean[inputs.length];
        restIsHigh = new boolean[outputs.length];
        isPadRead = new boolean[outputs.length];
        for (int output = 0; output < outputs.length; output++) {
            restIsHigh[output] = rigOutputs.get(output).restLevel().isHigh();
            isPadRead[output] = rigOutputs.get(output).feedback() == Output.Feedback.PAD;
        }
        holdUp = claimed.holdUp;
        holdUpSeen = claimed.holdUpSeen;
        for (int input = 0; input < inputs.length; input++) {
            inputs[input].takeEdges();
            level[input] = inputs[input].isHigh();
        }
    }

    private static final class Claimed {
        private final List<Out> outputs = new ArrayList<>();
        private final List<In> inputs = new ArrayList<>();
        private Optional<Out> holdUp = Optional.empty();
        private Optional<In> holdUpSeen = Optional.empty();
    }

    /**
     * Claims every line of a controller; afterwards every output is at rest.
     *
     * @throws LineRefusedException when one is refused; those already claimed are at rest and given back
     */
    public static GpioPins claim(final Rig rig, final Controller controller, final Lines lines) {
        final List<Output> outputs = rig.outputsOf(controller.name());
        final Claimed claimed = new Claimed();
        try {
            for (final Output output : outputs) {
                claimed.outputs.add(lines.claimOutput(
                        new Wire(output.name(), output.pin()),
                        output.restLevel().isHigh()));
            }
            claimHoldUp(controller, lines, claimed);
            for (final Input input : rig.inputsOf(controller.name())) {
                claimed.inputs.add(
                        lines.claimInput(new Wire(input.name(), input.pinOn(controller.name())), input.pull()));
            }
            return new GpioPins(lines, outputs, claimed);
        } catch (final RuntimeException refused) {
            rest(outputs, claimed.outputs);
            lines.release();
            throw refused;
        }
    }

    private static void claimHoldUp(final Controller controller, final Lines lines, final Claimed claimed) {
        if (controller.holdUp().isEmpty()) {
            return;
        }
        final HoldUp relay = controller.holdUp().get();
        claimed.holdUp = Optional.of(lines.claimOutput(new Wire("hold-up", relay.pin()), false));
        final OptionalInt seen = relay.seenPin();
        if (seen.isPresent()) {
            claimed.holdUpSeen = Optional.of(lines.claimInput(new Wire("hold-up-seen", seen), Pull.DOWN));
        }
    }

    private static void rest(final List<Output> outputs, final List<Out> claimed) {
        for (int output = 0; output < claimed.size(); output++) {
            try {
                claimed.get(output).write(outputs.get(output).restLevel().isHigh());
            } catch (final RuntimeException dead) {
                // it was claimed at rest; the next one may still be written
            }
        }
    }

    /** Gives the lines back; rest them first. */
    public void release() {
        lines.release();
    }

    @Override
    public void sample() {
        for (int input = 0; input < inputs.length; input++) {
            final boolean hadEdges = inputs[input].takeEdges();
            final boolean now = inputs[input].isHigh();
            // a level that is back where it was has been away; one that stays changed is no extra edge
            edge[input] = hadEdges && now == level[input];
            level[input] = now;
        }
        isHoldUpSeen = holdUpSeen.isPresent() && holdUpSeen.get().isHigh();
    }

    @Override
    public boolean isHigh(final int input) {
        return level[input];
    }

    @Override
    public boolean hadEdge(final int input) {
        return edge[input];
    }

    @Override
    public void write(final int output, final boolean isHigh) {
        outputs[output].write(isHigh);
    }

    /** Only where the rig says that the pad tells something: the level there is read, never the last write (S10). */
    @Override
    public ReadBack readBack(final int output) {
        if (!isPadRead[output]) {
            return ReadBack.UNKNOWN;
        }
        return outputs[output].isPadHigh() == restIsHigh[output] ? ReadBack.AT_REST : ReadBack.ENERGISED;
    }

    @Override
    public void writeHoldUp(final boolean isHigh) {
        if (holdUp.isPresent()) {
            holdUp.get().write(isHigh);
        }
    }

    @Override
    public boolean isHoldUpSeenClosed() {
        return isHoldUpSeen;
    }
}
