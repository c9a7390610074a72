package slackwater.model.check;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slackwater.model.Begun;
import slackwater.model.Input;
import slackwater.model.Interlock;
import slackwater.model.Return;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;
import slackwater.model.quantity.Dimension;

/** What an output must say about itself (S1, S15). */
class OutputRulesTest {

    @ParameterizedTest
    @EnumSource(
            value = Family.class,
            names = {"VALVE", "RELEASE", "CONTACT"})
    void whatMovesSaysWhatItDoesWithoutPower(final Family family) {
        Sketch.rig().with(Out.of(family, "lid")).finds(new ReturnSaid(), "@21");
        Sketch.rig().with(Out.of(family, "lid").onPowerLoss(Return.STAYS)).isFineFor(new ReturnSaid());
    }

    @Test
    void whatDoesNotMoveNeedNotSay() {
        Sketch.rig().with(Out.lamp("glow"), Out.of(Family.PUMP, "fog")).isFineFor(new ReturnSaid());
    }

    @Test
    void aFallNeedsARestraint() {
        Sketch.rig()
                .with(Out.valve("lid")
                        .onPowerLoss(Return.FALLS)
                        .onAirLoss(Return.FALLS)
                        .restraint(" "))
                .finds(new ReturnSaid(), "@22");
        Sketch.rig()
                .with(Out.valve("lid").onPowerLoss(Return.FALLS).restraint("rubber stop"))
                .isFineFor(new ReturnSaid());
    }

    @Test
    void aValveThatMovesAMassSaysWhatItDoesWithoutAir() {
        Sketch.rig()
                .with(Out.valve("lid").onPowerLoss(Return.SPRING_RETURNS).fact("moving-mass", 2.5, Dimension.MASS))
                .finds(new ReturnSaid(), "@23");
        Sketch.rig()
                .with(Out.valve("lid")
                        .onPowerLoss(Return.SPRING_RETURNS)
                        .onAirLoss(Return.STAYS)
                        .fact("moving-mass", 2.5, Dimension.MASS))
                .isFineFor(new ReturnSaid());
    }

    private static Out falling(final double massKg, final double travelM) {
        return Out.valve("lid")
                .onAirLoss(Return.FALLS)
                .fact("moving-mass", massKg, Dimension.MASS)
                .fact("travel", travelM, Dimension.LENGTH);
    }

    /** S1's own example: a 3 kg lid falling 0.30 m unthrottled is 8.8 J. */
    @Test
    void aHeavyLidThatFallsUnthrottledIsPriced() {
        Sketch.rig().with(falling(3, 0.30)).finds(new FallingEnergy(), "@24");
    }

    /** Handbook 1.11 case 13 (ISO 14120, 4 J, from memory): 1 kg falls 0.409 m for 4.01 J and 0.407 m for 3.99 J. */
    @Test
    void fourJoulesAreTheLimit() {
        Sketch.rig().with(falling(1, 0.409)).finds(new FallingEnergy(), "@25");
        Sketch.rig().with(falling(1, 0.407)).isFineFor(new FallingEnergy());
    }

    /** 3 kg over 0.30 m in 0.36 s land with 2 * 3 * 0.09 / 0.1296 = 4.17 J, in 0.37 s with 3.94 J. */
    @Test
    void aThrottledFallIsJudgedByItsTime() {
        Sketch.rig()
                .with(falling(3, 0.30).fact("returns-in", Duration.ofMillis(360)))
                .finds(new FallingEnergy(), "@26");
        Sketch.rig()
                .with(falling(3, 0.30).fact("returns-in", Duration.ofMillis(370)))
                .isFineFor(new FallingEnergy());
    }

    @Test
    void aSpringReturnIsNoFall() {
        Sketch.rig()
                .with(Out.valve("lid")
                        .onPowerLoss(Return.SPRING_RETURNS)
                        .fact("moving-mass", 3, Dimension.MASS)
                        .fact("travel", 0.3, Dimension.LENGTH))
                .isFineFor(new FallingEnergy());
    }

    @ParameterizedTest
    @EnumSource(
            value = Family.class,
            mode = EnumSource.Mode.EXCLUDE,
            names = {"AIR_SUPPLY", "HEATER", "LAMP", "FAN"})
    void whatCanHarmByStayingOnHasALongestOn(final Family family) {
        Sketch.rig().with(Out.of(family, "lid")).finds(new LongestOnSaid(), "@27");
        Sketch.rig().with(Out.of(family, "lid").longestOnMs(2_000)).isFineFor(new LongestOnSaid());
    }

    @ParameterizedTest
    @EnumSource(
            value = Family.class,
            names = {"AIR_SUPPLY", "HEATER", "LAMP", "FAN"})
    void whatMayStayOnNeedsNone(final Family family) {
        Sketch.rig().with(Out.of(family, "air")).isFineFor(new LongestOnSaid());
    }

