package slackwater.model.check;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.model.kind.InputFamily;

/** Pins: handbook 3.9 to 3.12 (BCM2835 ARM Peripherals Table 6-31; common practice for opto boards). */
class PinRulesTest {

    @Test
    void aPinUsedTwiceNamesBothPlaces() {
        Sketch.rig().with(Out.valve("lid").pin(17), Out.valve("jet").pin(17)).finds(new PinTaken(), "@1");
        Sketch.rig().with(Out.valve("lid").pin(17), Out.valve("jet").pin(18)).isFineFor(new PinTaken());
    }

    @Test
    void theSamePinOfTwoControllersIsTwoPins() {
        Sketch.rig()
                .and("south")
                .with(Out.valve("lid").pin(17), Out.valve("jet").pin(17).on("south"))
                .isFineFor(new PinTaken());
    }

    @Test
    void theHoldUpRelayAndItsContactTakePinsToo() {
        Sketch.rigWithHoldUp(12, 4, 400)
                .with(In.beam("path").pin(4).activeLowPulledUp())
                .with(Out.valve("lid").pin(12))
                .finds(new PinTaken(), "@2");
        Sketch.rigWithHoldUp(12, 4, 400)
                .with(In.beam("path").pin(5))
                .with(Out.valve("lid").pin(13))
                .isFineFor(new PinTaken());
    }

    @Test
    void theStopLoopIsWiredToEachController() {
        Sketch.rig()
                .and("south")
                .with(
                        In.stopLoop("stop", "north", "south").pin(5),
                        In.beam("path").on("south").pin(5))
                .finds(new PinTaken(), "@3");
    }

    @Test
    void aPinThatIsNotOnTheHeaderCannotBeWired() {
        Sketch.rig().with(Out.valve("lid").pin(28).activeLow()).finds(new PinOnHeader(), "@4");
        Sketch.rig().with(Out.valve("lid").pin(27)).isFineFor(new PinOnHeader());
    }

    @Test
    void aPinProbedAtBootIsLeftAlone() {
        Sketch.rig().with(In.beam("path").pin(1).activeLowPulledUp()).finds(new PinBusyAtBoot(), "@5");
    }

    @Test
    void anOutputOnTheSerialLineWouldFollowTheBootMessages() {
        Sketch.rig().with(Out.valve("lid").pin(14)).finds(new PinBusyAtBoot(), "@6");
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 5, 9, 13, 16, 27})
    void pinsThatRestAtBootAreFree(final int gpio) {
        Sketch.rig().with(Out.valve("lid").pin(gpio)).isFineFor(new PinBusyAtBoot());
    }

    @Test
    void anInputOnAFixedPullUpMustWorkWithIt() {
        Sketch.rig().with(In.beam("path").pin(2)).finds(new PinBusyAtBoot(), "@7");
        Sketch.rig().with(In.beam("path").pin(2).activeLowPulledUp()).isFineFor(new PinBusyAtBoot());
    }

    @Test
    void anInputOnTheSerialLineIsReceivedOnFifteenOnly() {
        Sketch.rig().with(In.beam("path").pin(14)).finds(new PinBusyAtBoot(), "@8");
        Sketch.rig().with(In.beam("path").pin(15)).isFineFor(new PinBusyAtBoot());
    }

    /** Handbook 3.9: GPIO8 is the last that is pulled up at reset, GPIO9 the first that is pulled down. */
    @Test
    void anActiveHighDriverOnAPulledUpPinIsEnergisedAtBoot() {
        Sketch.rig().with(Out.valve("lid").pin(8)).finds(new OutputAtBoot(), "@9");
        Sketch.rig().with(Out.valve("lid").pin(9)).isFineFor(new OutputAtBoot());
    }

    @Test
    void anActiveLowBoardOnAPulledDownPinMayBeEnergisedAtBoot() {
        Sketch.rig().with(Out.valve("lid").pin(9).activeLow().normallyClosed()).finds(new OutputAtBoot(), "@10");
        Sketch.rig().with(Out.valve("lid").pin(8).activeLow()).isFineFor(new OutputAtBoot());
    }

    @Test
    void aPinOffTheHeaderOrBusyAtBootIsLeftToTheOtherRules() {
        Sketch.rig().with(Out.valve("lid").pin(2), Out.valve("jet").pin(28)).isFineFor(new OutputAtBoot());
    }

    @Test
    void whereNoPinSuitsTheFixSaysSo() {
        final Sketch full = Sketch.rig();
        for (final int gpio : new int[] {4, 5, 6, 7}) {
            full.with(In.beam("beam-" + gpio).pin(gpio));
        }
        full.with(Out.valve("lid").pin(9).activeLow(), Out.valve("jet").pin(8).activeLow())
                .finds(new OutputAtBoot(), "@11");
    }

    @Test
    void pinsLeftOutAreSaidOncePerController() {
        Sketch.rig()
                .and("south")
                .with(In.of(InputFamily.MOTION, "path"))
                .with(Out.valve("lid"), Out.valve("jet").on("south").pin(17))
                .finds(new PinsNotWired(), "@12");
    }
}
