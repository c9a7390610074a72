package slackwater.model.check;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.model.kind.InputFamily;

/** Pins: handbook 3.9 to 3.12 (BCM2835 ARM Peripherals Table 6-31; common practice for opto boards). */
class PinRulesTest {

    @Test
    void aPinUsedTwiceNamesBothPlaces() {
        Sketch.rig().with(Out.valve("lid").pin(17), Out.valve("jet").pin(17)).finds(new PinTaken(), """
                        ERROR pin-taken at output.jet/pin
                        pin 17 of controller "north" is already taken
                        why: "lid" uses pin 17 at output.lid/pin:3:1, "jet" uses it again
                        fix: free pins of "north" that rest while the board boots: 9, 10, 11, 12, 13, 16, 18, 19, \
                        20, 21, 22, 23, 24, 25, 26, 27
                        """);
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
                .finds(new PinTaken(), """
                        ERROR pin-taken at input.path/pin
                        pin 4 of controller "north" is already taken
                        why: the hold-up relay's contact uses pin 4 at controller.north/hold-up.seen-pin:1:1, "path" \
                        uses it again
                        fix: free pins of "north" that can sense it: 2, 3, 5, 6, 7, 8, 9, 10, 11, 13, 16, 17, 18, \
                        19, 20, 21, 22, 23, 24, 25, 26, 27
                        ERROR pin-taken at output.lid/pin
                        pin 12 of controller "north" is already taken
                        why: the hold-up relay uses pin 12 at controller.north/hold-up.pin:1:1, "lid" uses it again
                        fix: free pins of "north" that rest while the board boots: 9, 10, 11, 13, 16, 17, 18, 19, \
                        20, 21, 22, 23, 24, 25, 26, 27
                        """);
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
                .finds(new PinTaken(), """
                        ERROR pin-taken at input.path/pin
                        pin 5 of controller "south" is already taken
                        why: "stop" uses pin 5 at input.stop/pins.south:5:1, "path" uses it again
                        fix: free pins of "south" that can sense it: 4, 6, 7, 8, 9, 10, 11, 12, 13, 16, 17, 18, 19, \
                        20, 21, 22, 23, 24, 25, 26, 27
                        """);
    }

    @Test
    void aPinThatIsNotOnTheHeaderCannotBeWired() {
        Sketch.rig().with(Out.valve("lid").pin(28).activeLow()).finds(new PinOnHeader(), """
                        ERROR pin-not-on-header at output.lid/pin
                        pin 28 is not on the header of a pi-4
                        why: "lid" could not be wired to it
                        fix: free pins of "north" that rest while the board boots: 4, 5, 6, 7, 8
                        """);
        Sketch.rig().with(Out.valve("lid").pin(27)).isFineFor(new PinOnHeader());
    }

    @Test
    void aPinProbedAtBootIsLeftAlone() {
        Sketch.rig().with(In.beam("path").pin(1).activeLowPulledUp()).finds(new PinBusyAtBoot(), """
                        ERROR pin-busy-at-boot at input.path/pin
                        pin 1 has a life of its own while the board boots
                        why: GPIO1: probed for an add-on board's memory at every boot; leave it unconnected \
                        (handbook 3.11); "path" is wired to it
                        fix: free pins of "north" that can sense it: 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 16, 17, \
                        18, 19, 20, 21, 22, 23, 24, 25, 26, 27
                        """);
    }

