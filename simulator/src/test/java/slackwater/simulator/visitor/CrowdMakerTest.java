package slackwater.simulator.visitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slackwater.model.Point;
import slackwater.model.WalkWay;

/** Bounds on drawn figures are four standard errors: one fair seed in 16,000 lies outside, and the seed is fixed. */
class CrowdMakerTest {
    private static final long SEED = 20_261_031;
    private static final int HOURS = 1000;
    private static final long UNTIL_NS = HOURS * 3_600_000_000_000L;
    private static final WalkWay WAY = new WalkWay(List.of(new Point(0, 0), new Point(28, 0)), 1.8, 20);
    private static final WalkWay BENT =
            new WalkWay(List.of(new Point(0, 0), new Point(10, 0), new Point(10, 8)), 1.8, 20);

    private static final Crowd ADULTS_ALONE = CrowdMaker.draw(WAY, Habits.CORRIDOR, SEED, 0, UNTIL_NS);
    private static final Crowd USUAL = CrowdMaker.draw(WAY, Habits.USUAL, SEED, 0, UNTIL_NS);

    private static double[] arrivalsH(final Crowd crowd) {
        return crowd.visitors().stream()
                .mapToDouble(visitor -> visitor.arrivesNs() / 3.6e12)
                .toArray();
    }

    /** How many groups arrive in each of many equal parts of the time. */
    private static int[] counts(final int parts) {
        final int[] counts = new int[parts];
        for (final double atH : arrivalsH(ADULTS_ALONE)) {
            counts[(int) (atH / HOURS * parts)]++;
        }
        return counts;
    }

    private static double shareOf(final int[] counts, final Predicate<Integer> wanted) {
        return Arrays.stream(counts).filter(wanted::test).count() / (double) counts.length;
    }

    @Test
    void theShareOfThreeMinutesWithoutAnyGroupIsHandbook55Case1() {
        assertThat(shareOf(counts(20 * HOURS), count -> count == 0)).isCloseTo(0.36788, within(0.0137));
    }

    @Test
    void theShareOfThreeMinutesWithTwoGroupsOrMoreIsHandbook55Case2() {
        assertThat(shareOf(counts(20 * HOURS), count -> count >= 2)).isCloseTo(0.26424, within(0.0125));
    }

    @Test
    void theMeanGapIsHandbook55Case3() {
        assertThat(HOURS * 60.0 / ADULTS_ALONE.size()).isCloseTo(3, within(0.085));
    }

    @Test
    void theShareOfGapsBelowHalfAMinuteIsHandbook55Case4() {
        final double[] atH = arrivalsH(ADULTS_ALONE);
        int below = 0;
        for (int i = 1; i < atH.length; i++) {
            below += atH[i] - atH[i - 1] < 30 / 3600.0 ? 1 : 0;
        }
        assertThat(below / (atH.length - 1.0)).isCloseTo(0.15352, within(0.0102));
    }

    @Test
    void aPropThatIsBusyFor25SecondsLosesAsManyAsHandbook55Cases5And6Say() {
        double freeFromH = 0;
        int served = 0;
        for (final double atH : arrivalsH(ADULTS_ALONE)) {
            if (atH >= freeFromH) {
                served++;
                freeFromH = atH + 25 / 3600.0;
            }
        }
        assertThat(1 - served / (double) ADULTS_ALONE.size()).isCloseTo(0.12195, within(0.0093));
        assertThat(served / (double) HOURS).isCloseTo(17.561, within(0.53));
    }

    @Test
    void theDeviationOfAnHoursCountIsHandbook55Case7() {
        final double mean = ADULTS_ALONE.size() / (double) HOURS;
        final double squares = Arrays.stream(counts(HOURS))
                .mapToDouble(count -> (count - mean) * (count - mean))
                .sum();
        assertThat(StrictMath.sqrt(squares / HOURS)).isCloseTo(4.4721, within(0.4));
    }

