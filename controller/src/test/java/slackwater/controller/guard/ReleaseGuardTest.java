package slackwater.controller.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import slackwater.controller.latch.Kept;
import slackwater.controller.plan.LogicBench;
import slackwater.controller.plan.ScanBench;
import slackwater.model.event.Event;

/** Energise to release: one shot, spent until hung again, also over a restart (S15). */
class ReleaseGuardTest {
    private static final String GULL = """
            [input.key]
            kind = "key"
            use = "arm"
            active-after = "0 s"
            inactive-after = "0 s"
            [input.path]
            kind = "motion"
            active-after = "0 s"
            inactive-after = "0 s"
            [output.gull]
            kind = "release"
            on-power-loss = "stays"
            longest-on = "0.5 s"
            """;
    private static final String HUNG = """
            [input.gull-hung]
            kind = "button"
            use = "hung"
            of = "gull"
            active-after = "0 s"
            inactive-after = "0 s"
            """;
    private static final String SHOW = """
            [cue.drop]
            starts = "path"
            steps = [ { energise = "gull", for = "0.3 s" } ]
            """;

    private static LogicBench gull() {
        return LogicBench.of(GULL + HUNG).active("gull-hung");
    }

    @Test
    void aReleaseGoesOnceHoweverOftenItIsAskedFor() {
        final LogicBench bench = gull().wish("gull").until(290).unwish("gull").step();
        bench.until(1_000).wish("gull").step();

        assertThat(bench.edges()).containsExactly("0 +gull", "300 -gull");
        assertThat(bench.said(Event.Refused.class))
                .containsExactly("1010: gull may not: \"one shot\" refuses because gull has been spent for 1.0 s;"
                        + " clears when gull-hung tells that it has been hung again");
    }

    @Test
    void itStaysEnergisedForItsStepAlthoughItIsSpentAtOnce() {
        final LogicBench bench = gull().wish("gull").until(200);

        assertThat(bench.isOn("gull")).isTrue();
        assertThat(bench.plan().guards().spent(bench.run())).containsExactly("gull");
    }

    @Test
    void hangingItAgainMakesItReady() {
        final LogicBench bench = gull().wish("gull").until(290).unwish("gull").step();
        bench.inactive("gull-hung").until(1_000).active("gull-hung").step();

        assertThat(bench.plan().guards().spent(bench.run())).isEmpty();
        assertThat(bench.wish("gull").step().isOn("gull")).isTrue();
    }

    @Test
    void onlyTheEdgeOfHangingItCounts() {
        final LogicBench bench = gull().wish("gull").until(290).unwish("gull").step();

        assertThat(bench.until(9_000).whyNot("gull"))
                .as("the switch has stayed active all the time, as a stuck one does")
                .hasSize(1);
    }

    @Test
    void hangingItWhileItIsEnergisedDoesNotCount() {
        final LogicBench bench = gull().inactive("gull-hung").wish("gull").until(100);
        bench.active("gull-hung").until(290).unwish("gull").step();

        assertThat(bench.plan().guards().spent(bench.run())).containsExactly("gull");
    }

    @Test
    void withoutASwitchSomebodyMustSaySo() {
        final LogicBench bench =
                LogicBench.of(GULL).wish("gull").step().unwish("gull").step();

        assertThat(bench.whyNot("gull"))
                .containsExactly("gull may not: \"one shot\" refuses because gull has been spent for 10 ms;"
                        + " clears when it is hung again and the controller is told so");
    }

    @Test
    void eachReleaseListensToItsOwnSwitch() {
        final LogicBench bench = LogicBench.of("""
                [input.other-hung]
                kind = "button"
                use = "hung"
                of = "other"
                """ + GULL + HUNG + """
                [output.other]
                kind = "release"
                on-power-loss = "stays"
                longest-on = "0.5 s"
                """)
                .wish("gull", "other")
                .until(100)
                .unwish("gull", "other")
                .step();
        assertThat(bench.plan().guards().spent(bench.run())).containsExactly("gull", "other");

        bench.active("gull-hung").step();
        assertThat(bench.plan().guards().spent(bench.run())).containsExactly("other");
    }

    @Test
    void whatIsSpentIsKeptAndStaysSpentAfterARestart() {
        final ScanBench first = ScanBench.of(GULL + HUNG, SHOW);
        first.high("gull-hung").step().high("key").step().high("path").until(1_000);
        assertThat(first.strokes("gull")).isOne();
        assertThat(first.kept().spent()).containsExactly("gull");

        final ScanBench next = ScanBench.after(first.kept(), GULL + HUNG, SHOW);
        next.high("gull-hung").step().high("key").step().high("path").until(1_000);
        assertThat(next.said(Event.CueStarted.class)).hasSize(1);
        assertThat(next.strokes("gull")).isZero();
    }

    @Test
    void anotherNameThatIsKeptSpendsNothing() {
        final Kept kept = new Kept(List.of(), new TreeMap<>(), List.of("other"), -1);
        final ScanBench bench = ScanBench.after(kept, GULL + HUNG, SHOW);

        bench.step().high("key").step().high("path").until(1_000);
        assertThat(bench.strokes("gull")).isOne();
    }

    @Test
    void theFirstInputOfTheRigMayBeItsSwitch() {
        final LogicBench bench = LogicBench.of(HUNG + GULL)
                .until(100)
                .wish("gull")
                .step()
                .unwish("gull")
                .until(300);
        assertThat(bench.whyNot("gull"))
                .containsExactly("gull may not: \"one shot\" refuses because gull has been spent for 190 ms;"
                        + " clears when gull-hung tells that it has been hung again");

        assertThat(bench.active("gull-hung").step().whyNot("gull")).isEmpty();
    }

    @Test
    void anotherInputThatSpeaksOfTheReleaseIsNotItsSwitch() {
        final LogicBench bench = LogicBench.of("""
                [input.gull-near]
                kind = "ready"
                of = "gull"
                """ + GULL + HUNG)
                .wish("gull")
                .step()
                .unwish("gull")
                .step();

        assertThat(bench.active("gull-near").step().whyNot("gull")).hasSize(1);
        assertThat(bench.active("gull-hung").step().whyNot("gull")).isEmpty();
    }
}
