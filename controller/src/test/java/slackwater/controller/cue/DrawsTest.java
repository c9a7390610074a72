package slackwater.controller.cue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.controller.plan.LogicBench;
import slackwater.controller.plan.Options;
import slackwater.controller.plan.Plan;
import slackwater.controller.plan.RigText;

/** One stream for each (seed, cue, start): the same again for the same, and nobody else's business (S22). */
class DrawsTest {

    private static List<Long> some(final Draws draws, final long most) {
        return LongStream.range(0, 200)
                .map(i -> draws.upTo(most, i / 10, (int) (i % 10)))
                .boxed()
                .toList();
    }

    @Test
    void theSameSeedCueStartAndStepDrawTheSame() {
        assertThat(some(new Draws(7, "greet"), 1_000_000)).isEqualTo(some(new Draws(7, "greet"), 1_000_000));
    }

    @Test
    void theOrderOfAskingIsOfNoMatter() {
        final Draws draws = new Draws(7, "greet");
        final long first = draws.upTo(1_000_000, 3, 5);
        some(draws, 1_000_000);

        assertThat(draws.upTo(1_000_000, 3, 5)).isEqualTo(first);
    }

    @Test
    void anotherSeedCueStartOrStepDrawsOther() {
        final long one = new Draws(7, "greet").upTo(1L << 60, 3, 5);

        assertThat(List.of(
                        one,
                        new Draws(8, "greet").upTo(1L << 60, 3, 5),
                        new Draws(7, "greed").upTo(1L << 60, 3, 5),
                        new Draws(7, "teerg").upTo(1L << 60, 3, 5),
                        new Draws(7, "").upTo(1L << 60, 3, 5),
                        new Draws(7, "greet").upTo(1L << 60, 4, 5),
                        new Draws(7, "greet").upTo(1L << 60, 5, 3),
                        new Draws(7, "greet").upTo(1L << 60, 3, 6)))
                .doesNotHaveDuplicates();
    }

    @Test
    void bothEndsAreDrawnAndNothingBeyond() {
        assertThat(some(new Draws(7, "greet"), 3)).containsOnly(0L, 1L, 2L, 3L);
        assertThat(some(new Draws(7, "greet"), 0)).containsOnly(0L);
        assertThat(some(new Draws(7, "greet"), Long.MAX_VALUE)).allMatch(draw -> draw >= 0);
    }

    /**
     * The chi-squared statistic over ten cells has nine degrees of freedom; 27.9 is exceeded by one honest sample in a
     * thousand (table of the distribution, from memory).
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, -1, 0})
    void drawsAreEvenOverStartsAndOverSteps(final long seed) {
        final Draws draws = new Draws(seed, "greet");

        assertThat(chiSquared(LongStream.range(0, 10_000).map(start -> draws.upTo(9, start, 0))))
                .isBetween(0.5, 27.9);
        assertThat(chiSquared(LongStream.range(0, 10_000).map(step -> draws.upTo(9, 1, (int) step))))
                .isBetween(0.5, 27.9);
    }

    private static double chiSquared(final LongStream draws) {
        final long[] counts = new long[10];
        draws.forEach(draw -> counts[(int) draw]++);
        return LongStream.of(counts)
                .mapToDouble(count -> (count - 1_000) * (count - 1_000) / 1_000.0)
                .sum();
    }

    private static final String VARIED = """
            [cue.greet]
            starts = "p"
            steps = [
              { energise = "a", for = "0.5 s", vary = "0.2 s" },
              { pause = "0.5 s", vary = "0.2 s" },
              { energise = "b", for = "0.5 s" },
            ]
            """;

    private static LogicBench seeded(final String show, final long seed) {
        final RigText text = RigText.of(RigText.yard(Stage.TABLES), show);
        return LogicBench.of(Plan.compile(text.rig(), text.show(), "yard", Options.plain(seed)))
                .inactive("p")
                .inactive("q");
    }

    /** Changes of lamps a and b over some starts of the cue, one each 5 s from 100 ms on. */
    private static List<String> starts(final String show, final long seed, final int count) {
        final LogicBench bench = seeded(show, seed);
        for (int i = 0; i < count; i++) {
            bench.until(i * 5_000L + 90)
                    .active("p")
                    .active("q")
                    .step()
                    .inactive("p")
                    .inactive("q");
        }
        bench.until(count * 5_000L);
        final List<String> edges = new ArrayList<>(bench.edges("a"));
        edges.addAll(bench.edges("b"));
        return edges;
    }

    private static List<Long> lengthsMs(final List<String> edges, final String lamp) {
        final List<Long> lengths = new ArrayList<>();
        long sinceMs = 0;
        for (final String edge : edges) {
            final long atMs = Long.parseLong(edge.substring(0, edge.indexOf(' ')));
            if (edge.endsWith("+" + lamp)) {
                sinceMs = atMs;
            } else if (edge.endsWith("-" + lamp)) {
                lengths.add(atMs - sinceMs);
            }
        }
        return lengths;
    }

