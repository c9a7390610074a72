package slackwater.simulator.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slackwater.model.Field;
import slackwater.model.Point;
import slackwater.model.Ray;
import slackwater.model.Weather;
import slackwater.model.kind.Family;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.yard.RigWords.Part;

/** Fog that drifts, the wind, and what both do to sensors (S23). A beam runs along x at y = 0; the wind blows towards it. */
final class YardFogTest {
    private static final long S = RigWords.S;
    private static final long MS = RigWords.MS;
    private static final int PUMP = 0;
    private static final int FAN = 1;
    private static final int BEAM = 0;
    private static final double PLENTY_KG_PER_S = 40e-3 / 60;

    @Test
    void fogReachesABeamDownwindAfterTheTimeThatTheWindTakesAndPasses() {
        final Yard yard = yard(1, 90, PLENTY_KG_PER_S, 1);
        final List<Double> edges = burst(yard, 100, 2);
        assertThat(edges).hasSize(2);
        // One metre less three times a puff's half width at 0.4 to 1.6 m/s, and at most the whole metre.
        assertThat(edges.get(0) - 100).isBetween(0.3, 2.5);
        assertThat(edges.get(1) - edges.get(0)).isBetween(0.5, 6.0);
    }

    @Test
    void fogDriftsAwayFromABeamUpwind() {
        assertThat(burst(yard(1, 270, PLENTY_KG_PER_S, 1), 100, 2)).isEmpty();
    }

    @Test
    void fogThatHasThinnedOutOnALongWayBlocksNothing() {
        assertThat(burst(yard(6, 90, 12e-3 / 60, 1), 100, 2)).isEmpty();
    }

    @Test
    void aBeamIsBlockedFromItsThresholdAndNotJustBelow() {
        // One puff at rest on the beam: mass * 3000 m2/kg / (2 pi 0.15^2 m2), of which 0.5 blocks.
        final double blocksKgPerS = 0.5 * 2 * Math.PI * 0.15 * 0.15 / 3_000 / 0.4 / 0.5;
        assertThat(puffOnBeam(blocksKgPerS * 1.001)).isTrue();
        assertThat(puffOnBeam(blocksKgPerS * 0.999)).isFalse();
    }

    @Test
    void aFanDrivesTheFogAwayBeforeItReachesTheBeam() {
        final Yard calm = yard(1, 90, PLENTY_KG_PER_S, 0.3);
        final Yard blown = calm.copy();
        blown.setOutputHigh(FAN, true);
        assertThat(burst(calm, 100, 2)).isNotEmpty();
        assertThat(burst(blown, 100, 2)).isEmpty();
    }

    @Test
    void whileThereIsNoFogTheYardSleeps() {
        final Yard yard = yard(1, 90, PLENTY_KG_PER_S, 1);
        burst(yard, 100, 2);
        assertThat(yard.wakeNs()).isEqualTo(Plant.ASLEEP);
    }

    @Test
    void theWindIsTheMeanOfTheEveningOverAWhileAndNeverFarFromIt() {
        final Wind wind = new Wind(Optional.of(new Weather(15, 0.6, 2, 0)), 7);
        double sum = 0;
        for (int i = 0; i < 3_600; i++) {
            final double speed = wind.speedMPerS(i * S);
            assertThat(speed).isBetween(0.8, 3.2);
            sum += speed;
        }
        assertThat(sum / 3_600).isCloseTo(2, within(0.05));
        assertThat(wind.speedMPerS(5 * S))
                .isNotEqualTo(new Wind(Optional.of(new Weather(15, 0.6, 2, 0)), 8).speedMPerS(5 * S));
    }

    @Test
    void windFromAlongXBlowsTowardsMinusX() {
        final Wind wind = new Wind(Optional.of(new Weather(15, 0.6, 2, 0)), 7);
        assertThat(StrictMath.cos(wind.towardsRad(3 * S))).isLessThan(-0.8);
    }

