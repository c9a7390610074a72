package slackwater.controller.ledger;

import java.util.Optional;
import java.util.stream.IntStream;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.model.Input;

/** A refill counts on the proven press of a button that was seen open since boot: a stuck one fills nothing. */
final class RefillButtons {
    private final Places places;
    private final int[] inputs;
    private final Flag[] wasSeenOpen;

    RefillButtons(final Places places, final Layout layout) {
        this.places = places;
        inputs = IntStream.range(0, places.inputs().size())
                .filter(input -> places.inputs().get(input).use() == Input.Use.REFILL)
                .toArray();
        wasSeenOpen = IntStream.of(inputs)
                .mapToObj(input ->
                        layout.flag("refill." + places.inputs().get(input).name() + ".seen-open"))
                .toArray(Flag[]::new);
    }

    int count() {
        return inputs.length;
    }

    String name(final int button) {
        return places.inputs().get(inputs[button]).name();
    }

    /** Whether it was pressed in this scan; to be asked once a scan. */
    boolean isPressed(final RunState run, final Image image, final int button) {
        final int input = inputs[button];
        final boolean isPressed = image.rose[input] && wasSeenOpen[button].is(run);
        if (image.provenInactive[input]) {
            wasSeenOpen[button].set(run, true);
        }
        return isPressed;
    }

    /** Whether it refills this output: the one that it names, or everything of its zone. */
    boolean refills(final int button, final int output) {
        final Input input = places.inputs().get(inputs[button]);
        final String name = places.outputs().get(output).name();
        return input.facts()
                .text("of")
                .map(name::equals)
                .orElseGet(() -> input.zone()
                        .equals(Optional.of(places.outputs().get(output).zone())));
    }

    /** The first button that refills an output; empty where there is none. */
    Optional<String> of(final int output) {
        return IntStream.range(0, inputs.length)
                .filter(button -> refills(button, output))
                .mapToObj(this::name)
                .findFirst();
    }
}
