package slackwater.simulator.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slackwater.model.Contact;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.yard.RigWords.Part;

/** Pins, supplies, hands and faults. Inputs of the test rig are active low with a pull-up. */
final class YardLinesTest {
    private static final long S = RigWords.S;
    private static final long MS = RigWords.MS;
    private static final int LAMP = 0;
    private static final int LIT_AT_REST = 1;
    private static final int FAR_LAMP = 2;
    private static final int BUTTON = 0;
    private static final int LOOP = 1;

    private final Yard yard = new Yard(
            new RigWords()
                    .controller("porch", true)
                    .output(Family.LAMP, "lamp")
                    .output(Part.of(Family.LAMP, "lit-at-rest").with(Contact.NORMALLY_CLOSED))
                    .input(InputFamily.BUTTON, "reset")
                    .input(InputFamily.STOP_LOOP, "loop")
                    .controller("shed", false)
                    .output(Family.LAMP, "far-lamp")
                    .rig(),
            Crowd.NOBODY,
            1);

    @Test
    void aLoadHasPowerOnlyWithItsPinEnergisedItsHoldUpPulledInAndTheStopLoopClosed() {
        yard.setOutputHigh(LAMP, true);
        assertThat(yard.isPowered(LAMP)).isFalse();
        assertThat(yard.isSupplied(0)).isFalse();

        yard.setHoldUp(0, true);
        assertThat(yard.isPowered(LAMP)).isTrue();
        yard.pressStopLoop(true);
        assertThat(yard.isPowered(LAMP)).isFalse();
        yard.pressStopLoop(false);
        assertThat(yard.isPowered(LAMP)).isTrue();
        yard.setOutputHigh(LAMP, false);
        assertThat(yard.isPowered(LAMP)).isFalse();
    }

    @Test
    void aControllerWithoutAHoldUpIsSuppliedByTheStopLoopAlone() {
        yard.setOutputHigh(FAR_LAMP, true);
        assertThat(yard.isPowered(FAR_LAMP)).isTrue();

        yard.pressStopLoop(true);
        assertThat(yard.isPowered(FAR_LAMP)).isFalse();
        assertThat(yard.isSupplied(1)).isFalse();
    }

    @Test
    void aLoadOnANormallyClosedContactIsOnAtRestAndWithoutAnySupply() {
        yard.pressStopLoop(true);
        assertThat(yard.isPowered(LIT_AT_REST)).isTrue();

        yard.pressStopLoop(false);
        yard.setHoldUp(0, true);
        yard.setOutputHigh(LIT_AT_REST, true);
        assertThat(yard.isPowered(LIT_AT_REST)).isFalse();
    }

    @Test
    void aWeldedContactKeepsItsLoadOnUntilTheSupplyIsCut() {
        yard.setHoldUp(0, true);
        yard.overlayOutput(LAMP, Optional.of(OutputOverlay.WELDED));

        assertThat(yard.isOutputHigh(LAMP)).isFalse();
        assertThat(yard.isPowered(LAMP)).isTrue();
        yard.setHoldUp(0, false);
        assertThat(yard.isPowered(LAMP)).isFalse();
    }

    @Test
    void aLoadFedFromElsewhereIsOnWhateverIsCutAndADeadOneIsNever() {
        yard.overlayOutput(LAMP, Optional.of(OutputOverlay.FED_ELSEWHERE));
        yard.pressStopLoop(true);
        assertThat(yard.isPowered(LAMP)).isTrue();

        yard.pressStopLoop(false);
        yard.setHoldUp(0, true);
        yard.setOutputHigh(LAMP, true);
        yard.overlayOutput(LAMP, Optional.of(OutputOverlay.DEAD));
        assertThat(yard.isPowered(LAMP)).isFalse();
        yard.overlayOutput(LAMP, Optional.empty());
        assertThat(yard.isPowered(LAMP)).isTrue();
    }

    @Test
    void aButtonIsActiveWhileAHandIsOnIt() {
        assertThat(yard.isInputHigh(BUTTON, 0)).isTrue();
        yard.hold(BUTTON, true);
        assertThat(yard.isInputHigh(BUTTON, 0)).isFalse();
        yard.leaveAlone(BUTTON);
        assertThat(yard.isInputHigh(BUTTON, 0)).isTrue();
    }

    @Test
    void theStopLoopIsActiveWhileItIsClosedForEveryControllerAtOnce() {
        assertThat(yard.isInputHigh(LOOP, 0)).isFalse();
        yard.pressStopLoop(true);
        assertThat(yard.isInputHigh(LOOP, 0)).isTrue();
        assertThat(yard.isInputHigh(LOOP, 1)).isTrue();
    }

    @Test
    void aFaultOnALineHidesWhatIsTrueAndLeavesItTrue() {
        yard.hold(BUTTON, true);
        yard.overlayInput(BUTTON, Optional.of(new InputOverlay.StuckHigh()));
        assertThat(yard.isInputHigh(BUTTON, 0)).isTrue();
        assertThat(yard.isActive(BUTTON)).isTrue();
        yard.overlayInput(BUTTON, Optional.of(new InputOverlay.Open()));
        assertThat(yard.isInputHigh(BUTTON, 0)).isTrue();
        yard.overlayInput(BUTTON, Optional.empty());
        assertThat(yard.isInputHigh(BUTTON, 0)).isFalse();

        yard.leaveAlone(BUTTON);
        yard.overlayInput(BUTTON, Optional.of(new InputOverlay.StuckLow()));
        assertThat(yard.isInputHigh(BUTTON, 0)).isFalse();
    }

    @Test
    void aChatteringLineChangesEveryHalfPeriodAndWakesTheYardForIt() {
        yard.overlayInput(BUTTON, Optional.of(new InputOverlay.Chatter(60 * MS)));
        yard.step(S);
        int changes = 0;
        boolean was = yard.isInputHigh(BUTTON, 0);
        while (yard.wakeNs() < 4 * S) {
            yard.step(yard.wakeNs());
            changes += yard.isInputHigh(BUTTON, 0) == was ? 0 : 1;
            was = yard.isInputHigh(BUTTON, 0);
        }

        // Three seconds of halves of 30 ms.
        assertThat(changes).isEqualTo(100);
    }

    @Test
    void aChatterNeedsAPeriod() {
        assertThatThrownBy(() -> new InputOverlay.Chatter(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("periodNs=0");
    }

    @Test
    void timeDoesNotRunBack() {
        yard.step(S);

        assertThatThrownBy(() -> yard.step(S - 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("999999999");
    }
}
