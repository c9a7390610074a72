package slackwater.controller.cue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slackwater.controller.plan.LogicBench;
import slackwater.controller.plan.Options;
import slackwater.controller.plan.Plan;
import slackwater.controller.plan.RigText;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.model.Mode;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.event.Event;
import slackwater.model.kind.Family;

/** What the rig itself wishes: air, heat, the warning, a fan's after-run (S6, S15). */
class StandingStageTest {
    private static final String STANDING = """
            [input.cold]
            kind = "motion"
            [output.air]
            kind = "air-supply"
            [output.heater]
            kind = "heater"
            cut-out = "its own"
            [output.lamp]
            kind = "lamp"
            [output.horn]
            kind = "sounder"
            longest-on = "1 s"
            [output.fan]
            kind = "fan"
            after-run = "8 s"
            """;
    private static final String WARNED = """
            [controller.yard]
            board = "pi-4"
            [arming]
            warning = "5 s"
            warns-with = ["lamp", "horn"]
            """ + STANDING;

    private static LogicBench standing(final Mode mode) {
        final RigText text = RigText.of(WARNED, "");
        return LogicBench.of(Plan.compile(text.rig(), text.show(), "yard", Options.plain(1)))
                .mode(mode);
    }

    @Test
    void airAndHeatStandWhileArmed() {
        assertThat(standing(Mode.ARMED).step().on()).containsExactly("air", "heater");
    }

    @Test
    void warningGivesLightAndSoundAndHeatButNoAir() {
        assertThat(standing(Mode.WARNING).step().on()).containsExactly("heater", "lamp", "horn");
    }

    @ParameterizedTest
    @EnumSource(
            value = Mode.class,
            names = {"STOPPED", "FAULTED", "LOCKED_OUT", "BENCH", "RESTING"})
    void nothingStandsOtherwise(final Mode mode) {
        final LogicBench bench = standing(mode).step();

        assertThat(List.of("air", "heater", "lamp", "horn", "fan")).noneMatch(bench::isAsked);
        assertThat(bench.on()).isEmpty();
    }

    @Test
    void aHeaterWithItsOwnPermissionIsAskedForAtRest() {
        final LogicBench bench = standing(Mode.RESTING).wantsHeat(true).step();

        assertThat(bench.isAsked("heater")).isTrue();
        assertThat(List.of("air", "lamp", "horn", "fan"))
                .as("the permission to warm is for heaters only")
                .noneMatch(bench::isAsked);
    }

    @Test
    void aStandingDemandThatIsRefusedIsSaidOnceAndComesBackByItself() {
        final LogicBench bench = LogicBench.of(STANDING + """
                [permissive.cold-enough]
                outputs = ["heater"]
                needs = ["cold"]
                """).until(5_000);
        assertThat(bench.count(Event.Refused.class)).isOne();
        assertThat(bench.on()).containsExactly("air");

        assertThat(bench.active("cold").step().on()).containsExactly("air", "heater");
    }

    @Test
    void aWarningThatGoesOnPastALongestOnDoesNotSoundAgain() {
        final LogicBench bench = standing(Mode.WARNING).until(5_000);

        assertThat(bench.edges("horn")).containsExactly("0 +horn", "1000 -horn");
    }

    @Test
    void theNextWarningSoundsAnew() {
        final LogicBench bench =
                standing(Mode.WARNING).until(2_000).mode(Mode.RESTING).step();
        bench.mode(Mode.WARNING).until(2_100);

        assertThat(bench.edges("horn")).containsExactly("0 +horn", "1000 -horn", "2020 +horn");
    }

    @Test
    void aFanRunsOnUntilJustBeforeItsAfterRunIsOver() {
        final LogicBench bench = standing(Mode.ARMED).wish("fan").until(990).unwish("fan");

        assertThat(bench.until(8_990).isOn("fan")).isTrue();
        assertThat(bench.step().isOn("fan")).isFalse();
        assertThat(bench.edges("fan")).containsExactly("0 +fan", "9000 -fan");
    }

