package slackwater.model.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.model.Begun;
import slackwater.model.Step;
import slackwater.model.kind.Family;

/** Cues that can never run, and cues that break the limits of their outputs (S11, S24). */
class CueRulesTest {

    private static Sketch yard() {
        return Sketch.rig().and("south").with(In.beam("path"), In.beam("far").on("south"));
    }

    @Test
    void airAndHeatAreAutomatic() {
        yard().with(Out.of(Family.AIR_SUPPLY, "air"))
                .with(Play.on("path").steps(Play.wish("air", 1_000)))
                .finds(new CuePlaces(), "@71");
        yard().with(Out.of(Family.HEATER, "heater"))
                .with(Play.on("path").steps(Play.wish("heater", 1_000)))
                .finds(new CuePlaces(), "@72");
        yard().with(Out.of(Family.FAN, "fan"))
                .with(Play.on("path").steps(Play.wish("fan", 1_000)))
                .isFineFor(new CuePlaces());
    }

    @Test
    void aCueStaysInItsZone() {
        yard().with(Out.valve("lid").zone("south"))
                .with(Play.on("path").steps(Play.wish("lid", 1_000)))
                .finds(new CuePlaces(), "@73");
        yard().with(Out.valve("lid").zone("south"))
                .with(Play.on("path").zone("south").steps(Play.wish("lid", 1_000)))
                .isFineFor(new CuePlaces());
    }

    @Test
    void aCueStaysOnItsController() {
        yard().with(Out.valve("lid"), Out.valve("jet").on("south"))
                .with(Play.on("path").steps(Play.wish("lid", 1_000), Play.wish("jet", 1_000)))
                .finds(new CuePlaces(), "@74");
    }

    @Test
    void aCueListensWhereItsOutputsAreDriven() {
        yard().with(Out.valve("lid"))
                .with(Play.on("far").steps(Play.wish("lid", 1_000)))
                .finds(new CuePlaces(), "@75");
        yard().with(Out.valve("lid"))
                .with(Play.on("path").provided("not far").steps(Play.await("far"), Play.wish("lid", 1_000)))
                .finds(new CuePlaces(), "@76");
        yard().with(Out.valve("lid"))
                .with(Play.on("path").provided("not path").steps(Play.wish("lid", 1_000)))
                .isFineFor(new CuePlaces());
    }

    @Test
    void aDirectionTakesTwoInputs() {
        yard().with(Play.inOrder("path", "path")).finds(new CueCanRun(), "@77");
        yard().with(Play.inOrder("path", "far")).isFineFor(new CueCanRun());
    }

    @Test
    void allOfOneIsOne() {
        yard().with(Play.allOf("path", "path")).finds(new CueCanRun(), "@78");
        yard().with(Play.allOf("path", "far")).isFineFor(new CueCanRun());
    }

    @Test
    void aCueProvidedTheContraryOfItsStartNeverStarts() {
        yard().with(Play.on("path").provided("not path")).finds(new CueCanRun(), "@79");
        yard().with(Play.inOrder("far", "path").provided("not path")).finds(new CueCanRun(), "@79");
        yard().with(Play.inOrder("path", "far").provided("not path")).isFineFor(new CueCanRun());
        yard().with(Play.allOf("path", "far").provided("not path")).isFineFor(new CueCanRun());
        yard().with(Play.on("path").provided("path")).isFineFor(new CueCanRun());
    }

    @Test
    void aCueProvidedOppositesNeverStarts() {
        yard().with(Play.on("path").provided("far", "not far")).finds(new CueCanRun(), "@80");
    }

    @Test
    void anOutputThatNeedsOppositesIsNeverPermitted() {
        yard().with(Out.valve("lid"))
                .permissive(Begun.FINISH, "lid", "path")
                .permissive(Begun.FINISH, "lid", "not path")
                .finds(new CueCanRun(), "@81");
        yard().with(Out.valve("lid"))
                .permissive(Begun.FINISH, "lid", "path")
                .permissive(Begun.FINISH, "lid", "not far")
                .isFineFor(new CueCanRun());
    }

    private static Sketch guarded(final Play play) {
        return yard().with(Out.valve("lid"))
                .permissive(Begun.FINISH, "lid", "not path")
                .with(play);
    }

    @Test
    void aStepAtTheStartAgainstItsPermissiveNeverDoesAnything() {
        guarded(Play.on("path").steps(Play.wish("lid", 1_000))).finds(new CueCanRun(), "@82");
        guarded(Play.on("path").steps(Play.pause(10, 0), Play.wishAt(0, "lid", 1_000)))
                .finds(new CueCanRun(), "@82");
        guarded(Play.on("far").provided("path").steps(Play.wish("lid", 1_000))).finds(new CueCanRun(), "@82");
        guarded(Play.on("path").steps(new Step.OneOf(List.of(List.of(Play.wish("lid", 1_000))))))
                .finds(new CueCanRun(), "@82");
    }

