package slackwater.model.check;

import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import slackwater.model.Begun;
import slackwater.model.Input;
import slackwater.model.Interlock;
import slackwater.model.Place;
import slackwater.model.Schedule.TimeOfDay;
import slackwater.model.Zone;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;

/** What concerns several controllers, the stop, times and arming (S2, S4, S6, S13, S24). */
class RigRulesTest {

    @Test
    void anInterlockSensesOnItsOutputsOwnController() {
        Sketch.rig()
                .and("south")
                .with(In.beam("path").on("south"))
                .with(Out.valve("lid"))
                .permissive(Begun.FINISH, "lid", "not path")
                .finds(new GuardsAtHome(), """
                        ERROR input-elsewhere at permissive.guard/needs[0]
                        "path" is not wired to controller "north", which drives "lid"
                        why: an interlock must hold when the network between controllers is gone (S13)
                        fix: wire an input for it to "north", or let the output be driven by the controller that \
                        senses it
                        """);
        Sketch.rig()
                .and("south")
                .with(In.beam("path").on("south"))
                .with(Out.valve("lid"))
                .trip(Begun.FINISH, "lid", "path")
                .finds(new GuardsAtHome(), """
                        ERROR input-elsewhere at trip.trip/when[0]
                        "path" is not wired to controller "north", which drives "lid"
                        why: an interlock must hold when the network between controllers is gone (S13)
                        fix: wire an input for it to "north", or let the output be driven by the controller that \
                        senses it
                        """);
        Sketch.rig()
                .and("south")
                .with(In.beam("path").on("north", "south"))
                .with(Out.valve("lid"))
                .permissive(Begun.FINISH, "lid", "not path")
                .isFineFor(new GuardsAtHome());
    }

    @Test
    void anExclusionAcrossControllersNeedsWiring() {
        final Interlock hose = new Interlock.Exclusion("hose", List.of("lid", "jet"), Duration.ZERO);
        Sketch.rig()
                .and("south")
                .with(Out.valve("lid"), Out.valve("jet").on("south"))
                .with(hose)
                .finds(new GuardsAtHome(), """
                        ERROR exclusion-across at exclusion.hose/outputs
                        "hose" excludes outputs of 2 controllers: "north", "south"
                        why: neither knows what the other does in this very scan, so both could start (S13)
                        fix: exclude them by wiring, such as a change-over relay, or drive them from one controller
                        """);
        Sketch.rig().with(Out.valve("lid"), Out.valve("jet")).with(hose).isFineFor(new GuardsAtHome());
    }

    private static Sketch twoStrobes() {
        return Sketch.rig()
                .and("south")
                .with(Out.strobe("one"), Out.strobe("two").on("south"));
    }

    @Test
    void aLimitAcrossControllersHasShares() {
        twoStrobes().flashLimit(3, Map.of(), "one", "two").finds(new SharedLimits(), """
                        ERROR no-shares at flash-limit.lightning/flashes
                        "lightning" limits outputs of 2 controllers without shares: "north", "south"
                        why: with the network gone each would use up the whole limit of 3 (S13)
                        fix: add shares = { north = ..., south = ... } that add up to 3
                        """);
        twoStrobes().loadLimit(4.5, Map.of(), "one", "two").finds(new SharedLimits(), """
                        ERROR no-shares at load-limit.supply/limit
                        "supply" limits outputs of 2 controllers without shares: "north", "south"
                        why: with the network gone each would use up the whole limit of 4.5 A (S13)
                        fix: add shares = { north = ..., south = ... } that add up to 4.5 A
                        """);
        twoStrobes().flashLimit(3, Map.of(), "one").isFineFor(new SharedLimits());
    }

