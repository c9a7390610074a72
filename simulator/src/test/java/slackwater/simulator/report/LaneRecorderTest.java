package slackwater.simulator.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class LaneRecorderTest {
    private final LaneRecorder recorder = new LaneRecorder(List.of(
            Lane.bit("porch", "lid", Lane.Sort.PIN),
            Lane.words("porch", "yard", Lane.Sort.MODE, List.of("armed", "resting")),
            Lane.gauge("porch", "pressure", "bar")));

    @Test
    void aValueThatRepeatsIsKeptOnce() {
        recorder.bit(0, 0, false);
        recorder.bit(0, 10, false);
        recorder.bit(0, 20, true);
        recorder.bit(0, 30, true);
        recorder.number(2, 30, 0.0);
        recorder.number(2, 40, -0.0);
        final Lanes.Track lid = recorder.until(50).track(0);
        assertThat(lid.size()).isEqualTo(2);
        assertThat(lid.untilNs(0)).isEqualTo(20);
        assertThat(lid.untilNs(1)).isEqualTo(50);
        assertThat(recorder.until(50).track(2).size()).isEqualTo(1);
    }

    @Test
    void moreChangesThanTheFirstRoomAreAllKept() {
        for (int change = 0; change < 5000; change++) {
            recorder.bit(0, change, change % 2 == 1);
        }
        final Lanes lanes = recorder.until(5000);
        assertThat(lanes.size()).isEqualTo(5000);
        assertThat(lanes.atNs(4999)).isEqualTo(4999);
        assertThat(lanes.value(4999)).isEqualTo(1);
    }

    @Test
    void whatWasTakenDoesNotChangeWithWhatComesLater() {
        recorder.bit(0, 0, false);
        final Lanes early = recorder.until(10);
        recorder.bit(0, 20, true);
        assertThat(early.size()).isEqualTo(1);
    }

    @Test
    void timeThatRunsBackAWordThatIsNoneAndAValueOfAnotherSortAreMistakesOfTheCaller() {
        recorder.bit(0, 10, true);
        assertThatThrownBy(() -> recorder.bit(0, 9, false)).hasMessage("change at 9 ns after one at 10 ns");
        assertThatThrownBy(() -> recorder.word(1, 10, 2)).hasMessageStartingWith("word 2 of Lane");
        assertThatThrownBy(() -> recorder.bit(2, 10, true)).hasMessageStartingWith("a BIT for Lane");
        assertThatThrownBy(() -> recorder.number(2, 10, Double.NaN)).hasMessageStartingWith("number NaN of Lane");
        assertThatThrownBy(() -> recorder.until(9)).hasMessage("endNs=9 < last change 10");
    }

    @Test
    void sevenModesNeedThreeBitsAndNineNeedFour() {
        assertThat(words(1).bits()).isEqualTo(1);
        assertThat(words(7).bits()).isEqualTo(3);
        assertThat(words(8).bits()).isEqualTo(3);
        assertThat(words(9).bits()).isEqualTo(4);
    }

    private static Lane words(final int count) {
        return Lane.words("yard", "mode", Lane.Sort.MODE, Collections.nCopies(count, "w"));
    }
}
