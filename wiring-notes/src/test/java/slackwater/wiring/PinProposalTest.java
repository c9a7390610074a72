package slackwater.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slackwater.model.Contact;
import slackwater.model.Level;
import slackwater.model.Pull;
import slackwater.model.Rig;
import slackwater.model.board.Board;
import slackwater.model.board.Boards;
import slackwater.model.board.BootState;
import slackwater.model.board.BootState.Verdict;

/** Pins proposed from pulls and polarity: handbook 3.9, design rule; 3.11; 3.12. */
class PinProposalTest {
    private static final Board BOARD = Boards.named("pi-4").orElseThrow();

    private static SmallRig lamps(final int count, final Level energised) {
        final SmallRig small = new SmallRig("pi-4");
        IntStream.rangeClosed(1, count)
                .forEach(index -> small.lamp("lamp-" + index, SmallRig.NOT_WIRED, energised, Contact.NORMALLY_OPEN));
        return small;
    }

    private static List<Integer> pins(final PinProposal proposal) {
        return proposal.proposed().stream().map(Proposed::gpio).toList();
    }

    @Test
    void theSmallestRigGetsItsTwoPins() {
        final Rig rig = new SmallRig("pi-4")
                .valve("lid", SmallRig.NOT_WIRED, Level.HIGH)
                .motion("path", SmallRig.NOT_WIRED)
                .rig();
        assertThat(PinProposal.of(rig))
                .isEqualTo(new PinProposal(
                        List.of(Proposed.pin("porch", "output.lid", 27), Proposed.pin("porch", "input.path", 22)),
                        List.of()));
    }

    @Test
    void outputsEnergisedByHighFillThePulledDownPinsWithoutABusFirst() {
        final PinProposal seventeen = PinProposal.of(lamps(17, Level.HIGH).rig());
        assertThat(pins(seventeen)).containsExactly(27, 22, 23, 24, 25, 12, 13, 26, 17, 18, 10, 9, 11, 19, 16, 20, 21);
        assertThat(seventeen.problems()).isEmpty();
    }

    @Test
    void theEighteenthOutputEnergisedByHighIsRefusedInPlainWords() {
        final PinProposal eighteen = PinProposal.of(lamps(18, Level.HIGH).rig());
        assertThat(eighteen.proposed()).hasSize(17);
        assertThat(eighteen.problems())
                .containsExactly(
                        "porch (pi-4) has no free pin that suits for [output.lamp-18]; an output energised by high"
                                + " needs one that is pulled down at reset: move an output to another controller.");
    }

    @Test
    void outputsEnergisedByLowFillFourToEightAndNoMore() {
        assertThat(pins(PinProposal.of(lamps(5, Level.LOW).rig()))).containsExactly(5, 6, 4, 8, 7);
        final PinProposal six = PinProposal.of(lamps(6, Level.LOW).rig());
        assertThat(six.proposed()).hasSize(5);
        assertThat(six.problems())
                .containsExactly(
                        "porch (pi-4) has no free pin that suits for [output.lamp-6]; an output energised by low"
                                + " needs one that is pulled up at reset: use a driver that high energises, or move an output to"
                                + " another controller.");
    }

    @Test
    void everyProposedOutputRestsFromPowerOn() {
        for (final Level energised : Level.values()) {
            for (final int gpio : pins(PinProposal.of(lamps(28, energised).rig()))) {
                assertThat(BootState.of(BOARD, gpio, energised).verdict())
                        .as("GPIO%d", gpio)
                        .isEqualTo(Verdict.AT_REST);
                assertThat(BOARD.isBusyAtBoot(gpio)).as("GPIO%d", gpio).isFalse();
            }
        }
    }

    @Test
    void aTakenPinIsNotProposedAgainWhoeverTookIt() {
        final Rig rig = new SmallRig("pi-4")
                .holdUp(OptionalInt.of(27), OptionalInt.of(22))
                .valve("lid", OptionalInt.of(23), Level.HIGH)
                .motion("path", OptionalInt.of(24))
                .valve("jet", SmallRig.NOT_WIRED, Level.HIGH)
                .rig();
        assertThat(PinProposal.of(rig).proposed()).containsExactly(Proposed.pin("porch", "output.jet", 25));
    }