    @Test
    void aMotionSensorFiresAtNobodyAsOftenAsItSaysAndMoreOftenInWind() {
        assertThat(falseTriggers(0, 0.5)).isZero();
        // 100 hours; at the usual 0.5 m/s as told, at 2 m/s 2.5 times, in calm half: within four standard deviations.
        assertThat(falseTriggers(4, 0.5)).isBetween(320, 480);
        assertThat(falseTriggers(4, 2)).isBetween(870, 1_130);
        assertThat(falseTriggers(4, 0)).isBetween(140, 260);
    }

    @Test
    void aSensorThatSaysSoFiresAtNobodyThroughTheYard() {
        final Yard yard = new Yard(
                new RigWords()
                        .controller("porch", false)
                        .motion("path", new Field(new Point(5, 2), 270, 60, 4), Fact.FALSE_AN_HOUR, 6L)
                        .rig(),
                Crowd.NOBODY,
                1);
        yard.step(100 * S);
        int pulses = 0;
        boolean was = false;
        while (yard.nowNs() < 10 * 3_600 * S) {
            yard.step(yard.wakeNs());
            pulses += yard.isActive(0) && !was ? 1 : 0;
            was = yard.isActive(0);
        }
        assertThat(pulses).isBetween(30, 95);
    }

    @Test
    void fogThatPassesCloseSetsOffAMotionSensorRarely() {
        final Yard yard = new Yard(
                new RigWords()
                        .controller("porch", false)
                        .weather(new Weather(15, 0.6, 0.5, 90))
                        .output(Part.of(Family.PUMP, "pump").standing(new Point(0, 1), 0))
                        .motion("near", new Field(new Point(0, 0.6), 270, 60, 4))
                        .motion("far", new Field(new Point(9, 0.6), 270, 60, 4))
                        .rig(),
                Crowd.NOBODY,
                3);
        int near = 0;
        int far = 0;
        final int bursts = 200;
        for (int i = 0; i < bursts; i++) {
            final long fromNs = (100 + 20L * i) * S;
            yard.step(fromNs);
            yard.setOutputHigh(PUMP, true);
            yard.step(fromNs + 500 * MS);
            yard.setOutputHigh(PUMP, false);
            boolean isNear = false;
            for (long atNs = fromNs + 500 * MS; atNs < fromNs + 15 * S; atNs += 100 * MS) {
                yard.step(atNs);
                isNear |= yard.isActive(0);
                far += yard.isActive(1) ? 1 : 0;
            }
            near += isNear ? 1 : 0;
        }
        assertThat(near).isBetween(2, 30);
        assertThat(far).isZero();
    }

    @Test
    void aBeamAnswersSoMuchLaterAsItSaysAndDoesNotTellWhatIsShorter() {
        final Yard yard = beamThatResponds(Duration.ofMillis(25), 1.7);
        final Yard prompt = beamThatResponds(Duration.ZERO, 1.7);
        final List<Double> late = edgesS(yard, BEAM, 20);
        final List<Double> soon = edgesS(prompt, BEAM, 20);
        assertThat(soon).hasSize(2);
        assertThat(late.get(0) - soon.get(0)).isCloseTo(0.03, within(1e-9));
        assertThat(late.get(1) - soon.get(1)).isCloseTo(0.03, within(1e-9));
        assertThat(edgesS(beamThatResponds(Duration.ofSeconds(2), 1.7), BEAM, 20))
                .isEmpty();
    }

    @Test
    void aStrobeFlashesByItselfWhilePoweredTheFirstTimeAtOnce() {
        // S14: 8 Hz powered for 1 s is 8 flashes; one at exactly 1 s would be the ninth.
        final Yard yard = strobe(8.0);
        yard.step(10 * MS);
        assertThat(yard.flashesSoFar(0)).isEqualTo(1);
        yard.step(1_000 * MS);
        assertThat(yard.flashesSoFar(0)).isEqualTo(8);
        yard.setOutputHigh(0, false);
        yard.step(1_010 * MS);
        assertThat(yard.flashesSoFar(0)).isEqualTo(8);
        yard.step(60 * S);
        assertThat(yard.flashesSoFar(0)).isEqualTo(8);
        yard.setOutputHigh(0, true);
        yard.step(60 * S + 130 * MS);
        assertThat(yard.flashesSoFar(0)).isEqualTo(9);
        yard.step(60 * S + 140 * MS);
        assertThat(yard.flashesSoFar(0)).isEqualTo(10);
    }

