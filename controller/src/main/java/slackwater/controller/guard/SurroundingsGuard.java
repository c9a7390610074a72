package slackwater.controller.guard;

import java.util.Locale;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.RunState;
import slackwater.model.Mode;
import slackwater.model.event.Refusal;

/** The mode table (S15), first of all guards and the same for every output. */
final class SurroundingsGuard implements Guard {
    /** Whom the table asks, and since when the mode has been so. */
    interface Surroundings {
        boolean allows(RunState run, Image image, int output);

        long sinceNs(RunState run, int output);
    }

    private static final String RULE = "mode";

    private final Places places;
    private final Surroundings surroundings;

    SurroundingsGuard(final Places places, final Surroundings surroundings) {
        this.places = places;
        this.surroundings = surroundings;
    }

    @Override
    public boolean permits(final RunState run, final Image image, final int output) {
        return surroundings.allows(run, image, output);
    }

    @Override
    public Refusal refusal(final RunState run, final Image image, final int output) {
        final Mode mode = image.mode[output];
        final String zone = places.outputs().get(output).zone();
        return new Refusal(
                places.outputs().get(output).name(),
                RULE,
                "in zone " + zone + " it has been "
                        + mode.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                surroundings.sinceNs(run, output),
                clearsWhen(mode, zone));
    }

    private static String clearsWhen(final Mode mode, final String zone) {
        return switch (mode) {
            case STOPPED ->
                "the stop is released, a reset button is pressed and let go, and zone " + zone + " is armed";
            case FAULTED -> "the cause is gone, a reset button is pressed and let go, and zone " + zone + " is armed";
            case LOCKED_OUT -> "everybody has taken their lock off, and zone " + zone + " is armed";
            case BENCH -> "zone " + zone + " leaves the bench and is armed";
            case WARNING -> "the warning is over";
            case ARMED -> "zone " + zone + " allows it";
            case RESTING -> "zone " + zone + " is armed";
        };
    }
}