    @Test
    void thePacesComeFromHandbook54AndLieInsideTheAdultStrataOfCases1And2() {
        assertThat(Pace.OVER_65.meanMps()).isEqualTo(1.1613);
        assertThat(Pace.OVER_65.meanMps() - 1.0364 * Pace.OVER_65.deviationMps())
                .isCloseTo(0.9205, within(1e-9));
        assertThat(Pace.YOUNGER.meanMps() - 1.0364 * Pace.YOUNGER.deviationMps())
                .isCloseTo(1.1491, within(1e-9));
        assertThat(Pace.YOUNGER.meanMps()).isBetween(0.943, 1.434);
        assertThat(Pace.CHILDREN).extracting(Pace::meanMps).containsExactly(1.3, 1.23, 1.31);
        assertThat(Pace.CHILDREN).extracting(Pace::deviationMps).containsExactly(0.21, 0.18, 0.22);
    }

    @Test
    void adultsWhoWalkAloneHaveTheMeanAndThe15thPercentileOfHandbook54Case5() {
        final double[] speedsMps = ADULTS_ALONE.visitors().stream()
                .mapToDouble(visitor -> visitor.pathM() / visitor.stayS())
                .sorted()
                .toArray();
        // Standard errors for 20,000: mean 0.0016, 15th percentile 0.0025 m/s.
        assertThat(Arrays.stream(speedsMps).average().orElseThrow()).isCloseTo(1.390, within(0.0066));
        assertThat(speedsMps[(int) (0.15 * speedsMps.length)]).isCloseTo(1.1491, within(0.01));
    }

    /** Gates and others 2006 (the source of handbook 5.4 case 3): groups crossed 0.4 to 0.6 ft/s slower than one. */
    @Test
    void pairsOfAdultsAreAsMuchSlowerThanOneAsPublished() {
        final Habits pairs = new Habits(List.of(0.0, 1.0), 0, 0, 0, 0, 0, 0, 0);
        final double pairMps = medianSpeedMps(CrowdMaker.draw(WAY, pairs, SEED, 0, UNTIL_NS));
        final double oneMps = medianSpeedMps(ADULTS_ALONE);
        assertThat(oneMps - pairMps).isBetween(0.4 * 0.3048, 0.6 * 0.3048);
    }

    private static double medianSpeedMps(final Crowd crowd) {
        final double[] sorted = crowd.visitors().stream()
                .mapToDouble(visitor -> visitor.pathM() / visitor.stayS())
                .sorted()
                .toArray();
        return sorted[sorted.length / 2];
    }

    @Test
    void twoDrawsFromOneSeedAreEqualAndFromAnotherAreNot() {
        final long untilNs = Seconds.ns(4 * 3600);
        final Crowd first = CrowdMaker.draw(Optional.of(WAY), SEED, 0, untilNs);
        assertThat(CrowdMaker.draw(Optional.of(WAY), SEED, 0, untilNs)).isEqualTo(first);
        assertThat(CrowdMaker.draw(Optional.of(WAY), SEED + 1, 0, untilNs)).isNotEqualTo(first);
        assertThat(first.size()).isGreaterThan(80);
    }

    @Test
    void aLongerEveningBeginsWithTheShorterOne() {
        final Crowd longer = CrowdMaker.draw(WAY, Habits.USUAL, SEED, 0, Seconds.ns(7200));
        final Crowd shorter = CrowdMaker.draw(WAY, Habits.USUAL, SEED, 0, Seconds.ns(3600));
        final int last = shorter.visitors().stream().mapToInt(Visitor::id).max().orElseThrow();
        assertThat(longer.only(visitor -> visitor.id() <= last)).isEqualTo(shorter);
        assertThat(longer.size()).isGreaterThan(shorter.size());
    }

    @Test
    void lingeringMovesNobodysArrivalBodyOrPace() {
        final long untilNs = Seconds.ns(20 * 3600);
        final Crowd without = CrowdMaker.draw(WAY, Habits.USUAL.withLingering(0), SEED, 0, untilNs);
        final Crowd with = CrowdMaker.draw(WAY, Habits.USUAL.withLingering(1), SEED, 0, untilNs);
        final List<Visitor> before = byId(without);
        final List<Visitor> after = byId(with);
        assertThat(after)
                .extracting(Visitor::id)
                .isEqualTo(before.stream().map(Visitor::id).toList());
        int longer = 0;
        for (int i = 0; i < before.size(); i++) {
            final Visitor one = before.get(i);
            final Visitor other = after.get(i);
            assertThat(other.heightM()).isEqualTo(one.heightM());
            assertThat(other.being()).isEqualTo(one.being());
            assertThat(other.arrivesNs()).isGreaterThanOrEqualTo(one.arrivesNs());
            assertThat(other.pathM()).isCloseTo(one.pathM(), within(1e-6));
            longer += other.stayS() > one.stayS() + 9.99 ? 1 : 0;
        }
        // A parcel carrier stays as short as ever, and a last rank may still be outside while the first one looks.
        assertThat(longer / (double) before.size()).isGreaterThan(0.9);
        assertThat(firstArrivalsNs(with)).isEqualTo(firstArrivalsNs(without));
    }

