package slackwater.simulator.visitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoublePredicate;
import java.util.function.LongPredicate;
import org.junit.jupiter.api.Test;
import slackwater.model.Field;
import slackwater.model.Point;
import slackwater.model.Ray;

class SightTest {
    private static final double FINE = 1e-6;
    private static final Point ORIGIN = new Point(0, 0);
    private static final Ray BEAM = new Ray(new Point(5.5, -1), new Point(5.5, 1), 1.3);

    /** Length of the stretch of a line on which something holds, found to a tenth of a millimetre. */
    private static double stretchM(final DoublePredicate holds) {
        final double stepM = 1e-4;
        int count = 0;
        for (int i = -100_000; i <= 100_000; i++) {
            count += holds.test(i * stepM) ? 1 : 0;
        }
        return count * stepM;
    }

    @Test
    void aFanOf110DegreesIsAsWideAtThreeMetresAsHandbook53Case1Says() {
        final Cone cone = Cone.of(new Field(ORIGIN, 90, 110, 50));
        assertThat(stretchM(xM -> cone.sees(xM, 3))).isCloseTo(8.5689, within(0.0086));
    }

    @Test
    void aFanOf60DegreesIsAsWideAtThreeMetresAsHandbook53Case2Says() {
        final Cone cone = Cone.of(new Field(ORIGIN, 90, 60, 50));
        assertThat(stretchM(xM -> cone.sees(xM, 3))).isCloseTo(3.4641, within(0.0035));
    }

    @Test
    void somebodyAt1300MillimetresASecondDwellsInThatFanAsHandbook53Case3Says() {
        final Cone cone = Cone.of(new Field(ORIGIN, 90, 60, 50));
        final Visitor walker = straight(Being.ADULT, 1.75, 1.3);
        assertThat(heldS(nowNs -> cone.sees(walker.xM(nowNs) - 6.5, walker.yM(nowNs) + 3)))
                .isCloseTo(2.6647, within(0.0027));
    }

    @Test
    void aBody300MillimetresDeepBlocksABeamAsLongAsHandbook53Case4Says() {
        final Visitor walker = straight(Being.ADULT, 1.75, 1.3);
        assertThat(heldS(nowNs -> Sight.blocks(BEAM, walker.xM(nowNs), walker.yM(nowNs), walker.heightM())))
                .isCloseTo(0.23077, within(0.00023));
    }

    @Test
    void twoBeamsAMetreApartAreBrokenInTurnAsHandbook53Case5Says() {
        final Visitor walker = straight(Being.ADULT, 1.75, 1.3);
        final Ray first = new Ray(new Point(4, -1), new Point(4, 1), 0.4);
        final Ray second = new Ray(new Point(5, -1), new Point(5, 1), 0.4);
        final long betweenNs = CrowdFigures.crossingNs(walker, second).orElseThrow()
                - CrowdFigures.crossingNs(walker, first).orElseThrow();
        assertThat(betweenNs / 1e9).isCloseTo(0.76923, within(0.00077));
    }

    private static Visitor straight(final Being being, final double heightM, final double speedMps) {
        return Visitor.of(
                new Visitor.Body(1, 1, being, heightM),
                new long[] {0, Seconds.ns(13 / speedMps)},
                new double[] {0, 13},
                new double[] {0, 0});
    }

    private static double heldS(final LongPredicate holds) {
        final long stepNs = 10_000;
        long heldNs = 0;
        for (long nowNs = 0; nowNs < Seconds.ns(10); nowNs += stepNs) {
            heldNs += holds.test(nowNs) ? stepNs : 0;
        }
        return heldNs / 1e9;
    }

    @Test
    void aFieldEndsAtItsRange() {
        final Field field = new Field(new Point(1, 2), 0, 40, 4);
        assertThat(Sight.isSeenBy(field, 5, 2)).isTrue();
        assertThat(Sight.isSeenBy(field, 5 + FINE, 2)).isFalse();
    }