    @Test
    void outputsChooseBeforeInputsAndBothInTheOrderOfTheRig() {
        final Rig rig = new SmallRig("pi-4")
                .motion("path", SmallRig.NOT_WIRED)
                .button("reset", SmallRig.NOT_WIRED)
                .valve("lid", SmallRig.NOT_WIRED, Level.HIGH)
                .beamWithoutPull("reach", SmallRig.NOT_WIRED)
                .rig();
        assertThat(PinProposal.of(rig).proposed())
                .containsExactly(
                        Proposed.pin("porch", "output.lid", 27),
                        Proposed.pin("porch", "input.path", 22),
                        Proposed.pin("porch", "input.reset", 5),
                        Proposed.pin("porch", "input.reach", 23));
    }

    @Test
    void onlyInputsThatAreActiveLowWithAPullUpGetThePinsWithAFixedOne() {
        final SmallRig motions = new SmallRig("pi-4");
        IntStream.rangeClosed(1, 23).forEach(index -> motions.motion("motion-" + index, SmallRig.NOT_WIRED));
        final PinProposal first = PinProposal.of(motions.rig());
        assertThat(pins(first)).hasSize(22).doesNotContain(0, 1, 2, 3, 14, 15);
        assertThat(first.problems())
                .containsExactly(
                        "porch (pi-4) has no free pin that suits for [input.motion-23]; move an input or an output to"
                                + " another controller.");

        final SmallRig buttons = new SmallRig("pi-4");
        IntStream.rangeClosed(1, 25).forEach(index -> buttons.button("button-" + index, SmallRig.NOT_WIRED));
        final PinProposal second = PinProposal.of(buttons.rig());
        assertThat(pins(second)).hasSize(24).endsWith(2, 3).doesNotContain(0, 1, 14, 15);
        assertThat(second.problems())
                .containsExactly(
                        "porch (pi-4) has no free pin for [input.button-25]; move an input or an output to another"
                                + " controller.");
    }

    @Test
    void aButtonThatStandsFirstInTheRigLeavesTheOrdinaryPinsToWhoNeedsThem() {
        final SmallRig small =
                new SmallRig("pi-4").button("reset", SmallRig.NOT_WIRED).button("hung", SmallRig.NOT_WIRED);
        IntStream.rangeClosed(1, 22).forEach(index -> small.motion("motion-" + index, SmallRig.NOT_WIRED));
        final PinProposal proposal = PinProposal.of(small.rig());
        assertThat(proposal.problems()).isEmpty();
        assertThat(proposal.proposed())
                .hasSize(24)
                .startsWith(Proposed.pin("porch", "input.reset", 2), Proposed.pin("porch", "input.hung", 3));
    }

    @Test
    void aHoldUpAndAStopLoopAreProposedInTheirOwnKeys() {
        final Rig rig = new SmallRig("pi-zero-2-w")
                .holdUp(SmallRig.NOT_WIRED, SmallRig.NOT_WIRED)
                .stopLoop(SmallRig.NOT_WIRED)
                .rig();
        assertThat(PinProposal.of(rig).proposed())
                .containsExactly(
                        new Proposed("porch", "controller.porch", 27, Proposed.Key.HOLD_UP_PIN),
                        new Proposed("porch", "input.stop-loop", 5, Proposed.Key.PINS));
    }

    @Test
    void aHoldUpWithoutAPinToSuitIsRefusedInPlainWords() {
        final SmallRig small = new SmallRig("pi-4").holdUp(SmallRig.NOT_WIRED, SmallRig.NOT_WIRED);
        BOARD.header().stream()
                .filter(gpio -> BOARD.pullAtReset(gpio) == Pull.DOWN)
                .forEach(gpio -> small.motion("motion-" + gpio, OptionalInt.of(gpio)));
        assertThat(PinProposal.of(small.rig()).problems())
                .containsExactly(
                        "porch (pi-4) has no free pin that suits for the hold-up of [controller.porch]; it needs one"
                                + " that is pulled down at reset: move an output to another controller.");
    }
}
