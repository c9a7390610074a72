package slackwater.controller.guard;

import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.RunState;
import slackwater.model.event.Refusal;

/** A latched trip refuses its outputs until a reset with the cause gone, and a later arm (S11). */
final class TripGuard implements Guard {
    /** Which trip refuses, and why. */
    interface Latched {
        /** The trip that refuses the output, or -1. */
        int refusing(RunState run, int output, boolean isEnergised);

        String name(int trip);

        String cause(int trip);

        long sinceNs(RunState run, int trip);
    }

    private final Places places;
    private final Latched latched;

    TripGuard(final Places places, final Latched latched) {
        this.places = places;
        this.latched = latched;
    }

    @Override
    public boolean permits(final RunState run, final Image image, final int output) {
        return latched.refusing(run, output, image.energised[output]) < 0;
    }

    @Override
    public Refusal refusal(final RunState run, final Image image, final int output) {
        final int trip = latched.refusing(run, output, image.energised[output]);
        return new Refusal(
                places.outputs().get(output).name(),
                latched.name(trip),
                "it has been tripped by " + latched.cause(trip),
                latched.sinceNs(run, trip),
                "the cause is gone, a reset button is pressed and let go, and zone "
                        + places.outputs().get(output).zone() + " is armed");
    }
}