    @Test
    void aFieldEndsAtHalfItsAngleOnEitherSide() {
        final Field field = new Field(ORIGIN, 270, 40, 4);
        for (final double side : new double[] {-1, 1}) {
            final double edgeRad = StrictMath.toRadians(270 + side * 20);
            final double insideRad = edgeRad - side * FINE;
            final double outsideRad = edgeRad + side * FINE;
            assertThat(Sight.isSeenBy(field, 3 * StrictMath.cos(edgeRad), 3 * StrictMath.sin(edgeRad)))
                    .isTrue();
            assertThat(Sight.isSeenBy(field, 3 * StrictMath.cos(insideRad), 3 * StrictMath.sin(insideRad)))
                    .isTrue();
            assertThat(Sight.isSeenBy(field, 3 * StrictMath.cos(outsideRad), 3 * StrictMath.sin(outsideRad)))
                    .isFalse();
        }
    }

    @Test
    void aFieldOfMoreThanHalfACircleSeesSidewaysAndBackwards() {
        final Field field = new Field(ORIGIN, 0, 270, 4);
        assertThat(Sight.isSeenBy(field, -1, 1.01)).isTrue();
        assertThat(Sight.isSeenBy(field, -1, 0.99)).isFalse();
        assertThat(Sight.isSeenBy(new Field(ORIGIN, 0, 360, 4), -3.9, 0)).isTrue();
    }

    @Test
    void aBodyBlocksABeamUpToItsRadiusAndNoFarther() {
        assertThat(Sight.blocks(BEAM, 5.5 - 0.149999, 0, 1.75)).isTrue();
        assertThat(Sight.blocks(BEAM, 5.5 - 0.150001, 0, 1.75)).isFalse();
    }

    @Test
    void aBeamEndsWhereItsSegmentEnds() {
        assertThat(Sight.blocks(BEAM, 5.5, 1.149999, 1.75)).isTrue();
        assertThat(Sight.blocks(BEAM, 5.5, 1.150001, 1.75)).isFalse();
        assertThat(Sight.blocks(BEAM, 5.5, -1.150001, 1.75)).isFalse();
    }

    @Test
    void nobodyUpToTheBeamsHeightBlocksIt() {
        assertThat(Sight.blocks(BEAM, 5.5, 0, 1.3)).isFalse();
        assertThat(Sight.blocks(BEAM, 5.5, 0, 1.3001)).isTrue();
    }

    @Test
    void aBeamOfNoLengthIsAPoint() {
        final Ray point = new Ray(ORIGIN, ORIGIN, 0.4);
        assertThat(Sight.blocks(point, 0.1, 0.1, 1.75)).isTrue();
        assertThat(Sight.blocks(point, 0.11, 0.11, 1.75)).isFalse();
    }

    @Test
    void aReachHoldsItsEdgeAndNothingBeyond() {
        assertThat(Sight.isWithin(new Point(8, 3), 0.5, 8.5, 3)).isTrue();
        assertThat(Sight.isWithin(new Point(8, 3), 0.5, 8.5 + FINE, 3)).isFalse();
    }

    @Test
    void somebodyWhoStandsIsNotMoving() {
        final Visitor lingers = Visitor.of(
                new Visitor.Body(1, 1, Being.ADULT, 1.75),
                new long[] {0, Seconds.ns(2), Seconds.ns(5), Seconds.ns(7)},
                new double[] {0, 2, 2, 4},
                new double[] {0, 0, 0, 0});
        assertThat(Sight.isMoving(lingers, Seconds.ns(2) - 1)).isTrue();
        assertThat(Sight.isMoving(lingers, Seconds.ns(2))).isFalse();
        assertThat(Sight.isMoving(lingers, Seconds.ns(5) - 1)).isFalse();
        assertThat(Sight.isMoving(lingers, Seconds.ns(5))).isTrue();
        assertThat(Sight.isMoving(lingers, Seconds.ns(7))).isFalse();
    }
}
