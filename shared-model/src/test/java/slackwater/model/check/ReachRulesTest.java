package slackwater.model.check;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slackwater.model.Begun;
import slackwater.model.Return;
import slackwater.model.kind.Family;
import slackwater.model.quantity.Dimension;

/** The reach of what moves (S1): distances after handbook 6.7, ISO 13855, with K = 2000 mm/s (project caution, no source). */
class ReachRulesTest {

    /** T = 20 ms + one scan of 10 ms + 400 ms = 0.43 s; 860 mm + 850 mm = 1710 mm. */
    @Test
    void beamsHangFarEnoughAway() {
        final Out lid = Out.valve("lid").timeToRestMs(400);
        Sketch.rig()
                .with(In.beam("reach").reachOf("lid").respondsInMs(20).distanceMm(1_709))
                .with(lid)
                .finds(new ReachDistance(), "@121");
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
                .finds(new ReachDistance(), "@122");
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
                .finds(new ReachDistance(), "@121");
    }

    @Test
    void theTimeOfTheReturnStandsInForATimeToRest() {
        Sketch.rig()
                .with(In.beam("reach").reachOf("lid").respondsInMs(20).distanceMm(1_709))
                .with(Out.valve("lid").fact("returns-in", Duration.ofMillis(400)))
                .finds(new ReachDistance(), "@121");
    }

    @Test
    void whatIsLeftOutIsNamed() {
        Sketch.rig()
                .with(In.beam("reach").reachOf("lid"))
                .with(Out.valve("lid"))
                .finds(new ReachDistance(), "@123");
    }

    @ParameterizedTest
    @EnumSource(
            value = Family.class,
            names = {"VALVE", "RELEASE", "CONTACT"})
    void whatReachesPeopleIsWatched(final Family family) {
        Sketch.rig().with(Out.of(family, "lid").reach(0.7)).finds(new ReachWatched(), "@124");
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
        lid(Return.FALLS, 0, 0.7).permissive(Begun.REST, "lid", "not curtain").finds(new RestIntoReach(), "@125");
        lid(Return.SPRING_RETURNS, 2.5, 0.7)
                .permissive(Begun.REST, "lid", "not curtain")
                .finds(new RestIntoReach(), "@125");
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
        lid(Return.FALLS, 2.5, 0.7).trip(Begun.REST, "lid", "curtain").finds(new RestIntoReach(), "@126");
        lid(Return.FALLS, 2.5, 0.7).trip(Begun.REST, "lid", "rain").isFineFor(new RestIntoReach());
    }

    @Test
    void anotherPermissiveThatSendsItToRestIsLookedAt() {
        lid(Return.FALLS, 2.5, 0.7).permissive(Begun.REST, "lid", "not rain").finds(new RestIntoReach(), "@127");
    }
}
