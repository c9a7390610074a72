package slackwater.simulator.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import slackwater.controller.app.RigLoader;
import slackwater.model.Input;
import slackwater.model.Rig;
import slackwater.simulator.bench.BenchListener;
import slackwater.simulator.bench.Setup;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.evening.EveningPlan;
import slackwater.simulator.evening.Keeper;
import slackwater.simulator.report.StartedAt;
import slackwater.simulator.visitor.CrowdMaker;

/** Every number that the demo shows is reckoned again here, on a bench of the test's own that is stepped by 10 ms all evening. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TwoActsTest {
    private static final Path SKETCH = Path.of("..", "rigs", "sea-cave-sketch");
    private static final Path RIG = Path.of("..", "rigs", "sea-cave");
    private static final Duration LASTS = Duration.ofHours(3);
    private static final long STEP_NS = 10_000_000L;
    private static final long LOOK_NS = 100_000_000L;

    private final TwoActs acts = play();
    private final List<String> lines = acts.lines();

    private static TwoActs play() {
        try {
            return TwoActs.of(
                    Act.run(plan(SKETCH), TwoActs.SKETCH_LID, share -> {}),
                    Act.run(plan(RIG), TwoActs.RIG_LID, share -> {}),
                    SKETCH,
                    RIG);
        } catch (final IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** A second look at an evening: nothing here is asked of the demo's own watcher but the moment of the freeze. */
    private static final class Again {
        private double lowestBar = Double.POSITIVE_INFINITY;
        private double hardestJ;
        private int landings;
        private int strokes;
        private double heldS;
        private long trippedNs = -1;
        private long airGoneNs = -1;
        private long refused;

        Again(final Act.Seen act, final String lidName, final Optional<String> circuit) {
            final EveningPlan plan = act.plan();
            final VirtualBench bench = new VirtualBench(Setup.of(plan.rig(), plan.show())
                    .withSeed(plan.seed())
                    .withCrowd(plan.crowd())
                    .startingAt(plan.startEpochMs()));
            new Keeper(plan.rig(), plan.show()).open(bench);
            final int lid =
                    plan.rig().outputs().indexOf(plan.rig().output(lidName).orElseThrow());
            final double workingPa =
                    plan.rig().surroundings().air().orElseThrow().workingPa();
            final long frozenNs = act.frozenNs().orElseThrow();
            final String controller = plan.rig().outputs().get(lid).controller();
            bench.listen(new BenchListener() {
                @Override
                public void event(final int of, final slackwater.model.event.Event event) {
                    refused += event instanceof slackwater.model.event.Event.Refused ? 1 : 0;
                }
            });
            boolean wasMoving = false;
            boolean isHeld = false;
            boolean hasRisen = false;
            for (long atNs = STEP_NS; atNs <= LASTS.toNanos(); atNs += STEP_NS) {
                bench.runTo(atNs);
                if (atNs == frozenNs) {
                    isHeld = true;
                    bench.freeze(controller, true);
                    final Duration wakes = Duration.ofNanos(frozenNs).plusSeconds(15);
                    bench.at(wakes, each -> each.freeze(controller, false));
                    resetAndArm(plan.rig(), bench, wakes.plusSeconds(60));
                } else if (isHeld && !bench.yard().isPowered(lid)) {
                    isHeld = false;
                    heldS = (atNs - frozenNs) / 1e9;
                }
                final boolean isMoving = bench.yard().isMoving(lid);
                final boolean isUp = bench.yard().isPowered(lid);
                strokes += isMoving && isUp && !hasRisen ? 1 : 0;
                hasRisen = isUp && (hasRisen || isMoving);
                if (wasMoving && !isMoving) {
                    hardestJ = Math.max(hardestJ, bench.yard().landedJ(lid));
                    landings += bench.yard().landedJ(lid) > 1.69 ? 1 : 0;
                }
                wasMoving = isMoving;
                if (atNs >= act.opensNs() && atNs % LOOK_NS == 0) {
                    lowestBar = Math.min(lowestBar, bench.yard().tankPa() / 1e5);
                    airGoneNs = airGoneNs < 0 && bench.yard().tankPa() < workingPa ? atNs : airGoneNs;
                }
                if (trippedNs < 0 && circuit.isPresent() && bench.yard().isTripped(circuit.get())) {
                    trippedNs = atNs;
                }
            }
        }

        private static void resetAndArm(final Rig rig, final VirtualBench bench, final Duration from) {
            for (final Input input : rig.inputs()) {
                if (input.use() == Input.Use.RESET) {
                    bench.at(from, yard -> yard.set(input.name(), true));
                    bench.at(
                            from.plusSeconds(1),
                            yard -> yard.set(input.name(), false).leave(input.name()));
                } else if (input.use() == Input.Use.ARM) {
                    bench.at(from.plusSeconds(3), yard -> yard.set(input.name(), false));
                    bench.at(from.plusSeconds(5), yard -> yard.set(input.name(), true));
                }
            }
        }
    }

    @Test
    void everyNumberOfTheSketchIsReckonedAgain() {
        final Again again = new Again(acts.sketch(), TwoActs.SKETCH_LID, Optional.of("extension"));
        final StartedAt began = acts.sketch().evening().run().startedAt();
        assertThat(line("the breaker trips"))
                .startsWith("  " + began.moment(again.trippedNs).substring(0, 5));
        assertThat(line("the air is gone"))
                .startsWith("  " + began.moment(again.airGoneNs).substring(0, 5));
        assertThat(line("the lid drops"))
                .isEqualTo(String.format(
                        java.util.Locale.ROOT,
                        "  the lid drops %d times, with up to %.2f J",
                        again.landings,
                        again.hardestJ));
        assertThat(number(line("the computer freezes"), ".*stays open for ([0-9.]+) s"))
                .isCloseTo(again.heldS, within(0.02));
        column(again, 1);
        assertThat(again.hardestJ).as("3 kg x 9.80665 x 0.30 m").isCloseTo(8.826, within(0.001));
    }

    @Test
    void everyNumberOfTheSeaCaveIsReckonedAgain() {
        final Again again = new Again(acts.rig(), TwoActs.RIG_LID, Optional.of("boathouse"));
        assertThat(again.trippedNs).isNegative();
        assertThat(again.airGoneNs).isNegative();
        column(again, 2);
        // a frozen computer cannot rest its pins; the hold-up relay has taken their power long before
        assertThat(acts.rig().evening().violations())
                .allSatisfy(found -> assertThat(found.rule()).isEqualTo("longest-on"))
                .allSatisfy(
                        found -> assertThat(found.atNs() - acts.rig().frozenNs().orElseThrow())
                                .isBetween(0L, Act.FREEZE.toNanos()));
    }

    /** 1.434 m/s x (10 ms scan + 1 s + 21 ms valve + 0.4 s stroke), less 8 m - (7.8 m - 2 m x tan 20 deg). */
    @Test
    void howLatePeopleAreSeenFollowsFromThePlan() {
        final double lateM = 1.434 * (0.010 + 1 + 0.021 + 0.4) - (8 - (7.8 - 2 * Math.tan(Math.toRadians(20))));
        assertThat(number(line("people are seen"), ".*seen ([0-9.]+) m too late.*"))
                .isCloseTo(lateM, within(0.03));
    }

    @Test
    void whatWasChangedStandsInBothFiles() throws IOException {
        assertThat(lines)
                .contains(
                        "  tank: 24 l -> 50 l",
                        "  breaker: 6 A -> 16 A",
                        "  first sensor at: [7.8 m, 2 m] -> [5 m, 2 m]")
                .hasSizeLessThanOrEqualTo(24);
        assertThat(lines).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void bothActsHaveTheSameVisitors() {
        assertThat(acts.sketch().plan().crowd()).isEqualTo(acts.rig().plan().crowd());
    }

    @Test
    void thePageNeedsNothingBesideItAndIsTheSameTwice() throws IOException {
        final StringWriter once = new StringWriter();
        DemoPage.write(acts, once);
        final StringWriter twice = new StringWriter();
        DemoPage.write(acts, twice);
        assertThat(once.toString())
                .isEqualTo(twice.toString())
                .doesNotContain("http://", "https://", "DATA;")
                .contains("Act 1: the sketch", "Act 2: the sea cave", "<canvas".substring(1));
        assertThat(once.toString().length()).isLessThan(2_000_000);
    }

    private void column(final Again again, final int column) {
        final List<Double> shown = new ArrayList<>();
        for (final String row : List.of(
                "strokes of the lid",
                "demands refused",
                "lowest air in the tank",
                "valve held after the freeze",
                "hardest landing of the lid",
                "landings above 1.69 J")) {
            final String figures = line(row).substring(line(row).indexOf(row) + row.length());
            final Matcher each = Pattern.compile("[0-9]+(\\.[0-9]+)?").matcher(figures);
            for (int i = 0; i < column; i++) {
                assertThat(each.find()).as(figures).isTrue();
            }
            shown.add(Double.parseDouble(each.group()));
        }
        assertThat(shown.get(0)).isEqualTo(again.strokes);
        assertThat(shown.get(1)).isEqualTo(again.refused);
        assertThat(shown.get(2)).isCloseTo(again.lowestBar, within(0.051));
        assertThat(shown.get(3)).isCloseTo(again.heldS, within(0.021));
        assertThat(shown.get(4)).isCloseTo(again.hardestJ, within(0.0051));
        assertThat(shown.get(5)).isEqualTo(again.landings);
    }

    private String line(final String about) {
        return lines.stream().filter(line -> line.contains(about)).findFirst().orElseThrow();
    }

    private static double number(final String line, final String form) {
        return Double.parseDouble(line.replaceFirst(form, "$1"));
    }

    private static EveningPlan plan(final Path folder) {
        final RigLoader.Loaded loaded = RigLoader.load(folder, Optional.empty());
        final Rig rig = loaded.rig().orElseThrow(() -> new AssertionError(loaded.text()));
        return new EveningPlan(
                rig,
                loaded.show(),
                loaded.codes(),
                1,
                EveningPlan.startOf(rig, loaded.show()),
                LASTS,
                CrowdMaker.draw(rig.surroundings().way(), 1, 0, LASTS.toNanos()),
                Optional.empty(),
                true);
    }
}
