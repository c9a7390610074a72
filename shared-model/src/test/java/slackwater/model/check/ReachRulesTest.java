package slackwater.model.check;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slackwater.model.Begun;
import slackwater.model.Return;
import slackwater.model.kind.Family;
import slackwater.model.quantity.Dimension;

/**
 * The reach of what moves (S1): distances after handbook 6.7, ISO 13855, with K = 2000 mm/s (project caution, no
 * source).
 */
class ReachRulesTest {
    private static final String TOO_NEAR = """
            ERROR reach-too-near at input.reach/distance
            "reach" hangs 1709 mm before "lid", and 1710 mm are needed
            why: a running child gets there before it is at rest: 2000 mm/s * 430 ms + 850 mm (handbook 6.7, ISO \
            13855; sensor, one scan and time to rest)
            fix: move the curtain to at least 1710 mm, or make the prop come to rest sooner
            """;

    private static final String RESTS_INTO_REACH = """
            ERROR rest-into-reach at permissive.guard/begun
            "guard" sends "lid" to rest in mid-stroke, and its return moves into its reach
            why: somebody who breaks "curtain" would be met by it (S1)
            fix: write begun = "finish": no new start, and a stroke that has begun ends by itself
            """;

    /** T = 20 ms + one scan of 10 ms + 400 ms = 0.43 s; 860 mm + 850 mm = 1710 mm. */
    @Test
    void beamsHangFarEnoughAway() {
        final Out lid = Out.valve("lid").timeToRestMs(400);
        Sketch.rig()
                .with(In.beam("reach").reachOf("lid").respondsInMs(20).distanceMm(1_709))
                .with(lid)
                .finds(new ReachDistance(), TOO_NEAR);
        Sketch.rig()
                .with(In.beam("reach").reachOf("lid").respondsInMs(20).distanceMm(1_710))
                .with(lid)
                .isFineFor(new ReachDistance());
    }

    /** 860 mm + 8 * (30 - 14) mm = 988 mm. */
    @Test
    void aFineCurtainMayHangNearer() {
        final Out lid = Out.valve("lid").timeToRestMs(400);
        Sketch.rig()
                .with(In.beam("reach")
                        .reachOf("lid")
                        .respondsInMs(20)
                        .resolutionMm(30)
                        .distanceMm(987))
                .with(lid)
                .finds(new ReachDistance(), """
                        ERROR reach-too-near at input.reach/distance
                        "reach" hangs 987 mm before "lid", and 988 mm are needed
                        why: a running child gets there before it is at rest: 2000 mm/s * 430 ms + 8 * (30 - 14) mm \
                        (handbook 6.7, ISO 13855; sensor, one scan and time to rest)
                        fix: move the curtain to at least 988 mm, or make the prop come to rest sooner
                        """);
        Sketch.rig()
                .with(In.beam("reach")
                        .reachOf("lid")
                        .respondsInMs(20)
                        .resolutionMm(30)
                        .distanceMm(988))
                .with(lid)
                .isFineFor(new ReachDistance());
    }

    /** 8 * (40 - 14) = 208 mm at 40 mm; above that 850 mm as for beams. */
    @Test
    void aCoarseCurtainCountsAsBeams() {
        final Out lid = Out.valve("lid").timeToRestMs(400);
        Sketch.rig()
                .with(In.beam("reach")
                        .reachOf("lid")
                        .respondsInMs(20)
                        .resolutionMm(40)
                        .distanceMm(1_068))
                .with(lid)
                .isFineFor(new ReachDistance());
        Sketch.rig()
                .with(In.beam("reach")
                        .reachOf("lid")
                        .respondsInMs(20)
                        .resolutionMm(41)
                        .distanceMm(1_709))
                .with(lid)
                .finds(new ReachDistance(), TOO_NEAR);
    }

    @Test
    void theTimeOfTheReturnStandsInForATimeToRest() {
        Sketch.rig()
                .with(In.beam("reach").reachOf("lid").respondsInMs(20).distanceMm(1_709))
                .with(Out.valve("lid").fact("returns-in", Duration.ofMillis(400)))
                .finds(new ReachDistance(), TOO_NEAR);
    }