    @Test
    void sharesAddUpToTheLimit() {
        twoStrobes().flashLimit(3, Map.of("north", 2, "south", 2), "one", "two").finds(new SharedLimits(), """
                        ERROR shares-do-not-add-up at flash-limit.lightning/shares
                        the shares of "lightning" add up to 4, not to 3
                        why: the controllers keep only their own shares: north 2, south 2 (S13)
                        fix: change the shares or the limit until they agree
                        """);
        twoStrobes().flashLimit(3, Map.of("north", 1, "south", 2), "one", "two").isFineFor(new SharedLimits());
        twoStrobes()
                .loadLimit(0.3, Map.of("north", 0.1, "south", 0.1), "one", "two")
                .finds(new SharedLimits(), """
                        ERROR shares-do-not-add-up at load-limit.supply/shares
                        the shares of "supply" add up to 0.2 A, not to 0.3 A
                        why: the controllers keep only their own shares: north 0.1 A, south 0.1 A (S13)
                        fix: change the shares or the limit until they agree
                        """);
        twoStrobes()
                .loadLimit(0.3, Map.of("north", 0.1, "south", 0.2), "one", "two")
                .isFineFor(new SharedLimits());
    }

    @Test
    void everyShareHasOutputsAndEveryControllerAShare() {
        twoStrobes()
                .and("east")
                .flashLimit(3, Map.of("north", 1, "east", 2), "one", "two")
                .finds(new SharedLimits(), """
                        ERROR no-share at flash-limit.lightning/shares
                        "lightning" has no share for "south"
                        why: without a share its outputs would never run (S13)
                        fix: give every controller that drives one of its outputs a share
                        ERROR share-for-nothing at flash-limit.lightning/shares
                        "lightning" has a share for "east", which drives none of its outputs
                        why: that part of the limit is lost to the others
                        fix: take the share away and give it to the others
                        """);
    }

    @Test
    void thereIsOneStop() {
        Sketch.rig()
                .with(In.stopLoop("stop", "north"), In.stopLoop("stop-two", "north"))
                .finds(new OneStop(), """
                        ERROR second-stop at input.stop-two
                        "stop-two" is a second stop loop
                        why: with two loops, pressing one stop leaves the other half of the yard moving (S4); the \
                        first is "stop" at input.stop/kind:3:1
                        fix: wire all stop buttons in one loop through every output supply, and list its pins in one \
                        input
                        """);
        Sketch.rig().with(In.stopLoop("stop", "north")).isFineFor(new OneStop());
    }

    @Test
    void aStopLoopBelongsToNoZone() {
        Sketch.rig().with(In.stopLoop("stop", "north").zone("north")).finds(new OneStop(), """
                        ERROR stop-in-zone at input.stop/zone
                        the stop loop "stop" is put into zone "north"
                        why: a stop belongs to the whole rig: whoever presses it does not know zones (S4)
                        fix: leave zone out
                        """);
    }

    @Test
    void everyControllerThatDrivesSeesTheStop() {
        Sketch.rig()
                .and("south")
                .with(In.stopLoop("stop", "north"))
                .with(Out.lamp("one"), Out.lamp("two").on("south"))
                .finds(new OneStop(), """
                        ERROR stop-not-everywhere at input.stop/pins
                        the stop loop "stop" is not sensed by "south"
                        why: a controller that does not see the stop would go on as soon as the loop closes (S4)
                        fix: wire a contact of the loop's relay to each controller and add it to pins
                        """);
        Sketch.rig()
                .and("south")
                .with(In.stopLoop("stop", "north"))
                .with(Out.lamp("one"))
                .isFineFor(new OneStop());
    }

    @Test
    void aStopCopiedIntoABankIsNoStop() {
        Sketch.rig()
                .and("south")
                .with(In.of(InputFamily.BUTTON, "north-e-stop"))
                .finds(new OneStop(), """
                        WARNING stop-copied at input.north-e-stop
                        "north-e-stop" sounds like a stop for zone "north" alone
                        why: whoever presses a stop expects the whole rig to stop, through wires and not through a \
                        program (S4)
                        fix: put the button into the stop loop, or name it after what it does, such as stand-down
                        """);
        Sketch.rig()
                .and("south")
                .with(In.of(InputFamily.BUTTON, "north-stopper"), In.beam("bus-stop"))
                .isFineFor(new OneStop());
        Sketch.rig().with(In.of(InputFamily.BUTTON, "stop")).isFineFor(new OneStop());
    }

