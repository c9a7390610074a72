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
    private static final String UNGUARDED = """
            ERROR unguarded at output.lid/unguarded
            no interlock names "lid"
            why: whatever stands in its way, it would move, heat or flash
            fix: add a [permissive.NAME] or [trip.NAME] with outputs = ["lid"], or unguarded = "..." with your reason
            """;

    private static final String NEVER_HUNG = """
            WARNING release-never-hung at output.gull
            no input confirms that "gull" has been hung again
            why: after its first release it stays spent for good (S15)
            fix: add a button with use = "hung" and of = "gull"
            """;

    @ParameterizedTest
    @EnumSource(
            value = Family.class,
            names = {"VALVE", "RELEASE", "CONTACT"})
    void whatMovesSaysWhatItDoesWithoutPower(final Family family) {
        Sketch.rig().with(Out.of(family, "lid")).finds(new ReturnSaid(), """
                        ERROR no-on-power-loss at output.lid/on-power-loss
                        "lid" does not say what it does when power goes
                        why: a stop, a crash and a power cut all end there, and what moves can hit somebody (S1)
                        fix: add on-power-loss = "spring-returns", "air-drives", "falls" or "stays"
                        """);
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
                .finds(new ReturnSaid(), """
                        ERROR falls-unrestrained at output.lid/on-air-loss
                        "lid" falls, and no restraint is named
                        why: on-air-loss = "falls" lets gravity move it, whoever stands below (S1)
                        fix: add restraint = "...": what slows or catches it, such as a throttled exhaust and a \
                        rubber stop
                        ERROR falls-unrestrained at output.lid/on-power-loss
                        "lid" falls, and no restraint is named
                        why: on-power-loss = "falls" lets gravity move it, whoever stands below (S1)
                        fix: add restraint = "...": what slows or catches it, such as a throttled exhaust and a \
                        rubber stop
                        """);
        Sketch.rig()
                .with(Out.valve("lid").onPowerLoss(Return.FALLS).restraint("rubber stop"))
                .isFineFor(new ReturnSaid());
    }

    @Test
    void aValveThatMovesAMassSaysWhatItDoesWithoutAir() {
        Sketch.rig()
                .with(Out.valve("lid").onPowerLoss(Return.SPRING_RETURNS).fact("moving-mass", 2.5, Dimension.MASS))
                .finds(new ReturnSaid(), """
                        WARNING no-on-air-loss at output.lid/on-air-loss
                        "lid" moves a mass and does not say what that does when air goes
                        why: a hose that comes off and the dump valve both end there (S1)
                        fix: add on-air-loss = "spring-returns", "air-drives", "falls" or "stays"
                        """);
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
        Sketch.rig().with(falling(3, 0.30)).finds(new FallingEnergy(), """
                        WARNING falls-hard at output.lid/moving-mass
                        "lid" falls and lands with 8.83 J, more than 4 J
                        why: a low-energy door is held to 1.69 J (EN 16005), a power-operated guard to 4 J (ISO \
                        14120, from memory); both are for healthy adults, not for children (handbook 1.11)
                        fix: throttle the return and write its time as returns-in, lighten it or shorten its travel
                        """);
    }

    /** Handbook 1.11 case 13 (ISO 14120, 4 J, from memory): 1 kg falls 0.409 m for 4.01 J and 0.407 m for 3.99 J. */
    @Test
    void fourJoulesAreTheLimit() {
        Sketch.rig().with(falling(1, 0.409)).finds(new FallingEnergy(), """
                        WARNING falls-hard at output.lid/moving-mass
                        "lid" falls and lands with 4.01 J, more than 4 J
                        why: a low-energy door is held to 1.69 J (EN 16005), a power-operated guard to 4 J (ISO \
                        14120, from memory); both are for healthy adults, not for children (handbook 1.11)
                        fix: throttle the return and write its time as returns-in, lighten it or shorten its travel
                        """);
        Sketch.rig().with(falling(1, 0.407)).isFineFor(new FallingEnergy());
    }

    /** 3 kg over 0.30 m in 0.36 s land with 2 * 3 * 0.09 / 0.1296 = 4.17 J, in 0.37 s with 3.94 J. */
    @Test
    void aThrottledFallIsJudgedByItsTime() {
        Sketch.rig()
                .with(falling(3, 0.30).fact("returns-in", Duration.ofMillis(360)))
                .finds(new FallingEnergy(), """
                        WARNING falls-hard at output.lid/moving-mass
                        "lid" falls and lands with 4.17 J, more than 4 J
                        why: a low-energy door is held to 1.69 J (EN 16005), a power-operated guard to 4 J (ISO \
                        14120, from memory); both are for healthy adults, not for children (handbook 1.11)
                        fix: throttle the return and write its time as returns-in, lighten it or shorten its travel
                        """);
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
        Sketch.rig().with(Out.of(family, "lid")).finds(new LongestOnSaid(), """
                        ERROR no-longest-on at output.lid/longest-on
                        "lid" has no longest-on
                        why: nothing would end it if a cue or a sensor went on asking
                        fix: add longest-on, the longest time it may ever be energised, such as "2 s"
                        """);
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
        Sketch.rig().with(Out.of(Family.AIR_SUPPLY, "air").longestOnMs(2_000)).finds(new LongestOnSaid(), """
                        WARNING longest-on-exempt at output.air/longest-on
                        "air" is an air supply and needs no longest-on
                        why: when it ends, every prop loses its air in the middle of a greeting (S15)
                        fix: leave longest-on out: the stop and standing down exhaust it
                        """);
        Sketch.rig().with(Out.lamp("glow").longestOnMs(2_000)).isFineFor(new LongestOnSaid());
    }

    @Test
    void anOutputWithoutInterlockNeedsAReason() {
        Sketch.rig().with(Out.valve("lid").unguarded(" ")).finds(new Guarded(), UNGUARDED);
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
                .finds(new Guarded(), UNGUARDED);
        Sketch.rig().with(Out.strobe("flash")).flashLimit(3, Map.of(), "flash").isFineFor(new Guarded());
    }

    @Test
    void aReasonBesideAGuardMisleads() {
        Sketch.rig()
                .with(In.beam("path"))
                .with(Out.valve("lid").unguarded("bench"))
                .permissive(Begun.FINISH, "lid", "path")
                .finds(new Guarded(), """
                        WARNING guarded-yet-unguarded at output.lid/unguarded
                        "lid" gives a reason to be unguarded, yet permissive.guard guards it
                        why: whoever reads the reason believes that nothing guards it
                        fix: leave unguarded out
                        """);
    }

    @Test
    void inrushIsAtLeastTheCurrent() {
        Sketch.rig().with(Out.lamp("glow").draws(0.5, 0.499)).finds(new LoadFits(), """
                        ERROR inrush-below-current at output.glow/inrush
                        inrush=0.499 A < current=0.5 A
                        why: "glow" would start with less than it draws afterwards, and the load limits would be too \
                        trusting
                        fix: write the current while it starts, at least 0.5 A, or leave inrush out
                        """);
        Sketch.rig().with(Out.lamp("glow").draws(0.5, 0.5)).isFineFor(new LoadFits());
    }

    @Test
    void anOutputOverItsLoadLimitAloneNeverRuns() {
        Sketch.rig()
                .with(Out.lamp("glow").draws(0.5, 4.501))
                .loadLimit(4.5, Map.of(), "glow")
                .finds(new LoadFits(), """
                        ERROR over-load-limit at load-limit.supply/limit
                        "glow" alone draws 4.501 A, more than the limit of 4.5 A
                        why: it would be refused at every start
                        fix: raise the limit if supply and fuse allow it, or take the output to another supply
                        """);
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
                .finds(new LoadFits(), """
                        ERROR over-load-limit at load-limit.supply/shares
                        "glow" alone draws 2 A, more than the share of 1.5 A
                        why: it would be refused at every start
                        fix: raise the share if supply and fuse allow it, or take the output to another supply
                        """);
    }

    @Test
    void aReleaseIsHungAgain() {
        Sketch.rig().with(Out.of(Family.RELEASE, "gull")).finds(new ReleaseHungAgain(), NEVER_HUNG);
        Sketch.rig()
                .with(In.of(InputFamily.BUTTON, "set").use(Input.Use.HUNG).fact("of", "gull"))
                .with(Out.of(Family.RELEASE, "gull"))
                .isFineFor(new ReleaseHungAgain());
        Sketch.rig()
                .with(In.of(InputFamily.BUTTON, "set").use(Input.Use.HUNG).fact("of", "crab"))
                .with(Out.of(Family.RELEASE, "gull"))
                .finds(new ReleaseHungAgain(), NEVER_HUNG);
    }

    @Test
    void aPumpKnowsThatItsFogMakerIsHot() {
        Sketch.rig()
                .with(In.beam("path"))
                .with(Out.of(Family.PUMP, "fog"))
                .permissive(Begun.REST, "fog", "path")
                .finds(new FogAndMist(), """
                        WARNING cold-fog at output.fog
                        "fog" may pump into a cold fog maker
                        why: cold fluid is not fogged: it drips on the path, and people slip
                        fix: add heated-by = "...", the heater, or a permissive that needs the fog maker's ready \
                        signal
                        """);
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
                .finds(new FogAndMist(), """
                        ERROR dry-mist at output.spray
                        nothing keeps "spray" from running dry
                        why: ultrasonic discs without water destroy themselves within a minute (common practice, no \
                        source)
                        fix: add a level switch and a [permissive.NAME] with outputs = ["spray"] that needs it
                        """);
        Sketch.rig()
                .with(In.of(InputFamily.LEVEL, "water"))
                .with(Out.of(Family.MISTER, "spray"))
                .permissive(Begun.REST, "spray", "water")
                .isFineFor(new FogAndMist());
    }

    private static Out fog(final double holdsM3) {
        return Out.of(Family.PUMP, "fog")
                .longestOnMs(4_000)
                .fact("flow", 0.000_2, Dimension.MASS_FLOW)
                .fact("holds", holdsM3, Dimension.VOLUME);
    }

    @Test
    void aPumpThatIsCountedDownCanBeToldThatItIsFull() {
        Sketch.rig().with(fog(1e-3)).finds(new Refills(), """
                        WARNING never-refilled at output.fog
                        no input tells that "fog" has been filled up
                        why: it is counted down, and once it is empty it stays refused for good
                        fix: add a button with use = "refill" and of = "fog"
                        """);
        Sketch.rig()
                .with(In.of(InputFamily.BUTTON, "full").use(Input.Use.REFILL).fact("of", "fog"))
                .with(fog(1e-3))
                .isFineFor(new Refills());
        Sketch.rig()
                .with(In.of(InputFamily.KEY, "full").use(Input.Use.REFILL))
                .with(fog(1e-3))
                .isFineFor(new Refills());
        Sketch.rig()
                .with(Out.of(Family.PUMP, "fog").fact("holds", 1e-3, Dimension.VOLUME), Out.of(Family.MISTER, "mist"))
                .isFineFor(new Refills());
    }

    @Test
    void aRefillConcernsSomethingThatIsCountedDown() {
        Sketch.rig()
                .with(In.of(InputFamily.BUTTON, "full").use(Input.Use.REFILL).fact("of", "glow"))
                .with(Out.lamp("glow"))
                .finds(new Refills(), """
                        ERROR refills-nothing at input.full/of
                        "glow" is not counted down on controller "north"
                        why: a refill that no account takes leaves somebody in the belief that it did
                        fix: give the pump its holds and flow, or the mister its holds and uses, on the same \
                        controller; or leave the button out
                        """);
        Sketch.rig()
                .with(In.of(InputFamily.BUTTON, "full").use(Input.Use.REFILL))
                .with(Out.lamp("glow"))
                .finds(new Refills(), """
                        ERROR refills-nothing at input.full/of
                        nothing in zone "north" is counted down on controller "north"
                        why: a refill that no account takes leaves somebody in the belief that it did
                        fix: give the pump its holds and flow, or the mister its holds and uses, on the same \
                        controller; or leave the button out
                        """);
    }

    @Test
    void aRefillIsWiredToTheControllerThatCounts() {
        Sketch.rig()
                .and("south")
                .with(
                        In.of(InputFamily.BUTTON, "full").use(Input.Use.REFILL).fact("of", "fog"),
                        In.of(InputFamily.BUTTON, "far")
                                .use(Input.Use.REFILL)
                                .fact("of", "fog")
                                .on("south"))
                .with(fog(1e-3))
                .finds(new Refills(), """
                        ERROR refills-nothing at input.far/of
                        "fog" is not counted down on controller "south"
                        why: a refill that no account takes leaves somebody in the belief that it did
                        fix: give the pump its holds and flow, or the mister its holds and uses, on the same \
                        controller; or leave the button out
                        """);
    }

    /** 0.8 g at 1.03 kg/l (common practice, no source) is 0.777 ml. */
    @Test
    void aBottleHoldsAtLeastWhatOneLongestOnUses() {
        final In full = In.of(InputFamily.BUTTON, "full").use(Input.Use.REFILL);
        Sketch.rig().with(full).with(fog(0.776e-6)).finds(new Refills(), """
                        ERROR holds-too-little at output.fog/holds
                        "fog" holds 0.8 g, and its longest-on uses 0.8 g
                        why: it is refused while less is left than one longest-on uses, so it would never start
                        fix: make longest-on shorter, or fit a larger bottle or tray
                        """);
        Sketch.rig().with(full).with(fog(0.777e-6)).isFineFor(new Refills());
    }
}