    @ParameterizedTest
    @EnumSource(
            value = Mode.class,
            names = {"ARMED", "RESTING", "WARNING"})
    void aFanRunsOnWhereTheModeLetsIt(final Mode mode) {
        final LogicBench bench =
                standing(Mode.ARMED).wish("fan").until(990).unwish("fan").mode(mode);

        assertThat(bench.until(2_000).isOn("fan")).isTrue();
    }

    @ParameterizedTest
    @EnumSource(
            value = Mode.class,
            names = {"STOPPED", "FAULTED", "LOCKED_OUT", "BENCH"})
    void aFanNeverRunsOnInStopFaultLockoutOrOnTheBenchNorAfterwards(final Mode mode) {
        final LogicBench bench =
                standing(Mode.ARMED).wish("fan").until(990).unwish("fan").step();
        assertThat(bench.isOn("fan")).isTrue();

        assertThat(bench.mode(mode).step().isAsked("fan")).isFalse();
        assertThat(bench.isOn("fan")).isFalse();
        assertThat(bench.mode(Mode.ARMED).step().isAsked("fan")).isFalse();
    }

    @Test
    void aFanMayBeAskedForOnTheBenchWithoutRunningOn() {
        final LogicBench bench = standing(Mode.BENCH).wish("fan").until(100);
        assertThat(bench.isOn("fan")).isTrue();

        assertThat(bench.unwish("fan").step().isOn("fan")).isFalse();
    }

    @Test
    void aShapeThatGoesOnIsNotNewInEveryScan() {
        final LogicBench bench = LogicBench.of("""
                [output.fan]
                kind = "fan"
                after-run = "8 s"
                longest-on = "1 s"
                """).wish("fan").until(20_000);

        assertThat(bench.edges()).containsExactly("0 +fan", "1000 -fan");
    }

    /** A strobe in code: lit in every other scan while it is asked for. */
    private record Twinkle() implements ShapedKind {
        @Override
        public String word() {
            return "twinkle";
        }

        @Override
        public Family family() {
            return Family.STROBE;
        }

        @Override
        public Shape shape(final Output output, final Layout layout) {
            return new EveryOther(layout.flag(output.name() + ".bright"));
        }
    }

    private record EveryOther(Flag bright) implements Shape {
        @Override
        public boolean asks(final RunState run, final boolean isDemanded, final boolean mayAfterRun) {
            bright.set(run, isDemanded && !bright.is(run));
            return bright.is(run);
        }
    }

    private static LogicBench twinkling(final String tables) {
        final RigText text = RigText.of(RigText.yard("""
                [input.dark]
                kind = "motion"
                [output.star]
                kind = "strobe"
                one-flash-per-pulse = true
                longest-on = "1 s"
                """ + tables), "");
        final Rig rig = text.rig();
        final Rig shaped = ShapedRig.with(rig, new Twinkle());
        return LogicBench.of(Plan.compile(shaped, text.show(), "yard", Options.plain(1)));
    }

    @Test
    void aShapeFormsTheDemandAndEachOfItsOnsetsIsNew() {
        final LogicBench bench =
                twinkling("").wish("star").until(50).unwish("star").step().step();

        assertThat(bench.edges())
                .containsExactly("0 +star", "10 -star", "20 +star", "30 -star", "40 +star", "50 -star");
    }

    @Test
    void aShapeIsAppliedBeforeTheGuardsSoThatEachFlashIsJudged() {
        final LogicBench bench = twinkling("""
                [flash-limit.stars]
                outputs = ["star"]
                flashes = 3
                """).wish("star").until(990);

        assertThat(bench.edges().stream().filter(edge -> edge.contains("+")))
                .containsExactly("0 +star", "20 +star", "40 +star");
        assertThat(IntStream.range(0, 2).mapToObj(i -> bench.step().isOn("star")))
                .as("from a second after the first on")
                .containsExactly(true, false);
    }

    @Test
    void aShapeIsFollowedWithoutADemandToo() {
        assertThat(twinkling("").until(500).edges()).isEmpty();
    }
}
