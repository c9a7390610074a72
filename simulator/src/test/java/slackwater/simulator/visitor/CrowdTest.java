package slackwater.simulator.visitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class CrowdTest {
    private static Visitor visitor(final int id, final double fromS, final double untilS) {
        return Visitor.of(
                new Visitor.Body(id, id / 2, Being.ADULT, 1.75),
                new long[] {Seconds.ns(fromS), Seconds.ns(untilS)},
                new double[] {0, 10},
                new double[] {0, 0});
    }

    private static final Crowd THREE = Crowd.of(List.of(visitor(2, 5, 9), visitor(1, 5, 30), visitor(0, 7, 8)));

    @Test
    void isInTheOrderOfArrivalAndThenOfTheIds() {
        assertThat(THREE.visitors()).extracting(Visitor::id).containsExactly(1, 2, 0);
    }

    @Test
    void knowsTheNextArrivalAfterAMoment() {
        assertThat(THREE.nextArrivalNs(Seconds.ns(5) - 1)).isEqualTo(Seconds.ns(5));
        assertThat(THREE.nextArrivalNs(Seconds.ns(5))).isEqualTo(Seconds.ns(7));
        assertThat(THREE.nextArrivalNs(Seconds.ns(7) - 1)).isEqualTo(Seconds.ns(7));
        assertThat(THREE.nextArrivalNs(Seconds.ns(7))).isEqualTo(Crowd.NEVER);
        assertThat(Crowd.NOBODY.nextArrivalNs(0)).isEqualTo(Crowd.NEVER);
    }

    @Test
    void knowsTheIndexOfTheFirstAfterAMoment() {
        assertThat(THREE.firstAfter(Seconds.ns(4))).isEqualTo(0);
        assertThat(THREE.firstAfter(Seconds.ns(5))).isEqualTo(2);
        assertThat(THREE.firstAfter(Seconds.ns(7))).isEqualTo(3);
    }

    @Test
    void isFollowedByAnotherOnceItsLastHasLeftAndTheGapHasPassed() {
        final Crowd both = THREE.then(THREE, Seconds.ns(60));
        assertThat(both.visitors()).extracting(Visitor::id).containsExactly(1, 2, 0, 4, 5, 3);
        assertThat(both.visitors()).extracting(Visitor::group).containsExactly(0, 1, 0, 2, 3, 2);
        assertThat(both.visitor(3).arrivesNs()).isEqualTo(Seconds.ns(90));
        assertThat(both.visitor(5).arrivesNs()).isEqualTo(Seconds.ns(92));
        assertThat(both.lastLeavesNs()).isEqualTo(Seconds.ns(115));
    }

    @Test
    void addsNothingWhenFollowedByNobody() {
        assertThat(THREE.then(Crowd.NOBODY, 5)).isEqualTo(THREE);
        assertThat(Crowd.NOBODY.then(THREE, 5)).isEqualTo(THREE);
    }

    @Test
    void movesAsAWhole() {
        final Crowd later = THREE.movedBy(Seconds.ns(3));
        assertThat(later.visitor(0).arrivesNs()).isEqualTo(Seconds.ns(8));
        assertThat(later.visitor(2).xM(Seconds.ns(10.5)))
                .isEqualTo(THREE.visitor(2).xM(Seconds.ns(7.5)));
        assertThat(later.movedBy(-Seconds.ns(3))).isEqualTo(THREE);
    }

    @Test
    void anEmptyCrowdHasNoLastMoment() {
        assertThatThrownBy(Crowd.NOBODY::lastLeavesNs).isInstanceOf(IllegalStateException.class);
    }
}