    @Test
    void aZoneThatGoesOnAloneHasAHardWiredStop() {
        Sketch.rig().zone("south", Zone.WhenAlone.GO_ON, false).finds(new GoingOnAlone(), """
                        ERROR alone-without-stop at zone.south/when-alone
                        zone "south" goes on when its network is gone, without a hard-wired stop
                        why: nobody could stop it from afar any more (S24)
                        fix: wire a stop through its output supply and write hard-wired-stop = true, or when-alone = \
                        "rest"
                        """);
        Sketch.rig().zone("south", Zone.WhenAlone.GO_ON, true).isFineFor(new GoingOnAlone());
        Sketch.rig().zone("south", Zone.WhenAlone.REST, false).isFineFor(new GoingOnAlone());
    }

    @Test
    void nothingIsShorterThanAScan() {
        Sketch.rig()
                .with(In.beam("path").activeAfterMs(9).inactiveAfterMs(5))
                .with(Out.valve("lid").longestOnMs(5).shortestOffMs(1))
                .with(new Interlock.Exclusion("hose", List.of("lid"), Duration.ofNanos(9_999_999)))
                .finds(new NothingBelowAScan(), """
                        ERROR shorter-than-scan at exclusion.hose/clear-after
                        clear-after=9.999999 ms < scan=10 ms
                        why: the program looks once a scan, so it could not keep a time that short
                        fix: make it at least 10 ms, or the scan shorter
                        ERROR shorter-than-scan at input.path/active-after
                        active-after=9 ms < scan=10 ms
                        why: the program looks once a scan, so it could not keep a time that short
                        fix: make it at least 10 ms, or the scan shorter
                        ERROR shorter-than-scan at input.path/inactive-after
                        inactive-after=5 ms < scan=10 ms
                        why: the program looks once a scan, so it could not keep a time that short
                        fix: make it at least 10 ms, or the scan shorter
                        ERROR shorter-than-scan at output.lid/longest-on
                        longest-on=5 ms < scan=10 ms
                        why: the program looks once a scan, so it could not keep a time that short
                        fix: make it at least 10 ms, or the scan shorter
                        ERROR shorter-than-scan at output.lid/shortest-off
                        shortest-off=1 ms < scan=10 ms
                        why: the program looks once a scan, so it could not keep a time that short
                        fix: make it at least 10 ms, or the scan shorter
                        """);
        Sketch.rig()
                .with(In.beam("path").activeAfterMs(10).inactiveAfterMs(10))
                .with(Out.valve("lid").longestOnMs(10).shortestOffMs(10), Out.valve("jet"))
                .with(new Interlock.Exclusion("hose", List.of("lid"), Duration.ofMillis(10)))
                .isFineFor(new NothingBelowAScan());
    }

    @Test
    void aLongestOnOfNothingNeverComesOn() {
        Sketch.rig().with(Out.valve("lid").longestOnMs(0)).finds(new NothingBelowAScan(), """
                        ERROR shorter-than-scan at output.lid/longest-on
                        longest-on=0 ms < scan=10 ms
                        why: the program looks once a scan, so it could not keep a time that short
                        fix: make it at least 10 ms, or the scan shorter
                        """);
    }