    @Test
    void aStrobeWithoutARateFlashesOnceAPulse() {
        final Yard yard = strobe(0.0);
        yard.step(5 * S);
        yard.setOutputHigh(0, false);
        yard.step(6 * S);
        yard.setOutputHigh(0, true);
        yard.step(7 * S);
        assertThat(yard.flashesSoFar(0)).isEqualTo(2);
    }

    private static Yard strobe(final double rateHz) {
        final Yard yard = new Yard(
                new RigWords()
                        .controller("porch", false)
                        .output(Family.STROBE, "flash", Fact.FLASH_RATE, rateHz)
                        .rig(),
                Crowd.NOBODY,
                1);
        yard.setOutputHigh(0, true);
        return yard;
    }

    private static Yard beamThatResponds(final Duration in, final double heightM) {
        return new Yard(
                new RigWords()
                        .controller("porch", false)
                        .beam("beam", new Ray(new Point(6, -1), new Point(6, 1), 0.4), Fact.RESPONDS_IN, in)
                        .rig(),
                Crowd.of(List.of(RigWords.walker(S, 0, 10, heightM))),
                1);
    }

    private static int falseTriggers(final int perHour, final double windMPerS) {
        final FalseTriggers triggers =
                new FalseTriggers(0, perHour, new Wind(Optional.of(new Weather(15, 0.6, windMPerS, 0)), 1), 1);
        int count = 0;
        for (long atNs = triggers.afterNs(-1); atNs < 100 * 3_600 * S; atNs = triggers.afterNs(atNs)) {
            count += triggers.isAt(atNs) ? 1 : 0;
        }
        return count;
    }

    private static boolean puffOnBeam(final double flowKgPerS) {
        final Yard yard = yard(0, 90, flowKgPerS, 0);
        yard.step(S);
        yard.setOutputHigh(PUMP, true);
        yard.step(S + 400 * MS);
        return yard.isActive(BEAM);
    }

    private static List<Double> burst(final Yard yard, final int fromS, final int forS) {
        yard.step(fromS * S);
        yard.setOutputHigh(PUMP, true);
        final List<Double> edges = edgesS(yard, BEAM, fromS + forS);
        yard.setOutputHigh(PUMP, false);
        edges.addAll(edgesS(yard, BEAM, fromS + forS + 20));
        return edges;
    }

    private static List<Double> edgesS(final Yard yard, final int input, final int untilS) {
        final List<Double> edges = new ArrayList<>();
        boolean was = yard.isActive(input);
        for (long atNs = yard.nowNs(); atNs <= untilS * S; atNs += 10 * MS) {
            yard.step(atNs);
            if (yard.isActive(input) != was) {
                was = !was;
                edges.add(atNs / 1e9);
            }
        }
        return edges;
    }

    private static Yard yard(
            final double pumpYM, final double windFromDeg, final double flowKgPerS, final double windMPerS) {
        return new Yard(
                new RigWords()
                        .controller("porch", false)
                        .weather(new Weather(15, 0.6, windMPerS, windFromDeg))
                        .output(Part.of(Family.PUMP, "pump").standing(new Point(0, pumpYM), 0), Fact.FLOW, flowKgPerS)
                        .output(Part.of(Family.FAN, "fan").standing(new Point(0, pumpYM - 1), 0))
                        .beam("beam", new Ray(new Point(-3, 0), new Point(3, 0), 0.4))
                        .rig(),
                Crowd.NOBODY,
                4);
    }
}
