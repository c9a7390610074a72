package slackwater.controller.guard;

import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.RunState;
import slackwater.model.event.Refusal;

/** Asks the output's own driver, so that a candidate that cannot start takes no share from others (S12). */
final class LimitGuard implements Guard {
    private static final String RULE = "own limits";

    private final Places places;
    private final DriverLimits limits;

    LimitGuard(final Places places, final DriverLimits limits) {
        this.places = places;
        this.limits = limits;
    }

    @Override
    public boolean permits(final RunState run, final Image image, final int output) {
        return limits.mayEnergise(run, output, image.energised[output]);
    }

    @Override
    public Refusal refusal(final RunState run, final Image image, final int output) {
        return new Refusal(
                places.outputs().get(output).name(),
                RULE,
                limits.observed(run, output),
                limits.sinceNs(run, output),
                limits.clearsWhen(run, output));
    }
}
