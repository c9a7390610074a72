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
                .finds(new GuardsAtHome(), "@41");
        Sketch.rig()
                .and("south")
                .with(In.beam("path").on("south"))
                .with(Out.valve("lid"))
                .trip(Begun.FINISH, "lid", "path")
                .finds(new GuardsAtHome(), "@42");
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
                .finds(new GuardsAtHome(), "@43");
        Sketch.rig().with(Out.valve("lid"), Out.valve("jet")).with(hose).isFineFor(new GuardsAtHome());
    }

    private static Sketch twoStrobes() {
        return Sketch.rig()
                .and("south")
                .with(Out.strobe("one"), Out.strobe("two").on("south"));
    }

    @Test
    void aLimitAcrossControllersHasShares() {
        twoStrobes().flashLimit(3, Map.of(), "one", "two").finds(new SharedLimits(), "@44");
        twoStrobes().loadLimit(4.5, Map.of(), "one", "two").finds(new SharedLimits(), "@45");
        twoStrobes().flashLimit(3, Map.of(), "one").isFineFor(new SharedLimits());
    }

    @Test
    void sharesAddUpToTheLimit() {
        twoStrobes().flashLimit(3, Map.of("north", 2, "south", 2), "one", "two").finds(new SharedLimits(), "@46");
        twoStrobes().flashLimit(3, Map.of("north", 1, "south", 2), "one", "two").isFineFor(new SharedLimits());
        twoStrobes()
                .loadLimit(0.3, Map.of("north", 0.1, "south", 0.1), "one", "two")
                .finds(new SharedLimits(), "@47");
        twoStrobes()
                .loadLimit(0.3, Map.of("north", 0.1, "south", 0.2), "one", "two")
                .isFineFor(new SharedLimits());
    }

    @Test
    void everyShareHasOutputsAndEveryControllerAShare() {
        twoStrobes()
                .and("east")
                .flashLimit(3, Map.of("north", 1, "east", 2), "one", "two")
                .finds(new SharedLimits(), "@48");
    }

    @Test
    void thereIsOneStop() {
        Sketch.rig()
                .with(In.stopLoop("stop", "north"), In.stopLoop("stop-two", "north"))
                .finds(new OneStop(), "@49");
        Sketch.rig().with(In.stopLoop("stop", "north")).isFineFor(new OneStop());
    }

    @Test
    void aStopLoopBelongsToNoZone() {
        Sketch.rig().with(In.stopLoop("stop", "north").zone("north")).finds(new OneStop(), "@50");
    }

    @Test
    void everyControllerThatDrivesSeesTheStop() {
        Sketch.rig()
                .and("south")
                .with(In.stopLoop("stop", "north"))
                .with(Out.lamp("one"), Out.lamp("two").on("south"))
                .finds(new OneStop(), "@51");
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
                .finds(new OneStop(), "@52");
        Sketch.rig()
                .and("south")
                .with(In.of(InputFamily.BUTTON, "north-stopper"), In.beam("bus-stop"))
                .isFineFor(new OneStop());
        Sketch.rig().with(In.of(InputFamily.BUTTON, "stop")).isFineFor(new OneStop());
    }

    @Test
    void aZoneThatGoesOnAloneHasAHardWiredStop() {
        Sketch.rig().zone("south", Zone.WhenAlone.GO_ON, false).finds(new GoingOnAlone(), "@53");
        Sketch.rig().zone("south", Zone.WhenAlone.GO_ON, true).isFineFor(new GoingOnAlone());
        Sketch.rig().zone("south", Zone.WhenAlone.REST, false).isFineFor(new GoingOnAlone());
    }

    @Test
    void nothingIsShorterThanAScan() {
        Sketch.rig()
                .with(In.beam("path").activeAfterMs(9).inactiveAfterMs(5))
                .with(Out.valve("lid").longestOnMs(5).shortestOffMs(1))
                .with(new Interlock.Exclusion("hose", List.of("lid"), Duration.ofNanos(9_999_999)))
                .finds(new NothingBelowAScan(), "@54");
        Sketch.rig()
                .with(In.beam("path").activeAfterMs(10).inactiveAfterMs(10))
                .with(Out.valve("lid").longestOnMs(10).shortestOffMs(10), Out.valve("jet"))
                .with(new Interlock.Exclusion("hose", List.of("lid"), Duration.ofMillis(10)))
                .isFineFor(new NothingBelowAScan());
    }

    @Test
    void noStepIsShorterThanAScan() {
        Sketch.rig()
                .with(Play.on("path").steps(Play.wish("lid", 9), Play.pause(8, 0), Play.blink("lid", 100, 19)))
                .finds(new NothingBelowAScan(), "@55");
        Sketch.rig()
                .with(Play.on("path").steps(Play.wish("lid", 10), Play.pause(10, 0), Play.blink("lid", 100, 20)))
                .isFineFor(new NothingBelowAScan());
    }

    @Test
    void theHoldUpRelayOutlastsThreeScans() {
        Sketch.rigWithHoldUp(12, 4, 29).finds(new NothingBelowAScan(), "@56");
        Sketch.rigWithHoldUp(12, 4, 30).isFineFor(new NothingBelowAScan());
    }

    private static TimeOfDay at(final int hour, final int minute) {
        return new TimeOfDay.Clock(LocalTime.of(hour, minute));
    }

    @Test
    void aScheduleByTheSunKnowsItsPlace() {
        final TimeOfDay dusk = new TimeOfDay.Dusk(Duration.ofMinutes(20));
        Sketch.rig().open(dusk, at(21, 45)).finds(new OpeningHours(), "@57");
        Sketch.rig().open(at(17, 0), new TimeOfDay.Sunset(Duration.ZERO)).finds(new OpeningHours(), "@58");
        Sketch.rig()
                .at(new Place(54.1, -3.2, ZoneId.of("Europe/London")))
                .open(dusk, at(21, 45))
                .isFineFor(new OpeningHours());
    }

    @Test
    void aScheduleThatClosesWhenItOpensIsNone() {
        Sketch.rig().open(at(18, 0), at(18, 0)).finds(new OpeningHours(), "@59");
        Sketch.rig().open(at(18, 0), at(18, 1)).isFineFor(new OpeningHours());
    }

    @Test
    void aNightOfMoreThanFourteenHoursLooksLikeASlip() {
        Sketch.rig().open(at(21, 45), at(11, 46)).finds(new OpeningHours(), "@60");
        Sketch.rig().open(at(21, 45), at(11, 45)).isFineFor(new OpeningHours());
        Sketch.rig().open(at(6, 0), at(23, 0)).isFineFor(new OpeningHours());
    }

    @Test
    void lampsAndSoundersWarn() {
        Sketch.rig()
                .with(Out.lamp("glow"), Out.of(Family.FAN, "surf"))
                .arming(5_000, "glow", "surf")
                .finds(new ArmingWarns(), "@61");
        Sketch.rig()
                .with(Out.lamp("glow"), Out.of(Family.SOUNDER, "horn"))
                .arming(5_000, "glow", "horn")
                .isFineFor(new ArmingWarns());
    }

    @Test
    void theWarningLastsASecondAtLeast() {
        Sketch.rig().arming(999).finds(new ArmingWarns(), "@62");
        Sketch.rig().arming(1_000).isFineFor(new ArmingWarns());
    }

    @Test
    void aRigThatCouldWarnBeforeItMovesDoesSo() {
        Sketch.rig().with(Out.lamp("glow"), Out.valve("lid")).finds(new ArmingWarns(), "@63");
        Sketch.rig().with(Out.valve("lid")).isFineFor(new ArmingWarns());
        Sketch.rig().with(Out.lamp("glow")).isFineFor(new ArmingWarns());
    }

    @Test
    void aRigWithAPanelCanBeArmed() {
        Sketch.rig()
                .with(In.of(InputFamily.BUTTON, "reset").use(Input.Use.RESET))
                .finds(new ArmingWarns(), "@64");
        Sketch.rig().with(In.of(InputFamily.KEY, "arm").use(Input.Use.ARM)).isFineFor(new ArmingWarns());
        Sketch.rig()
                .with(In.of(InputFamily.BUTTON, "reset").use(Input.Use.RESET))
                .open(at(18, 0), at(21, 0))
                .isFineFor(new ArmingWarns());
        Sketch.rig().with(In.beam("path")).isFineFor(new ArmingWarns());
    }
}