    @Test
    void noStepIsShorterThanAScan() {
        Sketch.rig()
                .with(Play.on("path").steps(Play.wish("lid", 9), Play.pause(8, 0), Play.blink("lid", 100, 19)))
                .finds(new NothingBelowAScan(), """
                        ERROR shorter-than-scan at cue.greet/steps[0].for
                        for=9 ms < scan=10 ms
                        why: the program looks once a scan, so it could not keep a time that short
                        fix: make it at least 10 ms, or the scan shorter
                        ERROR shorter-than-scan at cue.greet/steps[1].pause
                        pause=8 ms < scan=10 ms
                        why: the program looks once a scan, so it could not keep a time that short
                        fix: make it at least 10 ms, or the scan shorter
                        ERROR shorter-than-scan at cue.greet/steps[2].blink
                        half of blink=9.5 ms < scan=10 ms
                        why: the program looks once a scan, so it could not keep a time that short
                        fix: make it at least 10 ms, or the scan shorter
                        """);
        Sketch.rig()
                .with(Play.on("path").steps(Play.wish("lid", 10), Play.pause(10, 0), Play.blink("lid", 100, 20)))
                .isFineFor(new NothingBelowAScan());
    }

    @Test
    void theHoldUpRelayOutlastsThreeScans() {
        Sketch.rigWithHoldUp(12, 4, 29).finds(new NothingBelowAScan(), """
                        ERROR drop-out-short at controller.north/hold-up.drop-out
                        drop-out=29 ms < 3 scans=30 ms
                        why: the relay would open between the pulses of a healthy program (S2)
                        fix: take a relay with a longer drop-out, such as 400 ms, or make the scan shorter
                        """);
        Sketch.rigWithHoldUp(12, 4, 30).isFineFor(new NothingBelowAScan());
    }

    private static TimeOfDay at(final int hour, final int minute) {
        return new TimeOfDay.Clock(LocalTime.of(hour, minute));
    }

    @Test
    void aScheduleByTheSunKnowsItsPlace() {
        final TimeOfDay dusk = new TimeOfDay.Dusk(Duration.ofMinutes(20));
        Sketch.rig().open(dusk, at(21, 45)).finds(new OpeningHours(), """
                        ERROR dusk-without-place at schedule/opens
                        the schedule goes by the sun, and the rig does not say where it stands
                        why: dusk comes at another time in every place
                        fix: add [place] with latitude, longitude and time-zone to rig.toml, or write a time such as \
                        "18:30"
                        """);
        Sketch.rig().open(at(17, 0), new TimeOfDay.Sunset(Duration.ZERO)).finds(new OpeningHours(), """
                        ERROR dusk-without-place at schedule/closes
                        the schedule goes by the sun, and the rig does not say where it stands
                        why: dusk comes at another time in every place
                        fix: add [place] with latitude, longitude and time-zone to rig.toml, or write a time such as \
                        "18:30"
                        """);
        Sketch.rig()
                .at(new Place(54.1, -3.2, ZoneId.of("Europe/London")))
                .open(dusk, at(21, 45))
                .isFineFor(new OpeningHours());
    }

    @Test
    void aScheduleThatClosesWhenItOpensIsNone() {
        Sketch.rig().open(at(18, 0), at(18, 0)).finds(new OpeningHours(), """
                        ERROR never-open at schedule/closes
                        the schedule closes when it opens
                        why: nobody knows whether that means never or always
                        fix: write a time after the opening
                        """);
        Sketch.rig().open(at(18, 0), at(18, 1)).isFineFor(new OpeningHours());
    }

    @Test
    void aNightOfMoreThanFourteenHoursLooksLikeASlip() {
        Sketch.rig().open(at(21, 45), at(11, 46)).finds(new OpeningHours(), """
                        WARNING long-night at schedule/closes
                        the schedule stays open from 21:45 until 11:46 of the next day
                        why: more than 14 h past midnight are more often a slip than a plan
                        fix: look whether opens and closes were exchanged
                        """);
        Sketch.rig().open(at(21, 45), at(11, 45)).isFineFor(new OpeningHours());
        Sketch.rig().open(at(6, 0), at(23, 0)).isFineFor(new OpeningHours());
    }

    @Test
    void lampsAndSoundersWarn() {
        Sketch.rig()
                .with(Out.lamp("glow"), Out.of(Family.FAN, "surf"))
                .arming(5_000, "glow", "surf")
                .finds(new ArmingWarns(), """
                        ERROR cannot-warn at arming/warns-with[1]
                        "surf" cannot warn: it is no lamp and no sounder
                        why: the warning comes before anything may move, flash or fog (S6)
                        fix: name lamps and sounders only
                        """);
        Sketch.rig()
                .with(Out.lamp("glow"), Out.of(Family.SOUNDER, "horn"))
                .arming(5_000, "glow", "horn")
                .isFineFor(new ArmingWarns());
    }

