package slackwater.simulator.bench;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import slackwater.controller.app.RigLoader;
import slackwater.model.Rig;
import slackwater.simulator.evening.EveningPlan;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.visitor.CrowdMaker;

/** The example rigs, ready for an evening. */
public final class Examples {
    private Examples() {}

    /** An example's evening with its own drawn crowd. */
    public static EveningPlan evening(final String rig, final long seed, final Duration lasts) {
        final RigLoader.Loaded loaded = load(rig);
        final Rig built = loaded.rig().orElseThrow();
        return evening(rig, seed, lasts, CrowdMaker.draw(built.surroundings().way(), seed, 0, lasts.toNanos()));
    }

    /** An example's evening with a crowd of the test's own. */
    public static EveningPlan evening(final String rig, final long seed, final Duration lasts, final Crowd crowd) {
        final RigLoader.Loaded loaded = load(rig);
        final Rig built = loaded.rig().orElseThrow();
        return new EveningPlan(
                built,
                loaded.show(),
                loaded.codes(),
                seed,
                EveningPlan.startOf(built, loaded.show()),
                lasts,
                crowd,
                Optional.empty(),
                true);
    }

    private static RigLoader.Loaded load(final String rig) {
        return RigLoader.load(Path.of("..", "rigs", rig), Optional.empty());
    }
}