    private static List<Visitor> byId(final Crowd crowd) {
        return crowd.visitors().stream()
                .sorted(Comparator.comparingInt(Visitor::id))
                .toList();
    }

    /** When each group's first member arrives. */
    private static Map<Integer, Long> firstArrivalsNs(final Crowd crowd) {
        return crowd.visitors().stream()
                .collect(Collectors.toMap(Visitor::group, Visitor::arrivesNs, Math::min, TreeMap::new));
    }

    @Test
    void neitherReturningNorRunningNorParcelsMoveWhenGroupsArrive() {
        final long untilNs = Seconds.ns(20 * 3600);
        final Map<Integer, Long> usual = firstArrivalsNs(CrowdMaker.draw(WAY, Habits.USUAL, SEED, 0, untilNs));
        for (final Habits other :
                List.of(Habits.USUAL.withReturning(1), Habits.USUAL.withRunning(1), Habits.USUAL.withParcels(1))) {
            final Crowd drawn = CrowdMaker.draw(WAY, other, SEED, 0, untilNs);
            assertThat(firstArrivalsNs(drawn)).isEqualTo(usual);
        }
    }

    @Test
    void everybodyIsOnTheWayAllTheTime() {
        for (final Visitor visitor : USUAL.only(each -> each.id() < 2000).visitors()) {
            for (long nowNs = visitor.arrivesNs(); nowNs < visitor.leavesNs(); nowNs += Seconds.ns(0.5)) {
                assertThat(visitor.xM(nowNs)).isBetween(-1e-9, 28 + 1e-9);
                assertThat(StrictMath.abs(visitor.yM(nowNs))).isLessThanOrEqualTo(0.9 - Ranks.FROM_EDGE_M + 1e-9);
            }
        }
    }

    @Test
    void everybodyOnABentWayStaysOnItAndEntersAtItsBeginning() {
        final Crowd crowd = CrowdMaker.draw(BENT, Habits.USUAL, SEED, 0, Seconds.ns(50 * 3600));
        for (final Visitor visitor : crowd.visitors()) {
            assertThat(visitor.xM(visitor.arrivesNs())).isCloseTo(0, within(1e-9));
            for (long nowNs = visitor.arrivesNs(); nowNs < visitor.leavesNs(); nowNs += Seconds.ns(0.5)) {
                final double xM = visitor.xM(nowNs);
                final double yM = visitor.yM(nowNs);
                final boolean isOnFirst = xM <= 10.65 + 1e-6 && StrictMath.abs(yM) <= 0.65 + 1e-6;
                final boolean isOnSecond = StrictMath.abs(xM - 10) <= 0.65 + 1e-6 && yM >= -0.65 - 1e-6 && yM <= 8;
                assertThat(isOnFirst || isOnSecond)
                        .as("%s at (%s, %s)", visitor, xM, yM)
                        .isTrue();
            }
        }
    }

    @Test
    void nobodyOfAGroupStandsInsideAnother() {
        final Habits calm = Habits.USUAL.withRunning(0);
        final Crowd crowd = CrowdMaker.draw(WAY, calm, SEED, 0, Seconds.ns(50 * 3600));
        final Map<Integer, List<Visitor>> groups = crowd.visitors().stream()
                .collect(Collectors.groupingBy(Visitor::group, TreeMap::new, Collectors.toList()));
        for (final List<Visitor> group : groups.values()) {
            for (final Visitor one : group) {
                for (final Visitor other : group) {
                    if (one.id() < other.id()) {
                        assertThat(nearestM(one, other)).isGreaterThan(2 * Visitor.BODY_RADIUS_M);
                    }
                }
            }
        }
    }

