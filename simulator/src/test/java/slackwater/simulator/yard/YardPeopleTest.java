package slackwater.simulator.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.model.Field;
import slackwater.model.Point;
import slackwater.model.Ray;
import slackwater.model.kind.Family;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.visitor.Visitor;
import slackwater.simulator.yard.RigWords.Part;

final class YardPeopleTest {
    private static final long S = RigWords.S;
    private static final long MS = RigWords.MS;
    private static final int MOTION = 0;
    private static final int LOW_BEAM = 1;
    private static final int HIGH_BEAM = 2;

    /** After the sensors' warm-up of 60 s and the longest pulse. */
    private static final long LATER_NS = 70 * S;

    @Test
    void aMotionSensorSeesSomebodyWhoWalksThroughItsFieldAndTwoSecondsLonger() {
        // Two metres from the way, 60 degrees: 2.31 m wide there (handbook 5.3: 2 d tan(angle / 2)), 1.78 s at 1.3 m/s.
        final Yard yard = yard(RigWords.walker(LATER_NS, 0, 10, 1.7));

        final List<Double> edges = edgesS(yard, MOTION, 90 * S);

        assertThat(edges).hasSize(2);
        assertThat(edges.get(0)).isCloseTo(70 + (5 - 1.155) / 1.3, within(0.06));
        assertThat(edges.get(1)).isCloseTo(70 + (5 + 1.155) / 1.3 + 2, within(0.06));
    }

    @Test
    void aMotionSensorDoesNotSeeSomebodyWhoStands() {
        final Yard yard = yard(RigWords.stander(LATER_NS, LATER_NS + 20 * S, 5));

        assertThat(edgesS(yard, MOTION, 100 * S)).isEmpty();
    }

    @Test
    void aTallBodyCutsBothBeamsAndASmallOneOnlyTheLowOne() {
        final Yard tall = yard(RigWords.walker(LATER_NS, 0, 10, 1.7));
        final Yard small = yard(RigWords.walker(LATER_NS, 0, 10, 0.9));

        assertThat(edgesS(tall.copy(), LOW_BEAM, 90 * S)).hasSize(2);
        assertThat(edgesS(tall, HIGH_BEAM, 90 * S)).hasSize(2);
        assertThat(edgesS(small.copy(), LOW_BEAM, 90 * S)).hasSize(2);
        assertThat(edgesS(small, HIGH_BEAM, 90 * S)).isEmpty();
    }

    @Test
    void peopleOfAnyHeightAreCountedInsideTheReachAndNobodyAfterTheyHaveLeft() {
        final Yard yard = yard(
                RigWords.stander(LATER_NS, LATER_NS + 5 * S, 8),
                RigWords.walker(LATER_NS, 8, 30, 0.5),
                RigWords.stander(LATER_NS, LATER_NS + 5 * S, 9));

        yard.step(LATER_NS);
        assertThat(yard.peopleInReach(0)).isEqualTo(3);
        yard.step(LATER_NS + S);
        assertThat(yard.peopleInReach(0)).isEqualTo(2);
        assertThat(yard.present()).isEqualTo(3);
        yard.step(LATER_NS + 5 * S - 10 * MS);
        assertThat(yard.peopleInReach(0)).isEqualTo(2);
        yard.step(LATER_NS + 5 * S);
        assertThat(yard.peopleInReach(0)).isZero();
        yard.step(LATER_NS + 60 * S);
        assertThat(yard.present()).isZero();
    }

    @Test
    void whileNobodyIsThereTheYardSleepsUntilTheNextArrival() {
        final Yard yard = yard(RigWords.walker(LATER_NS + 3 * MS, 0, 10, 1.7));

        assertThat(yard.wakeNs()).isEqualTo(LATER_NS + 50 * MS);
    }

    @Test
    void aPropThatMovesInsideTheFieldOfASensorIsNotSeenByIt() {
        final Yard yard = new Yard(
                words().output(Part.of(Family.VALVE, "in-view").standing(new Point(5, 0), 0.7), Fact.TRAVEL, 0.25)
                        .rig(),
                Crowd.NOBODY,
                1);
        yard.step(LATER_NS);
        yard.setOutputHigh(1, true);
        yard.step(LATER_NS + 200 * MS);
        assertThat(yard.isMoving(1)).isTrue();

        assertThat(edgesS(yard, MOTION, 90 * S)).isEmpty();
    }

    @Test
    void whileItWarmsUpASensorFiresByItselfNeverToThreeTimesAndNeverLater() {
        // Handbook 5.1 case 5: about 60 s, output may fire 0..3 times.
        final boolean[] seen = new boolean[4];
        for (int seed = 0; seed < 60; seed++) {
            final Yard yard = new Yard(words().rig(), Crowd.NOBODY, seed);
            final boolean wasActive = yard.isActive(MOTION);
            final List<Double> edges = edgesS(yard, MOTION, 300 * S);
            final int pulses = (edges.size() + (wasActive ? 1 : 0)) / 2;
            assertThat(pulses).isBetween(0, 3);
            assertThat(edges).allMatch(atS -> atS < 62.1);
            seen[pulses] = true;
        }
        assertThat(seen).containsExactly(true, true, true, true);
    }

    @Test
    void itRainsNowAndThenAndForAWhile() {
        final RainSensor rain = new RainSensor(0, 5);
        int wetMinutes = 0;
        int showers = 0;
        boolean wasWet = false;
        for (long minute = 0; minute < 60 * 1_000; minute++) {
            final boolean isWet = rain.isRaining(minute * 60 * S);
            wetMinutes += isWet ? 1 : 0;
            showers += isWet && !wasWet ? 1 : 0;
            wasWet = isWet;
        }

        assertThat(showers).isBetween(80, 160);
        assertThat((double) wetMinutes / showers).isBetween(5.0, 9.0);
    }

    private static List<Double> edgesS(final Yard yard, final int input, final long untilNs) {
        final List<Double> edges = new ArrayList<>();
        boolean was = yard.isActive(input);
        for (long atNs = yard.nowNs(); atNs <= untilNs; atNs += 10 * MS) {
            yard.step(atNs);
            if (yard.isActive(input) != was) {
                was = !was;
                edges.add(atNs / 1e9);
            }
        }
        return edges;
    }

    private static Yard yard(final Visitor... visitors) {
        final Yard yard = new Yard(words().rig(), Crowd.of(List.of(visitors)), 1);
        yard.step(LATER_NS - S);
        return yard;
    }

    private static RigWords words() {
        return new RigWords()
                .controller("porch", false)
                .motion("path", new Field(new Point(5, 2), 270, 60, 4))
                .beam("low", new Ray(new Point(6, -1), new Point(6, 1), 0.4))
                .beam("high", new Ray(new Point(6, -1), new Point(6, 1), 1.3))
                .output(Part.of(Family.LAMP, "prop").standing(new Point(8, 0), 1));
    }
}