    @Test
    void aVariedStepStaysWithinItsBoundsAndDiffersOverStarts() {
        final List<Long> lengths = lengthsMs(starts(VARIED, 1, 40), "a");

        assertThat(lengths).hasSize(40).allMatch(ms -> ms >= 500 && ms <= 700);
        assertThat(lengths.stream().distinct().count())
                .as("21 lengths are possible")
                .isGreaterThan(10);
        assertThat(lengths).anyMatch(ms -> ms <= 540).anyMatch(ms -> ms >= 660);
    }

    @Test
    void aVariedPauseIsDrawnByItself() {
        final List<String> edges = starts(VARIED, 1, 40);
        final List<Long> gaps = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            gaps.add(millis(edges.get(80 + 2 * i)) - millis(edges.get(2 * i + 1)));
        }

        assertThat(gaps)
                .allMatch(ms -> ms >= 490 && ms <= 710)
                .anyMatch(ms -> ms < 540)
                .anyMatch(ms -> ms > 660);
        assertThat(gaps).isNotEqualTo(lengthsMs(edges, "a"));
    }

    private static long millis(final String edge) {
        return Long.parseLong(edge.substring(0, edge.indexOf(' ')));
    }

    @Test
    void theSameSeedPlaysTheSameAndAnotherDoesNot() {
        assertThat(starts(VARIED, 5, 10)).isEqualTo(starts(VARIED, 5, 10)).isNotEqualTo(starts(VARIED, 6, 10));
    }

    @Test
    void addingACueLeavesTheDrawsOfTheOthersAsTheyWere() {
        final String before = """
                [cue.another]
                starts = "q"
                steps = [ { energise = "c", for = "0.5 s", vary = "2 s" },
                          { one-of = [ [ { energise = "d", for = "1 s" } ], [ { pause = "1 s" } ] ] } ]
                """;

        assertThat(starts(before + VARIED, 5, 10)).isEqualTo(starts(VARIED, 5, 10));
        assertThat(starts(VARIED + before, 5, 10)).isEqualTo(starts(VARIED, 5, 10));
    }

    private static final String ONE_OF = """
            [cue.greet]
            starts = "p"
            steps = [
              { one-of = [
                [ { energise = "a", for = "0.5 s", vary = "0.2 s" } ],
                [ { energise = "b", for = "0.5 s", vary = "0.2 s" } ],
                [ { energise = ["a", "b"], for = "0.5 s" } ],
              ] },
              { at = "0.1 s", energise = "c", for = "0.1 s" },
            ]
            """;

    private static String played(final long seed, final int start) {
        final LogicBench bench = seeded(ONE_OF, seed);
        for (int i = 1; i <= start; i++) {
            bench.until((i - 1) * 5_000L + 90).active("p").step().inactive("p");
        }
        return String.join("", bench.on());
    }

    @Test
    void oneOfPlaysEachChoiceForSomeSeedAndForSomeStartAndAlwaysOnlyOne() {
        assertThat(LongStream.range(0, 30).mapToObj(seed -> played(seed, 1))).containsOnly("a", "b", "ab");
        assertThat(LongStream.range(1, 31).mapToObj(start -> played(3, (int) start)))
                .containsOnly("a", "b", "ab");
    }

    @Test
    void timesAfterAOneOfCountFromItsEnd() {
        final LogicBench bench = seeded(ONE_OF, 1).until(90).active("p").until(5_000);

        final long endMs = bench.edges().stream()
                .filter(edge -> edge.contains("-a") || edge.contains("-b"))
                .mapToLong(DrawsTest::millis)
                .max()
                .orElseThrow();
        assertThat(bench.edges("c")).containsExactly(endMs + 100 + " +c", endMs + 200 + " -c");
    }

    /** The platform's own SplittableRandom begins with the same finalizer of SplitMix64, of its seed plus the same step. */
    @Test
    void drawsAreThoseOfSplitMix() {
        final long byName = mixed(mixed(7 + 'o') + 'k');
        assertThat(new Draws(7, "ok").upTo(Long.MAX_VALUE, 1, 1)).isEqualTo(mixed(mixed(byName)) >>> 1);
        assertThat(new Draws(7, "").upTo(Long.MAX_VALUE, 1, 1)).isEqualTo(mixed(mixed(7)) >>> 1);
        assertThat(new Draws(7, "").upTo(9, 1, 1)).isEqualTo((mixed(mixed(7)) >>> 1) % 10);
    }

    private static long mixed(final long seed) {
        return new SplittableRandom(seed).nextLong();
    }
}
