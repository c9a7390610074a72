package slackwater.simulator.yard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Handbook 5.2 cases 1 to 5 (manual of an HC-SR501 module): delay 5 s; lock 2.5 s where one is named. */
final class PirLogicTest {
    private static final long S = RigWords.S;
    private static final long DELAY_NS = 5 * S;
    private static final long LOCK_NS = 5 * S / 2;

    @Test
    @DisplayName("5.2.1 retriggering, motion at 0, 2 and 4 s")
    void withRetriggeringMotionAt0And2And4SecondsGivesOnePulseOf9Seconds() {
        assertThat(edgesS(new PirLogic(DELAY_NS, 0, true), 0, 2, 4)).containsExactly(0.0, 9.0);
    }

    @Test
    @DisplayName("5.2.2 not retriggering, the same motion")
    void withoutRetriggeringTheSameMotionGivesOnePulseOf5Seconds() {
        assertThat(edgesS(new PirLogic(DELAY_NS, LOCK_NS, false), 0, 2, 4)).containsExactly(0.0, 5.0);
    }

    @Test
    @DisplayName("5.2.3 not retriggering, blind until 7.5 s")
    void withoutRetriggeringTheModuleIsBlindUntil7AndAHalfSeconds() {
        final PirLogic logic = new PirLogic(DELAY_NS, LOCK_NS, false);
        final long highUntilNs = logic.afterDetection(PirLogic.QUIET, 0);

        assertThat(logic.afterDetection(highUntilNs, 7 * S + S / 2 - 1)).isEqualTo(highUntilNs);
        assertThat(logic.afterDetection(highUntilNs, 7 * S + S / 2)).isEqualTo(7 * S + S / 2 + DELAY_NS);
    }

    @Test
    @DisplayName("5.2.4 not retriggering, motion at 0, 6 and 8 s")
    void withoutRetriggeringMotionInsideTheLockIsLostAndLaterMotionIsSeen() {
        assertThat(edgesS(new PirLogic(DELAY_NS, LOCK_NS, false), 0, 6, 8)).containsExactly(0.0, 5.0, 8.0, 13.0);
    }

    @Test
    @DisplayName("5.2.5 retriggering, motion at 0 and 6 s")
    void withRetriggeringMotionInsideTheLockIsLost() {
        assertThat(edgesS(new PirLogic(DELAY_NS, LOCK_NS, true), 0, 6)).containsExactly(0.0, 5.0);
    }

    private static List<Double> edgesS(final PirLogic logic, final int... motionAtS) {
        final List<Double> edges = new ArrayList<>();
        long highUntilNs = PirLogic.QUIET;
        boolean wasHigh = false;
        for (long atNs = 0; atNs < 20 * S; atNs += 10 * RigWords.MS) {
            for (final int motion : motionAtS) {
                if (atNs == motion * S) {
                    highUntilNs = logic.afterDetection(highUntilNs, atNs);
                }
            }
            if (logic.isHigh(highUntilNs, atNs) != wasHigh) {
                wasHigh = !wasHigh;
                edges.add(atNs / 1e9);
            }
        }
        return edges;
    }
}
