package slackwater.simulator.visitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.model.Point;
import slackwater.model.Ray;
import slackwater.model.WalkWay;

class CrowdFiguresTest {
    private static final Ray LINE = new Ray(new Point(5, -2), new Point(5, 2), 0);

    private static Visitor walker(final int id, final double fromS, final double speedMps, final double yM) {
        return Visitor.of(
                new Visitor.Body(id, id, Being.ADULT, 1.75),
                new long[] {Seconds.ns(fromS), Seconds.ns(fromS + 10 / speedMps)},
                new double[] {0, 10},
                new double[] {yM, yM});
    }

    @Test
    void speedsHeadwaysAndSpacingsAreMedians() {
        // All at 1 m/s but the last: crossings at 5, 6, 9 s and, at 2 m/s, 12.5 s.
        final Crowd crowd =
                Crowd.of(List.of(walker(1, 0, 1, 0), walker(2, 1, 1, 0), walker(3, 4, 1, 0), walker(4, 10, 2, 0)));
        final CrowdFigures figures = CrowdFigures.of(crowd, LINE);
        assertThat(figures.people()).isEqualTo(4);
        assertThat(figures.medianSpeedMps().orElseThrow()).isCloseTo(1, within(1e-9));
        assertThat(figures.medianHeadwayS().orElseThrow()).isCloseTo(3, within(1e-9));
        // Nearest at the crossing: 1 m, 1 m, 3 m, and 3.5 m, for by then the third is at 8.5 m.
        assertThat(figures.medianSpacingM().orElseThrow()).isCloseTo(2, within(1e-9));
        assertThat(figures.movingShare()).isEqualTo(1);
    }

    @Test
    void standingCountsIntoSpeedAndIntoTheShareOfTimeMoving() {
        final Visitor lingers = Visitor.of(
                new Visitor.Body(1, 1, Being.ADULT, 1.75),
                new long[] {0, Seconds.ns(5), Seconds.ns(10), Seconds.ns(20)},
                new double[] {0, 5, 5, 15},
                new double[] {0, 0, 0, 0});
        final CrowdFigures figures = CrowdFigures.of(Crowd.of(List.of(lingers)), LINE);
        assertThat(figures.medianSpeedMps().orElseThrow()).isCloseTo(0.75, within(1e-9));
        assertThat(figures.movingShare()).isCloseTo(0.75, within(1e-9));
        assertThat(figures.medianHeadwayS()).isEmpty();
        assertThat(figures.medianSpacingM()).isEmpty();
    }

    @Test
    void whoPassesBesideTheLineDoesNotCrossIt() {
        assertThat(CrowdFigures.crossingNs(walker(1, 0, 1, 1.999), LINE)).hasValue(Seconds.ns(5));
        assertThat(CrowdFigures.crossingNs(walker(1, 0, 1, 2.001), LINE)).isEmpty();
    }

    @Test
    void nobodyHasNoFigures() {
        final CrowdFigures figures = CrowdFigures.of(Crowd.NOBODY, LINE);
        assertThat(figures.people()).isEqualTo(0);
        assertThat(figures.medianSpeedMps()).isEmpty();
        assertThat(figures.movingShare()).isEqualTo(0);
        assertThatThrownBy(() -> CrowdFigures.midLine(Crowd.NOBODY)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theMiddleOfAWayAndOfACrowdAreSquareToIt() {
        final WalkWay way = new WalkWay(List.of(new Point(0, 0), new Point(10, 0)), 1.8, 0);
        assertThat(CrowdFigures.midLine(way)).isEqualTo(new Ray(new Point(5, 0.9), new Point(5, -0.9), 0));
        final Crowd crowd = Crowd.of(List.of(walker(1, 0, 1, -2), walker(2, 0, 1, 2)));
        assertThat(CrowdFigures.midLine(crowd)).isEqualTo(LINE);
    }
}
