package slackwater.simulator.evening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slackwater.model.Point;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.Walkers;
import slackwater.model.file.Reading;
import slackwater.model.file.RigFolder;
import slackwater.simulator.report.Evening;
import slackwater.simulator.visitor.Being;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.visitor.Visitor;
import slackwater.simulator.visitor.WalkerFile;

/** How long before a prop the sea cave's sensors see people: by hand, and for people who were really measured. */
class ForesightTest {
    private static final long S_NS = 1_000_000_000L;
    private static final Reading SEA_CAVE =
            RigFolder.read(Path.of("..", "rigs", "sea-cave"), Optional.empty(), ForesightTest.class.getClassLoader());

    private static Rig rig() {
        return SEA_CAVE.rig().orElseThrow();
    }

    private static Evening.SeenAhead clam(final Crowd crowd) {
        final Show show = SEA_CAVE.show().orElseThrow();
        return new Foresight(rig(), crowd)
                .of(show).stream()
                        .filter(each -> each.output().equals("north-clam-lid"))
                        .findFirst()
                        .orElseThrow();
    }

    private static Crowd walker(final double yM) {
        final Visitor.Body body = new Visitor.Body(1, 1, Being.ADULT, 1.7);
        final long[] atNs = {0, 20 * S_NS};
        return Crowd.of(List.of(Visitor.of(body, atNs, new double[] {0, 20}, new double[] {yM, yM})));
    }

    /**
     * Goal: the lead is the time from first sight to the nearest point.
     * Method: one adult walks the middle line at 1 m/s. The upper beam crosses at x = 5.5 and a body is 0.15 m deep on each
     * side, so the beam is blocked from x = 5.35; the clam is at x = 8.
     */
    @Test
    void theLeadOfAnAdultAtOneMetreASecondIsWhatGeometrySays() {
        final Evening.SeenAhead seen = clam(walker(0));
        assertThat(seen.passing()).isEqualTo(1);
        assertThat(seen.seen()).isEqualTo(1);
        assertThat(seen.medianNs() / 1e9).isBetween(8 - 5.35 - 0.1, 8 - 5.35 + 0.1);
        assertThat(seen.leastNs()).isEqualTo(seen.medianNs());
    }

    @Test
    void whoWalksFarAwayNeitherPassesNorIsSeen() {
        assertThat(clam(walker(-30)).passing()).isZero();
        assertThat(clam(walker(-30)).seen()).isZero();
    }

    /** 61 people in the sparse file; real people walk faster than 1 m/s, so they are seen less long before. */
    @Test
    void theSparseFilesPeopleAreAllSeenBeforeTheClam() throws IOException {
        final Evening.SeenAhead seen =
                clam(measured("corridor-one-way-sparse.txt", new Walkers(16, 0.01, 90, new Point(8, -1))));
        assertThat(seen.passing()).isEqualTo(61);
        assertThat(seen.seen()).isEqualTo(61);
        assertThat(seen.medianNs() / 1e9).isBetween(1.6, 2.1);
        assertThat(seen.leastNs() / 1e9).isBetween(0.9, 1.5);
    }

    /** 148 people in the wide file, turned so that they come from the boathouse; the beam spans 2 m of their 5 m. */
    @Test
    void ofTheWideFilesPeopleThoseInTheBeamAreSeenBeforeTheClam() throws IOException {
        final Evening.SeenAhead seen =
                clam(measured("corridor-one-way-wide.txt", new Walkers(25, 1, 180, new Point(8, 2.4))));
        assertThat(seen.passing()).isEqualTo(148);
        assertThat(seen.seen()).isEqualTo(91);
        assertThat(seen.medianNs() / 1e9).isBetween(1.4, 2.0);
        assertThat(seen.leastNs() / 1e9).isBetween(0.5, 1.1);
    }

    private static Crowd measured(final String name, final Walkers settings) throws IOException {
        final Optional<Path> folder = Stream.iterate(
                        Path.of("").toAbsolutePath(), path -> path != null, Path::getParent)
                .map(path -> path.resolve("shared/data/walkers"))
                .filter(Files::isDirectory)
                .findFirst();
        assumeTrue(folder.isPresent(), "measured walkers not here: no folder shared/data/walkers beside the checkout");
        return WalkerFile.read(folder.orElseThrow().resolve(name), settings).crowd();
    }
}
