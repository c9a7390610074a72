package slackwater.controller.cue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.controller.image.Places;
import slackwater.controller.plan.LogicBench;
import slackwater.controller.plan.Options;
import slackwater.controller.plan.Plan;
import slackwater.controller.plan.RigText;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Timer;
import slackwater.model.Cue;
import slackwater.model.event.Event;

/** A cue in code plays like any other, and can do nothing but wish. */
class CueCodeTest {

    /** As long as the outer sensor says, and a drawn time at most. */
    private static final class Follow implements CueCode {
        @Override
        public String word() {
            return "follow";
        }

        @Override
        public Playing compile(final Cue cue, final Places places, final Layout layout, final Numbers draws) {
            final Timer most = layout.timer("cue." + cue.name() + ".most");
            return new Following(places.output("lid"), places.input("p"), places.input("q"), most, draws);
        }
    }

    private record Following(int lid, int stays, int gone, Timer most, CueCode.Numbers draws) implements Playing {
        @Override
        public void begin(final RunState run, final long start) {
            most.start(run, 1_000_000_000L + draws.upTo(500_000_000L, start, 0));
        }

        @Override
        public boolean goOn(final RunState run, final Asking asking) {
            if (most.isDue(run) || asking.isProvenInactive(gone) || !asking.isProvenActive(stays)) {
                return false;
            }
            asking.energise(lid, true);
            return true;
        }

        @Override
        public void end(final RunState run) {
            most.stop(run);
        }

        @Override
        public int[] outputs() {
            return new int[] {lid};
        }
    }

    private static LogicBench bench(final String more) {
        final RigText text = RigText.of(RigText.yard(Stage.TABLES + """
                        [output.lid]
                        kind = "valve"
                        on-power-loss = "spring-returns"
                        longest-on = "0.5 s"
                        shortest-off = "0.2 s"
                        """), """
                [cue.follow]
                starts = "p"
                code = "follow"
                """ + more);
        final Options options = Options.plain(1).with(List.of(new Follow()));
        return LogicBench.of(Plan.compile(text.rig(), text.show(), "yard", options))
                .inactive("p")
                .active("q");
    }

    @Test
    void itStartsWishesAndEnds() {
        final LogicBench bench =
                bench("").until(90).active("p").until(300).inactive("p").until(2_000);

        assertThat(bench.edges()).containsExactly("100 +lid", "310 -lid");
        assertThat(bench.said(Event.CueEnded.class)).containsExactly("310: cue follow ended: played");
    }

    @Test
    void itSeesBothProvenViews() {
        assertThat(bench("")
                        .until(90)
                        .active("p")
                        .until(300)
                        .inactive("q")
                        .until(2_000)
                        .edges())
                .containsExactly("100 +lid", "310 -lid");
        assertThat(bench("")
                        .until(90)
                        .active("p")
                        .until(300)
                        .unknown("q")
                        .until(390)
                        .on())
                .containsExactly("lid");
    }

    @Test
    void itsDrawsAreWithinBoundsAndOfItsOwnStart() {
        final LogicBench bench = bench("").until(90).active("p").until(9_000);

        final String ended = bench.said(Event.CueEnded.class).get(0);
        assertThat(Long.parseLong(ended.substring(0, ended.indexOf(':')))).isBetween(1_100L, 1_600L);
    }

    /** Even one that says "new" in every scan is held to the limits of the output. */
    @Test
    void itCannotHoldAnOutputBeyondItsLimits() {
        assertThat(bench("").until(90).active("p").until(9_000).edges()).startsWith("100 +lid", "600 -lid", "800 +lid");
    }

    @Test
    void itIsPreEmptedByItsOutputs() {
        final LogicBench bench = bench("""
                [cue.bang]
                priority = 5
                starts = "r"
                steps = [ { energise = "a", for = "1 s" }, { energise = "lid", for = "0.1 s" } ]
                """)
                .inactive("r")
                .until(90)
                .active("p")
                .until(200)
                .active("r")
                .until(5_000);

        assertThat(bench.said(Event.CueEnded.class)).startsWith("210: cue follow ended: pre-empted by bang");
        assertThat(bench.edges("lid")).containsExactly("100 +lid", "210 -lid", "1210 +lid", "1310 -lid");
    }

    @Test
    void allThatItIsGivenToSpeakWithIsWishingAndLooking() {
        assertThat(Arrays.stream(Asking.class.getDeclaredMethods())
                        .filter(method -> Modifier.isPublic(method.getModifiers()))
                        .map(Method::getName))
                .containsExactlyInAnyOrder("energise", "isProvenActive", "isProvenInactive");
        assertThat(Asking.class.getConstructors()).isEmpty();
        assertThat(Asking.class.getFields()).isEmpty();
    }

    @Test
    void aWordThatNobodyBringsIsAProgrammersMistake() {
        final RigText text = RigText.of(RigText.yard(Stage.TABLES), """
                [cue.x]
                starts = "p"
                code = "nothing"
                """);

        assertThatThrownBy(() -> Plan.compile(text.rig(), text.show(), "yard", Options.plain(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no cue in code is called nothing");
        assertThatThrownBy(() -> Plan.compile(
                        text.rig(), text.show(), "yard", Options.plain(1).with(List.of(new Follow()))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no cue in code is called nothing");
    }

    @Test
    void aCueInCodeHasNoKeysOfItsOwnUnlessItSaysSo() {
        assertThat(new Follow().keys()).isEmpty();
    }
}