    @Test
    void theWarningLastsASecondAtLeast() {
        Sketch.rig().arming(999).finds(new ArmingWarns(), """
                        ERROR warning-short at arming/warning
                        warning=999 ms < 1 s
                        why: nobody can step back that fast (S6)
                        fix: take 5 s, or at least 1 s
                        """);
        Sketch.rig().arming(1_000).isFineFor(new ArmingWarns());
    }

    @Test
    void aRigThatCouldWarnBeforeItMovesDoesSo() {
        Sketch.rig().with(Out.lamp("glow"), Out.valve("lid")).finds(new ArmingWarns(), """
                        WARNING nobody-warned at nowhere
                        nothing announces that the rig is about to move
                        why: somebody may still stand at a prop when the rig arms (S6)
                        fix: add [arming] with warns-with, such as "glow"
                        """);
        Sketch.rig().with(Out.valve("lid")).isFineFor(new ArmingWarns());
        Sketch.rig().with(Out.lamp("glow")).isFineFor(new ArmingWarns());
    }

    @Test
    void aRigWithAPanelCanBeArmed() {
        Sketch.rig()
                .with(In.of(InputFamily.BUTTON, "reset").use(Input.Use.RESET))
                .finds(new ArmingWarns(), """
                        WARNING nothing-arms at nowhere
                        the rig has no key that arms it, and the show no schedule
                        why: without a network nobody could open it (S24)
                        fix: add a key switch with use = "arm", or [schedule] to the show
                        """);
        Sketch.rig().with(In.of(InputFamily.KEY, "arm").use(Input.Use.ARM)).isFineFor(new ArmingWarns());
        Sketch.rig()
                .with(In.of(InputFamily.BUTTON, "reset").use(Input.Use.RESET))
                .open(at(18, 0), at(21, 0))
                .isFineFor(new ArmingWarns());
        Sketch.rig().with(In.beam("path")).isFineFor(new ArmingWarns());
    }

    private static Interlock.Shed shed(final long nextAfterMs, final String... outputs) {
        return new Interlock.Shed(
                "thin", List.of(outputs), List.of(Play.condition("air")), Duration.ofMillis(nextAfterMs));
    }

    @Test
    void whatIsShedWaitsForAtLeastAScan() {
        final Sketch rig = Sketch.rig().with(In.of(InputFamily.PRESSURE, "air")).with(Out.lamp("a"), Out.lamp("b"));
        rig.with(shed(9, "a", "b")).finds(new NothingBelowAScan(), """
                        ERROR shorter-than-scan at shed.thin/next-after
                        next-after=9 ms < scan=10 ms
                        why: the program looks once a scan, so it could not keep a time that short
                        fix: make it at least 10 ms, or the scan shorter
                        """);
        Sketch.rig()
                .with(In.of(InputFamily.PRESSURE, "air"))
                .with(Out.lamp("a"), Out.lamp("b"))
                .with(shed(10, "a", "b"))
                .isFineFor(new NothingBelowAScan());
    }

    @Test
    void whatIsShedIsSensedByItsOwnController() {
        Sketch.rig()
                .and("south")
                .with(In.of(InputFamily.PRESSURE, "air"))
                .with(Out.lamp("a"), Out.lamp("b").on("south"))
                .with(shed(10, "a", "b"))
                .finds(new GuardsAtHome(), """
                        ERROR input-elsewhere at shed.thin/needs[0]
                        "air" is not wired to controller "south", which drives "b"
                        why: an interlock must hold when the network between controllers is gone (S13)
                        fix: wire an input for it to "south", or let the output be driven by the controller that \
                        senses it
                        """);
    }
}
