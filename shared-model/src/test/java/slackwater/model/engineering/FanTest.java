package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import slackwater.model.engineering.Fan.Stretch;
import slackwater.model.engineering.Fan.Way;

/** A fan against ways whose crossings are plain geometry, and against handbook 5.3 where it has the figure. */
class FanTest {
    private static final double EXACT_M = 1e-9;
    /** At the origin, looking north, 60 degrees, 7 m. */
    private static final Fan NORTHWARD = new Fan(0, 0, 90, 60, 7);

    private static void assertSeen(final Fan fan, final Way way, final double fromM, final double toM) {
        final Stretch stretch = fan.seen(way).orElseThrow();
        assertThat(stretch.fromM()).isCloseTo(fromM, within(EXACT_M));
        assertThat(stretch.toM()).isCloseTo(toM, within(EXACT_M));
    }

    /** Handbook 5.3 case 2: 3.4641 m wide at 3 m. */
    @Test
    void aWayAcrossSeesTheFansWidth() {
        final Way across = new Way(-10, 3, 10, 3);

        assertThat(NORTHWARD.seen(across).orElseThrow().lengthM())
                .isCloseTo(Detection.fanWidthM(60, 3), within(EXACT_M));
        assertSeen(NORTHWARD, across, 10 - Math.sqrt(3), 10 + Math.sqrt(3));
    }

    @Test
    void aWayStraightTowardsTheSensorIsSeenFromItsRangeOn() {
        assertSeen(NORTHWARD, new Way(0, 10, 0, -5), 3, 10);
    }

    @Test
    void aWayBehindTheSensorIsNotSeen() {
        assertThat(NORTHWARD.seen(new Way(-10, -1, 10, -1))).isEmpty();
        assertThat(NORTHWARD.seen(new Way(0, -1, 0, -5))).isEmpty();
    }

    @Test
    void aWayFartherThanTheRangeIsNotSeenAndOneAtTheRangeIsTouched() {
        assertThat(NORTHWARD.seen(new Way(-10, 7.01, 10, 7.01))).isEmpty();
        assertSeen(NORTHWARD, new Way(-10, 7, 10, 7), 10, 10);
    }

    @Test
    void aWayThatBeginsOrEndsInTheFanIsSeenOnlyWhereItIs() {
        assertSeen(NORTHWARD, new Way(0, 3, 10, 3), 0, Math.sqrt(3));
        assertSeen(NORTHWARD, new Way(-10, 3, 0, 3), 10 - Math.sqrt(3), 10);
        assertThat(NORTHWARD.seen(new Way(-10, 3, -2, 3))).isEmpty();
    }

    /** The right edge of a fan that looks east with 90 degrees runs south-east. */
    @Test
    void aWayBesideAnEdgeIsSeenOnTheInnerSideOnly() {
        final Fan eastward = new Fan(0, 0, 0, 90, 10);

        assertThat(eastward.seen(new Way(1, -1.01, 5, -5.01))).isEmpty();
        assertSeen(eastward, new Way(1, -0.99, 5, -4.99), 0, Math.sqrt(32));
        assertThat(eastward.seen(new Way(1, 1.01, 5, 5.01))).isEmpty();
        assertSeen(eastward, new Way(1, 0.99, 5, 4.99), 0, Math.sqrt(32));
    }

    @Test
    void aFanElsewhereSeesAsOneAtTheOriginDoes() {
        assertSeen(new Fan(100, -50, 90, 60, 7), new Way(90, -47, 110, -47), 10 - Math.sqrt(3), 10 + Math.sqrt(3));
    }

    @Test
    void halfACircleSeesItsWholeSide() {
        assertSeen(new Fan(0, 0, 90, 180, 5), new Way(-10, 3, 10, 3), 6, 14);
    }

    @Test
    void figuresOutsideTheirRangeAreNamed() {
        assertThatThrownBy(() -> new Fan(0, 0, 0, 181, 7)).hasMessage("angleDeg=181.0 is not within 0.0 to 180.0");
        assertThatThrownBy(() -> new Fan(0, 0, 0, 0, 7)).hasMessage("angleDeg=0.0 is not above 0");
        assertThatThrownBy(() -> new Fan(0, 0, 0, 60, 0)).hasMessage("rangeM=0.0 is not above 0");
        assertThatThrownBy(() -> new Fan(0, Double.NaN, 0, 60, 7))
                .hasMessage("xM=0.0, yM=NaN, facingDeg=0.0 is no place");
        assertThatThrownBy(() -> new Way(1, 2, 1, 2)).hasMessage("length of the way=0.0 is not above 0");
    }
}
