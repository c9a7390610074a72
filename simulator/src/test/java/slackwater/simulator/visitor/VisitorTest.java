package slackwater.simulator.visitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class VisitorTest {
    private static final double FINE = 1e-9;
    private static final Visitor.Body BODY = new Visitor.Body(3, 2, Being.ADULT, 1.75);

    /** East 4 m in 2 s, 3 s of standing, back 2 m in 2 s. */
    private static final Visitor BACK_AGAIN = Visitor.of(
            BODY,
            new long[] {Seconds.ns(10), Seconds.ns(12), Seconds.ns(15), Seconds.ns(17)},
            new double[] {0, 4, 4, 2},
            new double[] {1, 1, 1, 1});

    @Test
    void isHereFromArrivingUntilJustBeforeLeaving() {
        assertThat(BACK_AGAIN.isHere(Seconds.ns(10) - 1)).isFalse();
        assertThat(BACK_AGAIN.isHere(Seconds.ns(10))).isTrue();
        assertThat(BACK_AGAIN.isHere(Seconds.ns(17) - 1)).isTrue();
        assertThat(BACK_AGAIN.isHere(Seconds.ns(17))).isFalse();
    }

    @Test
    void walksStraightFromWaypointToWaypoint() {
        assertThat(BACK_AGAIN.xM(Seconds.ns(10.5))).isCloseTo(1, within(FINE));
        assertThat(BACK_AGAIN.xM(Seconds.ns(12))).isCloseTo(4, within(FINE));
        assertThat(BACK_AGAIN.xM(Seconds.ns(14))).isCloseTo(4, within(FINE));
        assertThat(BACK_AGAIN.xM(Seconds.ns(16))).isCloseTo(3, within(FINE));
        assertThat(BACK_AGAIN.yM(Seconds.ns(16))).isCloseTo(1, within(FINE));
    }

    @Test
    void staysAtTheEndsBeforeAndAfter() {
        assertThat(BACK_AGAIN.xM(0)).isEqualTo(0);
        assertThat(BACK_AGAIN.xM(Seconds.ns(99))).isEqualTo(2);
    }

    @Test
    void knowsItsSpeedItsPathAndItsStay() {
        assertThat(BACK_AGAIN.speedMps(Seconds.ns(11))).isCloseTo(2, within(FINE));
        assertThat(BACK_AGAIN.speedMps(Seconds.ns(13))).isEqualTo(0);
        assertThat(BACK_AGAIN.speedMps(Seconds.ns(15))).isCloseTo(1, within(FINE));
        assertThat(BACK_AGAIN.speedMps(Seconds.ns(17))).isEqualTo(0);
        assertThat(BACK_AGAIN.pathM()).isCloseTo(6, within(FINE));
        assertThat(BACK_AGAIN.stayS()).isCloseTo(7, within(FINE));
    }

    @Test
    void keepsItsWaypointsWhenTheCallersArraysChange() {
        final double[] xM = {0, 1};
        final Visitor visitor = Visitor.of(BODY, new long[] {0, 1}, xM, new double[] {0, 0});
        xM[0] = 99;
        assertThat(visitor.xM(0)).isEqualTo(0);
    }

    @Test
    void isEqualOnlyWithTheSameBodyAndTheSameWay() {
        final long[] atNs = {0, 5};
        final double[] xM = {0, 1};
        final double[] yM = {0, 0};
        assertThat(Visitor.of(BODY, atNs, xM, yM)).isEqualTo(Visitor.of(BODY, atNs, xM, yM));
        assertThat(Visitor.of(BODY, atNs, xM, yM)).isNotEqualTo(Visitor.of(BODY, atNs, xM, xM));
        assertThat(Visitor.of(BODY, atNs, xM, yM)).isNotEqualTo(Visitor.of(BODY, atNs, yM, yM));
        assertThat(Visitor.of(BODY, atNs, xM, yM)).isNotEqualTo(Visitor.of(BODY, new long[] {0, 6}, xM, yM));
        final Visitor.Body taller = new Visitor.Body(3, 2, Being.ADULT, 1.76);
        assertThat(Visitor.of(BODY, atNs, xM, yM)).isNotEqualTo(Visitor.of(taller, atNs, xM, yM));
    }

    @Test
    void refusesWaypointsThatAreNotInOrderOfTime() {
        final double[] twice = {0, 0};
        assertThatThrownBy(() -> Visitor.of(BODY, new long[] {5, 5}, twice, twice))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("visitor 3: waypoint 1 at 5 ns is not later than 5 ns");
        assertThatThrownBy(() -> Visitor.of(BODY, new long[] {5}, new double[] {0}, new double[] {0}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("visitor 3 needs two waypoints or more, but has 1 times, 1 x and 1 y");
    }

    @Test
    void refusesABodyWithoutHeight() {
        assertThatThrownBy(() -> new Visitor.Body(3, 2, Being.DOG, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("heightM must be above 0 but was 0.0 for visitor 3");
    }
}
