package slackwater.model.check;

import java.util.List;
import java.util.Optional;
import slackwater.model.Interlock.FlashLimit;
import slackwater.model.Rig;

/** Which flash limits count an output. */
final class FlashLimits {

    private FlashLimits() {}

    static List<FlashLimit> all(final Rig rig) {
        return rig.interlocks().stream()
                .filter(FlashLimit.class::isInstance)
                .map(FlashLimit.class::cast)
                .toList();
    }

    static List<FlashLimit> of(final Rig rig, final String output) {
        return all(rig).stream()
                .filter(limit -> limit.outputs().contains(output))
                .toList();
    }

    /** What a limit leaves to one controller: its share, or all of it where there are no shares. */
    static int most(final FlashLimit limit, final String controller) {
        return Optional.ofNullable(limit.shares().get(controller)).orElse(limit.flashes());
    }
}
