package slackwater.simulator.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import slackwater.simulator.bench.Examples;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.evening.EveningRun;

/** No air comes from nowhere and none goes there: what was in the yard and was delivered is in it, vented or leaked. */
class AirBalanceTest {
    private static final Duration EVENING = Duration.ofHours(4);

    /** Asked for is 0.1 %; rounding is all that is left. */
    @Test
    void overAnEveningOfTheSeaCaveTheAirIsAllAccountedFor() {
        final VirtualBench bench = new EveningRun(Examples.evening("sea-cave", 5, EVENING)).bench();
        final AirBalance before = bench.yard().airBalance();
        for (int quarter = 1; quarter <= 16; quarter++) {
            bench.runTo(EVENING.toNanos() / 16 * quarter);
            final AirBalance now = bench.yard().airBalance();
            assertThat(now.wholeM3()).isCloseTo(before.wholeM3(), within(1e-9 * before.wholeM3()));
        }
        final AirBalance after = bench.yard().airBalance();
        assertThat(after.ventedM3()).as("something was used").isGreaterThan(0.05);
        assertThat(after.deliveredM3()).as("something was delivered").isGreaterThan(0);
        assertThat(bench.yard().compressorStarts()).isPositive();
    }
}
