package slackwater.simulator.benchmark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.function.LongConsumer;
import org.junit.jupiter.api.Test;
import slackwater.model.Output;

/** The comparison of the benchmarks is fair only if both loops do the same work. */
class HandWrittenLoopTest {
    private static final Path RIG = Path.of("..", "rigs", "sea-cave");
    private static final int PASSAGES = 27;

    @Test
    void bothLoopsAnswerTheSameVisitorsWithTheSameStrokes() {
        final NorthBank real = new NorthBank(RIG);
        final NorthBank byHand = new NorthBank(RIG);
        final HandWrittenLoop loop = new HandWrittenLoop(byHand.pins());
        loop.arm();
        final List<Output> outputs = real.scan().plan().places().outputs();

        final Tally expected = new Tally(outputs.size());
        expected.watch(real, now -> real.scan().once(now, slackwater.controller.mode.Wall.UNKNOWN));
        final Tally found = new Tally(outputs.size());
        found.watch(byHand, loop::scan);

        for (int out = 0; out < outputs.size(); out++) {
            final String name = outputs.get(out).name();
            if (!name.equals("north-harbour-lamp") && !name.equals("north-surf-fan")) {
                assertThat(found.starts[out]).as("starts of %s", name).isEqualTo(expected.starts[out]);
            }
            assertThat((double) found.scansOn[out])
                    .as("scans on of %s", name)
                    .isCloseTo(expected.scansOn[out], within(0.1 * expected.scansOn[out] + 1));
        }
        assertThat(expected.starts[expected.starts.length - 1])
                .as("the gull falls once")
                .isOne();
        assertThat(expected.starts[1]).as("strokes of the lid").isEqualTo(PASSAGES);
    }

    private static final class Tally {
        private final int[] starts;
        private final int[] scansOn;

        Tally(final int outputs) {
            starts = new int[outputs];
            scansOn = new int[outputs];
        }

        void watch(final NorthBank bank, final LongConsumer scan) {
            final boolean[] wasOn = new boolean[starts.length];
            for (int at = 0; at < PASSAGES * NorthBank.SCANS_OF_A_PASSAGE; at++) {
                bank.passBy(at % NorthBank.SCANS_OF_A_PASSAGE);
                scan.accept(bank.tick());
                for (int out = 0; out < starts.length; out++) {
                    final boolean isOn =
                            bank.pins().isOutputHigh(out); // all of the north bank's drivers are active high
                    starts[out] += isOn && !wasOn[out] ? 1 : 0;
                    scansOn[out] += isOn ? 1 : 0;
                    wasOn[out] = isOn;
                }
            }
        }
    }
}
