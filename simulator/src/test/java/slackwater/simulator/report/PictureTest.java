package slackwater.simulator.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** How time becomes pixels: 1000 of them for 1000 s here. */
class PictureTest {
    private static final long S_NS = 1_000_000_000L;
    private static final Axis AXIS = new Axis(0, 1000 * S_NS, 100, 1000);

    private static List<Blocks.Block> blocks(final long gapMs) {
        final LaneRecorder recorder = new LaneRecorder(List.of(Lane.bit("porch", "lid", Lane.Sort.PIN)));
        recorder.bit(0, 0, false);
        recorder.bit(0, 10 * S_NS, true);
        recorder.bit(0, 15 * S_NS, false);
        recorder.bit(0, 15 * S_NS + gapMs * 1_000_000, true);
        recorder.bit(0, 20 * S_NS, false);
        return Blocks.of(recorder.until(1000 * S_NS).track(0), AXIS, 1);
    }

    @Test
    void pulsesCloserThanAPixelAreOneBlockThatCountsThem() {
        assertThat(blocks(999)).containsExactly(new Blocks.Block(110, 120, 2));
    }

    @Test
    void pulsesAPixelApartStayTwoBlocks() {
        assertThat(blocks(1000)).containsExactly(new Blocks.Block(110, 115, 1), new Blocks.Block(116, 120, 1));
    }

    @Test
    void aPulseOfAMillisecondIsStillAPixelWideAndOneThatNeverEndsReachesTheEdge() {
        final LaneRecorder recorder = new LaneRecorder(List.of(Lane.bit("porch", "lid", Lane.Sort.PIN)));
        recorder.bit(0, 10 * S_NS, true);
        recorder.bit(0, 10 * S_NS + 1_000_000, false);
        recorder.bit(0, 990 * S_NS, true);
        assertThat(Blocks.of(recorder.until(1000 * S_NS).track(0), AXIS, 1))
                .containsExactly(new Blocks.Block(110, 111, 1), new Blocks.Block(1090, 1100, 1));
    }

    @Test
    void anAxisTicksAtRoundLocalTimesWhoseLabelsDoNotTouch() {
        final Axis evening = new Axis(0, 4 * SyntheticEvening.H_NS, 0, 1000);
        assertThat(evening.stepNs()).isEqualTo(1800 * S_NS);
        assertThat(evening.firstTickNs(SyntheticEvening.atSeven())).isEqualTo(600 * S_NS);
        assertThat(SyntheticEvening.atSeven().tick(600 * S_NS, evening.stepNs()))
                .isEqualTo("19:00");
        assertThat(StartedAt.UNKNOWN.tick(600 * S_NS, evening.stepNs())).isEqualTo("0:10");
        assertThat(StartedAt.UNKNOWN.tick(605 * S_NS, 5 * S_NS)).isEqualTo("0:10:05");
    }

    @Test
    void aMonthStillHasAFewTicksOnly() {
        final Axis month = new Axis(0, 30 * 24 * SyntheticEvening.H_NS, 0, 1000);
        assertThat(month.stepNs()).isEqualTo(4 * 24 * SyntheticEvening.H_NS);
    }

    @Test
    void theStretchesDrawnFinelyAreThoseAroundViolationsThenTheBusiest() {
        final List<Long> starts = Zooms.of(new Story(SyntheticEvening.bad(), SyntheticEvening.lanes(100)));
        assertThat(starts).hasSize(3).isSorted();
        // The minutes of 3130 s and of 9000 s, two minutes before each.
        assertThat(starts).contains(50 * 60L * S_NS, 148 * 60L * S_NS);
    }

    @Test
    void aShortEveningIsDrawnOnce() {
        final LaneRecorder recorder = new LaneRecorder(List.of(Lane.bit("porch", "lid", Lane.Sort.PIN)));
        recorder.bit(0, 10 * S_NS, true);
        assertThat(Zooms.of(new Story(SyntheticEvening.calm(), recorder.until(599 * S_NS))))
                .isEmpty();
        assertThat(Zooms.of(new Story(SyntheticEvening.calm(), recorder.until(600 * S_NS))))
                .hasSize(1);
    }

    @Test
    void numbersOfAPictureHaveAtMostOneDecimal() {
        assertThat(Svg.px(12)).isEqualTo("12");
        assertThat(Svg.px(12.34)).isEqualTo("12.3");
        assertThat(Svg.px(-0.26)).isEqualTo("-0.3");
        assertThat(Svg.px(-12.04)).isEqualTo("-12");
    }
}