    @Test
    void aStepAfterAnAwaitOfTheContraryNeverDoesAnything() {
        guarded(Play.on("far").steps(Play.await("path"), Play.wish("lid", 1_000)))
                .finds(new CueCanRun(), "@82");
        guarded(Play.on("far").steps(Play.awaitOrGoOn("path"), Play.wish("lid", 1_000)))
                .isFineFor(new CueCanRun());
        guarded(Play.on("path").steps(Play.await("not path"), Play.wish("lid", 1_000)))
                .isFineFor(new CueCanRun());
    }

    @Test
    void aLaterStepMayFindThePathClear() {
        guarded(Play.on("path").steps(Play.pause(10, 0), Play.wish("lid", 1_000)))
                .isFineFor(new CueCanRun());
        guarded(Play.on("path").steps(Play.wishAt(10, "lid", 1_000))).isFineFor(new CueCanRun());
    }

    @Test
    void aLampRefusedAtTheStartComesOnLater() {
        yard().with(Out.lamp("lid"))
                .permissive(Begun.FINISH, "lid", "not path")
                .with(Play.on("path").steps(Play.wish("lid", 1_000)))
                .isFineFor(new CueCanRun());
    }

    private static Sketch lid(final Step... steps) {
        return yard().with(
                        Out.valve("lid").longestOnMs(3_000).shortestOffMs(1_000).starts(2, 10_000))
                .with(Play.on("path").steps(steps));
    }

    @Test
    void aStepEndsBeforeTheLongestOn() {
        lid(Play.wish("lid", 3_001)).finds(new CueKeepsLimits(), "@83");
        lid(Play.wish("lid", 2_500, 501)).finds(new CueKeepsLimits(), "@84");
        lid(Play.wish("lid", 2_500, 500)).isFineFor(new CueKeepsLimits());
    }

    @Test
    void aStepInsideAChoiceKeepsTheLongestOnToo() {
        lid(new Step.OneOf(List.of(List.of(Play.wish("lid", 3_001))))).finds(new CueKeepsLimits(), "@83");
    }

    @Test
    void stepsOfOneOutputLeaveItsShortestOff() {
        lid(Play.wish("lid", 1_000), Play.wishAt(1_999, "lid", 500)).finds(new CueKeepsLimits(), "@85");
        lid(Play.wish("lid", 1_000), Play.wishAt(2_000, "lid", 500)).isFineFor(new CueKeepsLimits());
    }

    @Test
    void aVariationBeforeAFixedTimeCountsInFull() {
        lid(Play.wish("lid", 1_000, 1), Play.wishAt(2_000, "lid", 500)).finds(new CueKeepsLimits(), "@85");
    }

    @Test
    void aVariationBeforeAStepThatFollowsPushesItAlong() {
        lid(Play.wish("lid", 1_000, 400), Play.pause(1_000, 100), Play.wish("lid", 500))
                .isFineFor(new CueKeepsLimits());
        lid(Play.wish("lid", 1_000, 400), Play.pause(999, 100), Play.wish("lid", 500))
                .finds(new CueKeepsLimits(), "@85");
    }

    @Test
    void stepsOfOneOutputDoNotOverlap() {
        lid(Play.wish("lid", 1_000), Play.wishAt(500, "lid", 1_000)).finds(new CueKeepsLimits(), "@86");
    }

    @Test
    void timesAcrossAnAwaitAreNotCompared() {
        lid(Play.wish("lid", 1_000), Play.await("path"), Play.wish("lid", 500)).isFineFor(new CueKeepsLimits());
    }

    @Test
    void aCueStartsAnOutputNoOftenerThanAllowed() {
        lid(Play.wish("lid", 500), Play.wishAt(2_000, "lid", 500), Play.wishAt(9_999, "lid", 500))
                .finds(new CueKeepsLimits(), "@87");
        lid(Play.wish("lid", 500), Play.wishAt(2_000, "lid", 500), Play.wishAt(10_000, "lid", 500))
                .isFineFor(new CueKeepsLimits());
    }

    @Test
    void blinkingKeepsTheLimitsToo() {
        lid(Play.blink("lid", 4_001, 1_998)).finds(new CueKeepsLimits(), "@88");
        lid(Play.blink("lid", 4_000, 2_000)).isFineFor(new CueKeepsLimits());
        lid(Play.blink("lid", 10_000, 6_002)).finds(new CueKeepsLimits(), "@89");
        lid(Play.blink("lid", 10_000, 6_000)).isFineFor(new CueKeepsLimits());
        lid(Play.blink("lid", 60_000, 4_999)).finds(new CueKeepsLimits(), "@90");
        lid(Play.blink("lid", 60_000, 5_000)).isFineFor(new CueKeepsLimits());
    }

    @Test
    void lengthsAreSaidExactly() {
        assertThat(List.of(
                        Say.time(Duration.ofNanos(1_500)),
                        Say.time(Duration.ofMillis(999)),
                        Say.time(Duration.ofMillis(2_510)),
                        Say.time(Duration.ofSeconds(90)),
                        Say.time(Duration.ofMinutes(20)),
                        Say.time(Duration.ofHours(14)),
                        Say.time(Duration.ZERO)))
                .containsExactly("0.0015 ms", "999 ms", "2.51 s", "90 s", "20 min", "14 h", "0 ms");
    }
}
