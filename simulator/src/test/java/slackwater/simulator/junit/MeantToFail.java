package slackwater.simulator.junit;

import static org.assertj.core.api.Assertions.fail;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import slackwater.controller.command.Request;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.evening.Keeper;

/** Fails on purpose, inside {@link RigBenchTest}; by its name no build runs it by itself. */
class MeantToFail {
    private static final String MESSAGE = "as this test is meant to";
    private static final String BROKEN = "src/test/resources/slackwater/simulator/junit/broken";
    private static final int REQUESTS = 100;

    @Test
    @RigBench(folder = "rigs/first", show = "first", seed = 7)
    void failsAfterAGreeting(final VirtualBench bench, final Keeper keeper) {
        final Duration armed = keeper.open(bench);
        bench.advance(armed.plusSeconds(10)).set("path", true).advance(Duration.ofMillis(50));
        fail(MESSAGE);
    }

    @Test
    @RigBench(folder = "rigs/first")
    void failsAfterAHundredRequests(final VirtualBench bench) {
        for (int i = 0; i < REQUESTS; i++) {
            final Request.Seen outdated = new Request.Seen(0, 0);
            bench.commands("porch").ask(new Request(Request.Wants.ARM, "yard", "somebody", "", outdated));
            bench.advance(Duration.ofSeconds(1));
        }
        fail(MESSAGE);
    }

    @Test
    @RigBench(folder = BROKEN)
    void hasABrokenRig(final VirtualBench bench) {
        fail("there is no bench of a broken rig, but here is one at " + bench.nowNs());
    }
}
