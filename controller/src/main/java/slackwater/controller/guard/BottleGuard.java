package slackwater.controller.guard;

import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.RunState;
import slackwater.model.event.Refusal;

/** Refuses a pump or a mister before it runs dry. */
final class BottleGuard implements Guard {
    private static final String RULE = "runs-dry";

    private final Places places;
    private final Bottles bottles;

    BottleGuard(final Places places, final Bottles bottles) {
        this.places = places;
        this.bottles = bottles;
    }

    @Override
    public boolean permits(final RunState run, final Image image, final int output) {
        return bottles.hasEnough(run, output, image.energised[output]);
    }

    @Override
    public Refusal refusal(final RunState run, final Image image, final int output) {
        return new Refusal(
                places.outputs().get(output).name(),
                RULE,
                bottles.observed(run, output),
                bottles.sinceNs(run, output),
                bottles.clearsWhen(output));
    }
}
