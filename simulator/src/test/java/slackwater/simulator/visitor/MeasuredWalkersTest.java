package slackwater.simulator.visitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import slackwater.model.Point;
import slackwater.model.Ray;
import slackwater.model.WalkWay;
import slackwater.model.Walkers;

/**
 * The visitor model beside real people: walkers in a corridor, measured by camera by Forschungszentrum Jülich and
 * distributed with the PedPy library (MIT licence). Skipped where the files are not at hand; the property
 * slackwater.walkers names their folder.
 */
class MeasuredWalkersTest {
    private static final String PROPERTY = "slackwater.walkers";
    private static final String NOT_HERE =
            "measured walkers not here: no folder shared/data/walkers beside a parent folder, and -D" + PROPERTY
                    + " names none; these tests are skipped";
    private static final System.Logger LOG = System.getLogger(MeasuredWalkersTest.class.getName());
    private static final Point NOWHERE = new Point(0, 0);
    private static final long SEED = 20_261_031;

    /** What the model draws under the sparse file's conditions, many times its length so that chance hardly counts. */
    private static final long DRAWN_NS = 64_000_000_000L * 40;

    private Path folder = Path.of("");

    @BeforeEach
    void findTheFiles() {
        final Optional<Path> found = folder();
        if (found.isEmpty()) {
            LOG.log(System.Logger.Level.WARNING, NOT_HERE);
        }
        Assumptions.assumeTrue(found.isPresent(), NOT_HERE);
        folder = found.orElseThrow();
    }