    private static double nearestM(final Visitor one, final Visitor other) {
        double nearestM = Double.POSITIVE_INFINITY;
        final long untilNs = Math.min(one.leavesNs(), other.leavesNs());
        for (long nowNs = Math.max(one.arrivesNs(), other.arrivesNs()); nowNs < untilNs; nowNs += Seconds.ns(0.5)) {
            final Point here = new Point(one.xM(nowNs), one.yM(nowNs));
            nearestM = Math.min(nearestM, here.distanceM(new Point(other.xM(nowNs), other.yM(nowNs))));
        }
        return nearestM;
    }

    @Test
    void groupsHaveTheSizesAndBeingsThatTheHabitsSay() {
        final Map<Integer, List<Visitor>> groups = USUAL.visitors().stream()
                .collect(Collectors.groupingBy(Visitor::group, TreeMap::new, Collectors.toList()));
        final double count = groups.size();
        assertThat(has(groups, Being.DOG) / count).isCloseTo(0.1 * 0.97, within(0.0085));
        assertThat(has(groups, Being.PARCEL_CARRIER) / count).isCloseTo(0.03, within(0.005));
        final long threes =
                groups.values().stream().filter(group -> people(group) == 3).count();
        assertThat(threes / count).isCloseTo(0.2 * 0.97, within(0.0112));
        assertThat(groups.values())
                .allSatisfy(group -> assertThat(people(group)).isBetween(1L, 5L));
        assertThat(groups.values()).allSatisfy(CrowdMakerTest::hasSomebodyGrown);
    }

    private static long has(final Map<Integer, List<Visitor>> groups, final Being being) {
        return groups.values().stream()
                .filter(group -> group.stream().anyMatch(visitor -> visitor.being() == being))
                .count();
    }

    private static long people(final List<Visitor> group) {
        return group.stream().filter(visitor -> visitor.being() != Being.DOG).count();
    }

    private static void hasSomebodyGrown(final List<Visitor> group) {
        assertThat(group)
                .anyMatch(visitor -> visitor.being() == Being.ADULT || visitor.being() == Being.PARCEL_CARRIER);
    }

    @Test
    void heightsTellTheSmallFromTheTallAtAnUpperBeam() {
        for (final Visitor visitor : USUAL.visitors()) {
            switch (visitor.being()) {
                case ADULT, PARCEL_CARRIER -> assertThat(visitor.heightM()).isBetween(1.45, 2.0);
                case SMALL_CHILD -> assertThat(visitor.heightM()).isBetween(0.95, 1.15);
                case DOG -> assertThat(visitor.heightM()).isBetween(0.5, 0.6);
            }
        }
    }

    @Test
    void childrenWhoRunReachTwoMetresASecondAtMost() {
        final Crowd crowd = CrowdMaker.draw(WAY, Habits.USUAL.withRunning(1), SEED, 0, Seconds.ns(200 * 3600));
        final double[] fastestMps = crowd.only(visitor -> visitor.being() == Being.SMALL_CHILD).visitors().stream()
                .mapToDouble(CrowdMakerTest::fastestMps)
                .toArray();
        assertThat(Arrays.stream(fastestMps).max().orElseThrow()).isBetween(1.9, 2.0 + 1e-6);
        assertThat(Arrays.stream(fastestMps).filter(mps -> mps > 1.5).count() / (double) fastestMps.length)
                .isGreaterThan(0.9);
    }

    private static double fastestMps(final Visitor visitor) {
        double fastest = 0;
        for (int i = 0; i < visitor.waypoints() - 1; i++) {
            final long middleNs = (visitor.waypointNs(i) + visitor.waypointNs(i + 1)) / 2;
            fastest = Math.max(fastest, visitor.speedMps(middleNs));
        }
        return fastest;
    }