    @Test
    void anAirSupplyIsExempt() {
        Sketch.rig().with(Out.of(Family.AIR_SUPPLY, "air").longestOnMs(2_000)).finds(new LongestOnSaid(), "@28");
        Sketch.rig().with(Out.lamp("glow").longestOnMs(2_000)).isFineFor(new LongestOnSaid());
    }

    @Test
    void anOutputWithoutInterlockNeedsAReason() {
        Sketch.rig().with(Out.valve("lid").unguarded(" ")).finds(new Guarded(), "@29");
        Sketch.rig().with(Out.valve("lid").unguarded("bench")).isFineFor(new Guarded());
        Sketch.rig()
                .with(In.beam("path"))
                .with(Out.valve("lid"))
                .permissive(Begun.FINISH, "lid", "path")
                .isFineFor(new Guarded());
        Sketch.rig()
                .with(In.beam("path"))
                .with(Out.valve("lid"))
                .trip(Begun.FINISH, "lid", "path")
                .isFineFor(new Guarded());
    }

    @Test
    void exclusionsAndLimitsAreNoGuardsExceptOfAStrobesFlashes() {
        Sketch.rig()
                .with(Out.valve("lid"))
                .with(new Interlock.Exclusion("hose", List.of("lid"), Duration.ZERO))
                .loadLimit(4.5, Map.of(), "lid")
                .flashLimit(3, Map.of(), "lid")
                .finds(new Guarded(), "@29");
        Sketch.rig().with(Out.strobe("flash")).flashLimit(3, Map.of(), "flash").isFineFor(new Guarded());
    }

    @Test
    void aReasonBesideAGuardMisleads() {
        Sketch.rig()
                .with(In.beam("path"))
                .with(Out.valve("lid").unguarded("bench"))
                .permissive(Begun.FINISH, "lid", "path")
                .finds(new Guarded(), "@30");
    }

    @Test
    void inrushIsAtLeastTheCurrent() {
        Sketch.rig().with(Out.lamp("glow").draws(0.5, 0.499)).finds(new LoadFits(), "@31");
        Sketch.rig().with(Out.lamp("glow").draws(0.5, 0.5)).isFineFor(new LoadFits());
    }

    @Test
    void anOutputOverItsLoadLimitAloneNeverRuns() {
        Sketch.rig()
                .with(Out.lamp("glow").draws(0.5, 4.501))
                .loadLimit(4.5, Map.of(), "glow")
                .finds(new LoadFits(), "@32");
        Sketch.rig()
                .with(Out.lamp("glow").draws(0.5, 4.5))
                .loadLimit(4.5, Map.of(), "glow")
                .isFineFor(new LoadFits());
    }

    @Test
    void aShareIsTheLimitOfItsController() {
        Sketch.rig()
                .with(Out.lamp("glow").draws(2, 2))
                .loadLimit(4.5, Map.of("north", 1.5, "south", 3.0), "glow")
                .finds(new LoadFits(), "@33");
    }

    @Test
    void aReleaseIsHungAgain() {
        Sketch.rig().with(Out.of(Family.RELEASE, "gull")).finds(new ReleaseHungAgain(), "@34");
        Sketch.rig()
                .with(In.of(InputFamily.BUTTON, "set").use(Input.Use.HUNG).fact("of", "gull"))
                .with(Out.of(Family.RELEASE, "gull"))
                .isFineFor(new ReleaseHungAgain());
        Sketch.rig()
                .with(In.of(InputFamily.BUTTON, "set").use(Input.Use.HUNG).fact("of", "crab"))
                .with(Out.of(Family.RELEASE, "gull"))
                .finds(new ReleaseHungAgain(), "@34");
    }

    @Test
    void aPumpKnowsThatItsFogMakerIsHot() {
        Sketch.rig()
                .with(In.beam("path"))
                .with(Out.of(Family.PUMP, "fog"))
                .permissive(Begun.REST, "fog", "path")
                .finds(new FogAndMist(), "@35");
        Sketch.rig()
                .with(Out.of(Family.PUMP, "fog").fact("heated-by", "heater"))
                .isFineFor(new FogAndMist());
        Sketch.rig()
                .with(In.of(InputFamily.READY, "hot"))
                .with(Out.of(Family.PUMP, "fog"))
                .permissive(Begun.REST, "fog", "hot")
                .isFineFor(new FogAndMist());
    }

    @Test
    void aMisterNeverRunsDry() {
        Sketch.rig()
                .with(In.of(InputFamily.LEVEL, "water"))
                .with(Out.of(Family.MISTER, "spray"))
                .permissive(Begun.REST, "spray", "not water")
                .finds(new FogAndMist(), "@36");
        Sketch.rig()
                .with(In.of(InputFamily.LEVEL, "water"))
                .with(Out.of(Family.MISTER, "spray"))
                .permissive(Begun.REST, "spray", "water")
                .isFineFor(new FogAndMist());
    }
}