    private static Optional<Path> folder() {
        final String named = System.getProperty(PROPERTY, "");
        if (!named.isEmpty()) {
            return Optional.of(Path.of(named)).filter(Files::isDirectory);
        }
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            final Path candidate = at.resolve("shared").resolve("data").resolve("walkers");
            if (Files.isDirectory(candidate)) {
                return Optional.of(candidate);
            }
        }
        return Optional.empty();
    }

    private Crowd sparse() throws IOException {
        final Walkers settings = new Walkers(16, 0.01, 90, NOWHERE);
        return WalkerFile.read(folder.resolve("corridor-one-way-sparse.txt"), settings)
                .crowd();
    }

    private Crowd wide() throws IOException {
        final Walkers settings = new Walkers(25, 1, 0, NOWHERE);
        return WalkerFile.read(folder.resolve("corridor-one-way-wide.txt"), settings)
                .crowd();
    }

    private static CrowdFigures figures(final Crowd crowd) {
        return CrowdFigures.of(crowd, CrowdFigures.midLine(crowd));
    }

    /** The values are this reading's own, checked once by a separate reading with another program. */
    @Test
    void theSparseFileHas61PeopleWhoWalk1395MillimetresASecond() throws IOException {
        final CrowdFigures figures = figures(sparse());
        assertThat(figures.people()).isEqualTo(61);
        assertThat(figures.medianSpeedMps().orElseThrow()).isCloseTo(1.3953, within(0.0005));
        assertThat(figures.medianHeadwayS().orElseThrow()).isCloseTo(0.67, within(0.05));
        assertThat(figures.movingShare()).isGreaterThan(0.99);
    }

    @Test
    void theWideFileHas148PeopleWhoWalk1491MillimetresASecond() throws IOException {
        final CrowdFigures figures = figures(wide());
        assertThat(figures.people()).isEqualTo(148);
        assertThat(figures.medianSpeedMps().orElseThrow()).isCloseTo(1.4911, within(0.0005));
        assertThat(figures.medianHeadwayS().orElseThrow()).isCloseTo(0.36, within(0.04));
        assertThat(figures.movingShare()).isGreaterThan(0.99);
    }

    @Test
    void theWideFileInCentimetresIsAMistakeThatNamesTheUnit() throws IOException {
        final Path file = folder.resolve("corridor-one-way-wide.txt");
        final Walkers centimetres = new Walkers(16, 0.01, 90, NOWHERE);
        assertThatThrownBy(() -> WalkerFile.read(file, centimetres))
                .isInstanceOf(WalkerFileMistake.class)
                .hasMessage(file + ":6: a height of 0.018 m; people have 0.3 to 2.5 m, so give the file's own unit"
                        + " instead of 0.01 m");
    }

    @Test
    void bothFilesOneAfterTheOtherAre209People() throws IOException {
        final Crowd both = sparse().then(wide(), Seconds.ns(30));
        assertThat(both.size()).isEqualTo(61 + 148);
        assertThat(both.visitors().stream().map(Visitor::id).distinct()).hasSize(209);
        assertThat(both.visitor(61).arrivesNs()).isEqualTo(sparse().lastLeavesNs() + Seconds.ns(30));
    }

    @Test
    void drawnAdultsWhoWalkAloneHaveTheMeasuredMedianSpeedWithinTenPercent() throws IOException {
        final double measuredMps = figures(sparse()).medianSpeedMps().orElseThrow();
        final double drawnMps =
                figures(drawnLike(sparse(), Habits.CORRIDOR)).medianSpeedMps().orElseThrow();
        report("median speed, m/s: measured %.3f, drawn adults alone %.3f", measuredMps, drawnMps);
        assertThat(drawnMps / measuredMps).isBetween(0.9, 1.1);
    }

    /** An evening's adults are slower than the laboratory's: they walk in groups, lead children and stop to look. */
    @Test
    void drawnAdultsOfAnEveningAreSlowerThanTheMeasuredByWhatGroupsAndStopsCost() throws IOException {
        final double measuredMps = figures(sparse()).medianSpeedMps().orElseThrow();
        final Crowd usual = drawnLike(sparse(), Habits.USUAL).only(visitor -> visitor.being() == Being.ADULT);
        final Crowd through =
                drawnLike(sparse(), Habits.USUAL.withLingering(0)).only(visitor -> visitor.being() == Being.ADULT);
        final double usualMps = figures(usual).medianSpeedMps().orElseThrow();
        final double throughMps = figures(through).medianSpeedMps().orElseThrow();
        report("median speed, m/s: drawn adults %.3f, without lingering %.3f", usualMps, throughMps);
        assertThat(usualMps).isLessThan(throughMps);
        assertThat(throughMps).isLessThan(measuredMps);
        assertThat(throughMps / measuredMps).isGreaterThan(0.8);
    }

    @Test
    void drawnPeopleFollowEachOtherAtTheMeasuredHeadwayWithinTenPercent() throws IOException {
        for (final Crowd measured : List.of(sparse(), wide())) {
            final double measuredS = figures(measured).medianHeadwayS().orElseThrow();
            final double drawnS = figures(drawnLike(measured, Habits.CORRIDOR))
                    .medianHeadwayS()
                    .orElseThrow();
            report("median headway, s: measured %.3f, drawn %.3f", measuredS, drawnS);
            assertThat(drawnS / measuredS).isBetween(0.9, 1.1);
        }
    }

    /** A known limit of the model: drawn groups do not see each other, so they come closer than real people do. */
    @Test
    void drawnPeopleKeepTheMeasuredDistanceWithinTwentyPercent() throws IOException {
        for (final Crowd measured : List.of(sparse(), wide())) {
            final double measuredM = figures(measured).medianSpacingM().orElseThrow();
            final double drawnM = figures(drawnLike(measured, Habits.CORRIDOR))
                    .medianSpacingM()
                    .orElseThrow();
            report("median spacing, m: measured %.3f, drawn %.3f", measuredM, drawnM);
            assertThat(drawnM / measuredM).isBetween(0.8, 1.2);
        }
    }

    private static void report(final String format, final double first, final double second) {
        LOG.log(System.Logger.Level.INFO, String.format(Locale.ROOT, format, first, second));
    }

    /** A draw with as many groups a second as people were measured, on a way as wide as they walked. */
    private static Crowd drawnLike(final Crowd measured, final Habits habits) {
        final int last = measured.size() - 1;
        final double spanNs =
                measured.visitor(last).arrivesNs() - measured.visitor(0).arrivesNs();
        final Ray across = CrowdFigures.midLine(measured);
        final double widthM = across.from().distanceM(across.to()) + 2 * Ranks.FROM_EDGE_M;
        final List<Point> points = List.of(new Point(0, 0), new Point(14, 0));
        return CrowdMaker.draw(new WalkWay(points, widthM, last / spanNs * 3.6e12), habits, SEED, 0, DRAWN_NS);
    }
}