    @Test
    void thoseWhoReturnLeaveWhereTheyCameIn() {
        final Crowd crowd = CrowdMaker.draw(WAY, Habits.USUAL.withReturning(1), SEED, 0, Seconds.ns(20 * 3600));
        assertThat(crowd.visitors()).allSatisfy(visitor -> {
            assertThat(visitor.xM(visitor.leavesNs())).isCloseTo(0, within(1e-9));
            assertThat(visitor.pathM()).isGreaterThan(2 * (14 - Ranks.RANK_TO_RANK_M * 3));
        });
        assertThat(CrowdMaker.draw(WAY, Habits.CORRIDOR, SEED, 0, Seconds.ns(20 * 3600))
                        .visitors())
                .allSatisfy(
                        visitor -> assertThat(visitor.xM(visitor.leavesNs())).isCloseTo(28, within(1e-9)));
    }

    @Test
    void aParcelCarrierComesAloneStopsBrieflyAndGoesBack() {
        final Crowd crowd = CrowdMaker.draw(WAY, Habits.USUAL.withParcels(1), SEED, 0, Seconds.ns(20 * 3600));
        assertThat(crowd.size()).isGreaterThan(300);
        assertThat(crowd.visitors()).allSatisfy(visitor -> {
            assertThat(visitor.being()).isEqualTo(Being.PARCEL_CARRIER);
            assertThat(visitor.stayS() - visitor.fasterThanS(Sight.STANDING_MPS))
                    .isBetween(5.0, 15.0);
            assertThat(visitor.xM(visitor.leavesNs())).isCloseTo(0, within(1e-9));
        });
    }

    @Test
    void groupsArriveInsideTheWindowAndNotAtItsEnd() {
        final Crowd crowd = CrowdMaker.draw(WAY, Habits.CORRIDOR, SEED, Seconds.ns(7200), Seconds.ns(10_800));
        assertThat(crowd.visitors())
                .isNotEmpty()
                .allSatisfy(
                        visitor -> assertThat(visitor.arrivesNs()).isBetween(Seconds.ns(7200), Seconds.ns(10_800) - 1));
        final long firstNs = crowd.visitor(0).arrivesNs();
        assertThat(CrowdMaker.draw(WAY, Habits.CORRIDOR, SEED, Seconds.ns(7200), firstNs)
                        .isEmpty())
                .isTrue();
        assertThat(CrowdMaker.draw(WAY, Habits.CORRIDOR, SEED, Seconds.ns(7200), firstNs + 2)
                        .size())
                .isEqualTo(1);
    }

    @Test
    void nobodyComesWhereThereIsNoWayOrNoGroup() {
        assertThat(CrowdMaker.draw(Optional.empty(), SEED, 0, UNTIL_NS)).isEqualTo(Crowd.NOBODY);
        final WalkWay quiet = new WalkWay(WAY.points(), 1.8, 0);
        assertThat(CrowdMaker.draw(Optional.of(quiet), SEED, 0, UNTIL_NS)).isEqualTo(Crowd.NOBODY);
    }

    @Test
    void aWayThatIsTooNarrowOrTooShortForAGroupStillWorks() {
        final WalkWay narrow = new WalkWay(List.of(new Point(0, 0), new Point(0, 0), new Point(0.5, 0)), 0.3, 600);
        final Crowd crowd = CrowdMaker.draw(narrow, Habits.USUAL.withReturning(1), SEED, 0, Seconds.ns(3600));
        assertThat(crowd.visitors())
                .hasSizeGreaterThan(600)
                .allSatisfy(
                        visitor -> assertThat(visitor.yM(visitor.arrivesNs())).isCloseTo(0, within(1e-9)));
    }

    @Test
    void wrongSettingsAreNamedWithTheirValue() {
        final WalkWay crowded = new WalkWay(WAY.points(), 1.8, 10_001);
        assertThatThrownBy(() -> CrowdMaker.draw(crowded, Habits.USUAL, SEED, 0, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("groupsPerHour must be from 0 to 10000.0 but was 10001.0");
        final WalkWay nowhere = new WalkWay(List.of(new Point(1, 1), new Point(1, 1)), 1.8, 5);
        assertThatThrownBy(() -> CrowdMaker.draw(nowhere, Habits.USUAL, SEED, 0, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("a way needs two different points but has ");
        assertThatThrownBy(() -> Habits.USUAL.withLingering(1.01))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a share must be from 0 to 1 but was 1.01");
    }
}
