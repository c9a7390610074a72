package slackwater.simulator.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;
import slackwater.simulator.visitor.Crowd;

final class YardPlantsTest {
    private static final long S = RigWords.S;
    private static final long MS = RigWords.MS;
    private static final double GRID_S = 0.015;

    @Test
    void aMisterRunsDryAtTheComputedSecondAndItsLevelSwitchGoesAtATenth() {
        // 1.5 l at 350 ml/h: dry after 15428.57 s, a tenth left after 13885.71 s.
        final Yard yard = tray();
        yard.setOutputHigh(0, true);

        assertThat(firstS(yard, () -> !yard.isActive(0), 15_000)).isCloseTo(13_885.71, within(2 * GRID_S));
        assertThat(yard.hasWater(0)).isTrue();
        assertThat(firstS(yard, () -> !yard.hasWater(0), 3_000)).isCloseTo(15_428.57, within(2 * GRID_S));
        assertThat(yard.waterM3(0)).isZero();
    }

    @Test
    void aTrayIsFilledByHand() {
        final Yard yard = tray();
        yard.setOutputHigh(0, true);
        yard.step(16_000 * S);
        assertThat(yard.hasWater(0)).isFalse();

        yard.refill(0);
        yard.step(16_000 * S + 10 * MS);

        assertThat(yard.hasWater(0)).isTrue();
        assertThat(yard.isActive(0)).isTrue();
    }

    @Test
    void aReleaseDropsOnceAndIsSpentUntilItIsHungByHand() {
        // Free fall over 1.2 m: sqrt(2 * 1.2 / 9.81) = 0.495 s, m * g * h = 4.71 J for 0.4 kg.
        final Yard yard = gull();
        yard.setOutputHigh(0, true);
        yard.step(10 * MS);
        yard.setOutputHigh(0, false);
        assertThat(yard.isMoving(0)).isTrue();

        double mostJ = 0;
        for (long atNs = 20 * MS; atNs <= 500 * MS; atNs += 10 * MS) {
            yard.step(atNs);
            mostJ = Math.max(mostJ, yard.energyJ(0));
        }
        assertThat(mostJ).isBetween(4.4, 4.71);
        yard.step(510 * MS);
        assertThat(yard.isMoving(0)).isFalse();
        assertThat(yard.energyJ(0)).isZero();

        yard.setOutputHigh(0, true);
        yard.step(S);
        assertThat(yard.isMoving(0)).isFalse();
        yard.setOutputHigh(0, false);
        yard.step(2 * S);

        yard.hold(0, true);
        yard.leaveAlone(0);
        yard.setOutputHigh(0, true);
        yard.step(2 * S + 10 * MS);
        assertThat(yard.isMoving(0)).isTrue();
    }

    @Test
    void nobodyCatchesAPropInTheAir() {
        final Yard yard = gull();
        yard.setOutputHigh(0, true);
        yard.step(100 * MS);
        yard.setOutputHigh(0, false);
        yard.hold(0, true);
        yard.step(S);

        yard.setOutputHigh(0, true);
        yard.step(S + 100 * MS);

        assertThat(yard.isMoving(0)).isFalse();
    }

    @Test
    void aBoughtPropRunsItsTimeAfterAPulseShorterThanAGridStep() {
        final Yard yard = new Yard(
                new RigWords()
                        .controller("porch", false)
                        .output(Family.CONTACT, "crab", Fact.RUN_TIME, Duration.ofSeconds(6))
                        .rig(),
                Crowd.NOBODY,
                1);
        yard.setOutputHigh(0, true);
        yard.setOutputHigh(0, false);

        yard.step(10 * MS);
        assertThat(yard.isMoving(0)).isTrue();
        yard.step(6 * S);
        assertThat(yard.isMoving(0)).isTrue();
        yard.step(6 * S + 10 * MS);
        assertThat(yard.isMoving(0)).isFalse();
        yard.step(60 * S);
        assertThat(yard.isMoving(0)).isFalse();
    }

    /** The first moment within so many seconds from now at which it holds, looked at on every grid point. */
    private static double firstS(final Yard yard, final BooleanSupplier holds, final int withinS) {
        final long fromNs = yard.nowNs();
        for (long atNs = fromNs; atNs <= fromNs + withinS * S; atNs += 10 * MS) {
            yard.step(atNs);
            if (holds.getAsBoolean()) {
                return atNs / 1e9;
            }
        }
        throw new AssertionError("not within " + withinS + " s");
    }

    private static Yard tray() {
        return new Yard(
                new RigWords()
                        .controller("porch", false)
                        .output(Family.MISTER, "mist", Fact.USES, 350e-6 / 3600, Fact.HOLDS, 1.5e-3)
                        .input(InputFamily.LEVEL, "water", Fact.OF, "mist")
                        .rig(),
                Crowd.NOBODY,
                1);
    }

    private static Yard gull() {
        return new Yard(
                new RigWords()
                        .controller("porch", false)
                        .output(Family.RELEASE, "gull", Fact.MOVING_MASS, 0.4, Fact.TRAVEL, 1.2)
                        .hungButton("gull")
                        .rig(),
                Crowd.NOBODY,
                1);
    }
}