    @Test
    void whatIsLeftOutIsNamed() {
        Sketch.rig()
                .with(In.beam("reach").reachOf("lid"))
                .with(Out.valve("lid"))
                .finds(new ReachDistance(), """
                        WARNING reach-unproven at input.reach/distance
                        "reach" does not say its distance
                        why: without it nobody knows whether the prop rests before a child who broke the curtain \
                        gets there (handbook 6.7, ISO 13855)
                        fix: add distance, from the curtain to the nearest place that moves
                        WARNING reach-unproven at input.reach/responds-in
                        "reach" does not say its responds-in
                        why: without it nobody knows whether the prop rests before a child who broke the curtain \
                        gets there (handbook 6.7, ISO 13855)
                        fix: add responds-in, the sensor's response time from its data sheet
                        WARNING reach-unproven at output.lid/time-to-rest
                        "lid" does not say its time-to-rest
                        why: without it nobody knows whether the prop rests before a child who broke the curtain \
                        gets there (handbook 6.7, ISO 13855)
                        fix: add time-to-rest, measured from switching off to standing still
                        """);
    }

    @ParameterizedTest
    @EnumSource(
            value = Family.class,
            names = {"VALVE", "RELEASE", "CONTACT"})
    void whatReachesPeopleIsWatched(final Family family) {
        Sketch.rig().with(Out.of(family, "lid").reach(0.7)).finds(new ReachWatched(), """
                        WARNING reach-unwatched at output.lid/reach
                        "lid" reaches 0.7 m around it, and no input watches that
                        why: it would move whoever stands there
                        fix: add reach-of = ["lid"] to the beam or curtain before it, or keep people out with a rail
                        """);
        Sketch.rig()
                .with(In.beam("curtain").reachOf("lid"))
                .with(Out.of(family, "lid").reach(0.7))
                .isFineFor(new ReachWatched());
    }

    @Test
    void whatReachesNobodyNeedNotBeWatched() {
        Sketch.rig().with(Out.valve("lid"), Out.lamp("glow").reach(0.7)).isFineFor(new ReachWatched());
    }

    private static Sketch lid(final Return onPowerLoss, final double massKg, final double reachM) {
        return Sketch.rig()
                .with(In.beam("curtain").reachOf("lid"), In.beam("rain"))
                .with(Out.valve("lid")
                        .onPowerLoss(onPowerLoss)
                        .fact("moving-mass", massKg, Dimension.MASS)
                        .reach(reachM));
    }

    @Test
    void aLidIsNotSentToRestOntoWhoeverBrokeTheCurtain() {
        lid(Return.FALLS, 0, 0.7)
                .permissive(Begun.REST, "lid", "not curtain")
                .finds(new RestIntoReach(), RESTS_INTO_REACH);
        lid(Return.SPRING_RETURNS, 2.5, 0.7)
                .permissive(Begun.REST, "lid", "not curtain")
                .finds(new RestIntoReach(), RESTS_INTO_REACH);
        lid(Return.FALLS, 2.5, 0.7)
                .permissive(Begun.FINISH, "lid", "not curtain")
                .isFineFor(new RestIntoReach());
        lid(Return.STAYS, 2.5, 0.7).permissive(Begun.REST, "lid", "not curtain").isFineFor(new RestIntoReach());
        lid(Return.SPRING_RETURNS, 0, 0.7)
                .permissive(Begun.REST, "lid", "not curtain")
                .isFineFor(new RestIntoReach());
        lid(Return.FALLS, 2.5, 0).permissive(Begun.REST, "lid", "not curtain").isFineFor(new RestIntoReach());
    }

    @Test
    void aTripOnTheCurtainDoesNotSendItToRestEither() {
        lid(Return.FALLS, 2.5, 0.7).trip(Begun.REST, "lid", "curtain").finds(new RestIntoReach(), """
                        ERROR rest-into-reach at trip.trip/begun
                        "trip" sends "lid" to rest in mid-stroke, and its return moves into its reach
                        why: somebody who breaks "curtain" would be met by it (S1)
                        fix: write begun = "finish": no new start, and a stroke that has begun ends by itself
                        """);
        lid(Return.FALLS, 2.5, 0.7).trip(Begun.REST, "lid", "rain").isFineFor(new RestIntoReach());
    }

    @Test
    void anotherPermissiveThatSendsItToRestIsLookedAt() {
        lid(Return.FALLS, 2.5, 0.7).permissive(Begun.REST, "lid", "not rain").finds(new RestIntoReach(), """
                        WARNING rest-into-reach at permissive.guard/begun
                        "guard" sends "lid" to rest in mid-stroke, and its return moves into its reach
                        why: whoever stands in its reach just then would be met by it (S1)
                        fix: write begun = "finish": no new start, and a stroke that has begun ends by itself
                        """);
    }
}