    @Test
    void anOutputOnTheSerialLineWouldFollowTheBootMessages() {
        Sketch.rig().with(Out.valve("lid").pin(14)).finds(new PinBusyAtBoot(), """
                        ERROR pin-busy-at-boot at output.lid/pin
                        pin 14 has a life of its own while the board boots
                        why: GPIO14: serial output on many images: high and chattering during boot (handbook 3.11); \
                        "lid" is wired to it
                        fix: free pins of "north" that rest while the board boots: 9, 10, 11, 12, 13, 16, 17, 18, \
                        19, 20, 21, 22, 23, 24, 25, 26, 27
                        """);
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 5, 9, 13, 16, 27})
    void pinsThatRestAtBootAreFree(final int gpio) {
        Sketch.rig().with(Out.valve("lid").pin(gpio)).isFineFor(new PinBusyAtBoot());
    }

    @Test
    void anInputOnAFixedPullUpMustWorkWithIt() {
        Sketch.rig().with(In.beam("path").pin(2)).finds(new PinBusyAtBoot(), """
                        WARNING pin-busy-at-boot at input.path/pin
                        pin 2 has a life of its own while the board boots
                        why: GPIO2: fixed 1.8 kOhm pull-up to 3.3 V on the board (handbook 3.11); "path" is wired to \
                        it
                        fix: free pins of "north" that can sense it: 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 16, 17, 18, \
                        19, 20, 21, 22, 23, 24, 25, 26, 27
                        """);
        Sketch.rig().with(In.beam("path").pin(2).activeLowPulledUp()).isFineFor(new PinBusyAtBoot());
    }

    @Test
    void anInputOnTheSerialLineIsReceivedOnFifteenOnly() {
        Sketch.rig().with(In.beam("path").pin(14)).finds(new PinBusyAtBoot(), """
                        WARNING pin-busy-at-boot at input.path/pin
                        pin 14 has a life of its own while the board boots
                        why: GPIO14: serial output on many images: high and chattering during boot (handbook 3.11); \
                        "path" is wired to it
                        fix: free pins of "north" that can sense it: 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 16, 17, 18, \
                        19, 20, 21, 22, 23, 24, 25, 26, 27
                        """);
        Sketch.rig().with(In.beam("path").pin(15)).isFineFor(new PinBusyAtBoot());
    }

    /** Handbook 3.9: GPIO8 is the last that is pulled up at reset, GPIO9 the first that is pulled down. */
    @Test
    void anActiveHighDriverOnAPulledUpPinIsEnergisedAtBoot() {
        Sketch.rig().with(Out.valve("lid").pin(8)).finds(new OutputAtBoot(), """
                        ERROR energised-at-boot at output.lid/pin
                        "lid" would be energised while the board boots
                        why: GPIO8 is pulled up from reset until the program runs, and high energises the load
                        fix: free pins of "north" that rest while the board boots: 9, 10, 11, 12, 13, 16, 17, 18, \
                        19, 20, 21, 22, 23, 24, 25, 26, 27
                        """);
        Sketch.rig().with(Out.valve("lid").pin(9)).isFineFor(new OutputAtBoot());
    }

    @Test
    void anActiveLowBoardOnAPulledDownPinMayBeEnergisedAtBoot() {
        Sketch.rig().with(Out.valve("lid").pin(9).activeLow().normallyClosed()).finds(new OutputAtBoot(), """
                        WARNING uncertain-at-boot at output.lid/pin
                        "lid" may be energised while the board boots
                        why: GPIO9 is pulled down from reset and low energises the load: a sensitive opto board may \
                        switch on (handbook 3.12); with its normally closed contact that switches the load off
                        fix: free pins of "north" that rest while the board boots: 4, 5, 6, 7, 8
                        """);
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
                .finds(new OutputAtBoot(), """
                        WARNING uncertain-at-boot at output.lid/pin
                        "lid" may be energised while the board boots
                        why: GPIO9 is pulled down from reset and low energises the load: a sensitive opto board may \
                        switch on (handbook 3.12)
                        fix: no free pin of "north" suits it: move something to another controller
                        """);
    }

    @Test
    void pinsLeftOutAreSaidOncePerController() {
        Sketch.rig()
                .and("south")
                .with(In.of(InputFamily.MOTION, "path"))
                .with(Out.valve("lid"), Out.valve("jet").on("south").pin(17))
                .finds(new PinsNotWired(), """
                        WARNING not-wired at controller.north
                        on controller "north" no pin is given for "path", "lid"
                        why: simulate and rehearse go on without pins; run refuses
                        fix: slackwater wiring RIG --propose-pins fills them in
                        """);
    }
}
