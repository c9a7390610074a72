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
    private static final String NEVER_STARTS = """
            ERROR cue-never-starts at cue.greet/provided[0]
            "greet" never starts: it is provided "not path", and "path" must hold at its start
            why: no input is proven active and inactive at once
            fix: change starts or provided
            """;

    private static final String NEVER_PERMITTED = """
            ERROR step-never-permitted at cue.greet/%s
            "greet" wishes for "lid" just when "path" holds, and its permissive needs "not path"
            why: the refusal uses the wish up, so this step never does anything (S11)
            fix: start the cue on another input, or await "not path" before the step
            """;

    private static final String TOO_LONG = """
            ERROR step-too-long at cue.greet/%s
            "greet" wishes for "lid" too long: for=3.001 s > longest-on=3 s
            why: the driver rests it after 3 s, whatever the cue asks
            fix: shorten the step to at most 3 s
            """;

    private static final String PAUSE_TOO_SHORT = """
            ERROR pause-too-short at cue.greet/%s
            "greet" wishes for "lid" again 999 ms after it ended, sooner than its shortest-off of 1 s
            why: the driver refuses the second start
            fix: leave at least 1 s between the two steps
            """;

    private static Sketch yard() {
        return Sketch.rig().and("south").with(In.beam("path"), In.beam("far").on("south"));
    }

    @Test
    void airAndHeatAreAutomatic() {
        yard().with(Out.of(Family.AIR_SUPPLY, "air"))
                .with(Play.on("path").steps(Play.wish("air", 1_000)))
                .finds(new CuePlaces(), """
                        ERROR cue-energises-automatic at cue.greet/steps[0].energise
                        "greet" energises "air", which is automatic
                        why: air comes on with arming and heat with the warming-up time; a greeting has no say in \
                        them (S15)
                        fix: leave the step out
                        """);
        yard().with(Out.of(Family.HEATER, "heater"))
                .with(Play.on("path").steps(Play.wish("heater", 1_000)))
                .finds(new CuePlaces(), """
                        ERROR cue-energises-automatic at cue.greet/steps[0].energise
                        "greet" energises "heater", which is automatic
                        why: air comes on with arming and heat with the warming-up time; a greeting has no say in \
                        them (S15)
                        fix: leave the step out
                        """);
        yard().with(Out.of(Family.FAN, "fan"))
                .with(Play.on("path").steps(Play.wish("fan", 1_000)))
                .isFineFor(new CuePlaces());
    }

    @Test
    void aCueStaysInItsZone() {
        yard().with(Out.valve("lid").zone("south"))
                .with(Play.on("path").steps(Play.wish("lid", 1_000)))
                .finds(new CuePlaces(), """
                        ERROR cue-in-other-zone at cue.greet/steps[0].energise
                        "greet" of zone "north" energises "lid" of zone "south"
                        why: a zone is armed and locked out as one: this would move a prop where somebody may be at \
                        work
                        fix: make a second cue in zone "south" with the same start
                        """);
        yard().with(Out.valve("lid").zone("south"))
                .with(Play.on("path").zone("south").steps(Play.wish("lid", 1_000)))
                .isFineFor(new CuePlaces());
    }

    @Test
    void aCueStaysOnItsController() {
        yard().with(Out.valve("lid"), Out.valve("jet").on("south"))
                .with(Play.on("path").steps(Play.wish("lid", 1_000), Play.wish("jet", 1_000)))
                .finds(new CuePlaces(), """
                        ERROR cue-across at cue.greet/steps
                        "greet" energises outputs of 2 controllers: "north", "south"
                        why: a cue runs on one controller, and needs no network there (S24)
                        fix: make one cue for each controller
                        """);
    }

    @Test
    void aCueListensWhereItsOutputsAreDriven() {
        yard().with(Out.valve("lid"))
                .with(Play.on("far").steps(Play.wish("lid", 1_000)))
                .finds(new CuePlaces(), """
                        ERROR cue-listens-elsewhere at cue.greet/starts
                        "greet" waits for "far", which is not wired to controller "north"
                        why: the cue runs where its outputs are driven, and would never see it
                        fix: use an input of "north"
                        """);
        yard().with(Out.valve("lid"))
                .with(Play.on("path").provided("not far").steps(Play.await("far"), Play.wish("lid", 1_000)))
                .finds(new CuePlaces(), """
                        ERROR cue-listens-elsewhere at cue.greet/provided[0]
                        "greet" waits for "far", which is not wired to controller "north"
                        why: the cue runs where its outputs are driven, and would never see it
                        fix: use an input of "north"
                        """);
        yard().with(Out.valve("lid"))
                .with(Play.on("path").provided("not path").steps(Play.wish("lid", 1_000)))
                .isFineFor(new CuePlaces());
    }

    @Test
    void aDirectionTakesTwoInputs() {
        yard().with(Play.inOrder("path", "path")).finds(new CueCanRun(), """
                        ERROR order-of-one at cue.greet/starts
                        "greet" waits for "path" after itself
                        why: a direction takes two inputs, one after the other
                        fix: name two different inputs in order, or write starts = "path"
                        """);
        yard().with(Play.inOrder("path", "far")).isFineFor(new CueCanRun());
    }

    @Test
    void allOfOneIsOne() {
        yard().with(Play.allOf("path", "path")).finds(new CueCanRun(), """
                        WARNING all-of-one at cue.greet/starts
                        "greet" waits for all of a single input
                        why: within says nothing where there is only one
                        fix: name a second input in all, or write starts = "path"
                        """);
        yard().with(Play.allOf("path", "far")).isFineFor(new CueCanRun());
    }

    @Test
    void aCueProvidedTheContraryOfItsStartNeverStarts() {
        yard().with(Play.on("path").provided("not path")).finds(new CueCanRun(), NEVER_STARTS);
        yard().with(Play.inOrder("far", "path").provided("not path")).finds(new CueCanRun(), NEVER_STARTS);
        yard().with(Play.inOrder("path", "far").provided("not path")).isFineFor(new CueCanRun());
        yard().with(Play.allOf("path", "far").provided("not path")).isFineFor(new CueCanRun());
        yard().with(Play.on("path").provided("path")).isFineFor(new CueCanRun());
    }

    @Test
    void aCueProvidedOppositesNeverStarts() {
        yard().with(Play.on("path").provided("far", "not far")).finds(new CueCanRun(), """
                        ERROR cue-never-starts at cue.greet/provided[1]
                        "greet" never starts: it is provided "not far", and "far" must hold at its start
                        why: no input is proven active and inactive at once
                        fix: change starts or provided
                        """);
    }

    @Test
    void anOutputThatNeedsOppositesIsNeverPermitted() {
        yard().with(Out.valve("lid"))
                .permissive(Begun.FINISH, "lid", "path")
                .permissive(Begun.FINISH, "lid", "not path")
                .finds(new CueCanRun(), """
                        ERROR never-permitted at output.lid
                        "lid" is never permitted: its permissives need "path" and "not path"
                        why: no input is proven active and inactive at once
                        fix: take one of the two needs away
                        """);
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
        guarded(Play.on("path").steps(Play.wish("lid", 1_000)))
                .finds(new CueCanRun(), NEVER_PERMITTED.formatted("steps[0].energise"));
        guarded(Play.on("path").steps(Play.pause(10, 0), Play.wishAt(0, "lid", 1_000)))
                .finds(new CueCanRun(), NEVER_PERMITTED.formatted("steps[1].energise"));
        guarded(Play.on("far").provided("path").steps(Play.wish("lid", 1_000)))
                .finds(new CueCanRun(), NEVER_PERMITTED.formatted("steps[0].energise"));
        guarded(Play.on("path").steps(new Step.OneOf(List.of(List.of(Play.wish("lid", 1_000))))))
                .finds(new CueCanRun(), NEVER_PERMITTED.formatted("steps[0].one-of[0][0].energise"));
    }

    @Test
    void aStepAfterAnAwaitOfTheContraryNeverDoesAnything() {
        guarded(Play.on("far").steps(Play.await("path"), Play.wish("lid", 1_000)))
                .finds(new CueCanRun(), NEVER_PERMITTED.formatted("steps[1].energise"));
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
        lid(Play.wish("lid", 3_001)).finds(new CueKeepsLimits(), TOO_LONG.formatted("steps[0].for"));
        lid(Play.wish("lid", 2_500, 501)).finds(new CueKeepsLimits(), """
                        ERROR step-too-long at cue.greet/steps[0].for
                        "greet" wishes for "lid" too long: for + vary=3.001 s > longest-on=3 s
                        why: the driver rests it after 3 s, whatever the cue asks
                        fix: shorten the step to at most 3 s
                        """);
        lid(Play.wish("lid", 2_500, 500)).isFineFor(new CueKeepsLimits());
    }

    @Test
    void aStepInsideAChoiceKeepsTheLongestOnToo() {
        lid(new Step.OneOf(List.of(List.of(Play.wish("lid", 3_001)))))
                .finds(new CueKeepsLimits(), TOO_LONG.formatted("steps[0].one-of[0][0].for"));
    }

    @Test
    void stepsOfOneOutputLeaveItsShortestOff() {
        lid(Play.wish("lid", 1_000), Play.wishAt(1_999, "lid", 500))
                .finds(new CueKeepsLimits(), PAUSE_TOO_SHORT.formatted("steps[1].energise"));
        lid(Play.wish("lid", 1_000), Play.wishAt(2_000, "lid", 500)).isFineFor(new CueKeepsLimits());
    }

    @Test
    void aVariationBeforeAFixedTimeCountsInFull() {
        lid(Play.wish("lid", 1_000, 1), Play.wishAt(2_000, "lid", 500))
                .finds(new CueKeepsLimits(), PAUSE_TOO_SHORT.formatted("steps[1].energise"));
    }

    @Test
    void aVariationBeforeAStepThatFollowsPushesItAlong() {
        lid(Play.wish("lid", 1_000, 400), Play.pause(1_000, 100), Play.wish("lid", 500))
                .isFineFor(new CueKeepsLimits());
        lid(Play.wish("lid", 1_000, 400), Play.pause(999, 100), Play.wish("lid", 500))
                .finds(new CueKeepsLimits(), PAUSE_TOO_SHORT.formatted("steps[2].energise"));
    }

    @Test
    void stepsOfOneOutputDoNotOverlap() {
        lid(Play.wish("lid", 1_000), Play.wishAt(500, "lid", 1_000)).finds(new CueKeepsLimits(), """
                        ERROR pause-too-short at cue.greet/steps[1].energise
                        "greet" wishes for "lid" again before its first wish has ended, sooner than its shortest-off \
                        of 1 s
                        why: the driver refuses the second start
                        fix: leave at least 1 s between the two steps
                        """);
    }

    @Test
    void timesAcrossAnAwaitAreNotCompared() {
        lid(Play.wish("lid", 1_000), Play.await("path"), Play.wish("lid", 500)).isFineFor(new CueKeepsLimits());
    }

    @Test
    void aCueStartsAnOutputNoOftenerThanAllowed() {
        lid(Play.wish("lid", 500), Play.wishAt(2_000, "lid", 500), Play.wishAt(9_999, "lid", 500))
                .finds(new CueKeepsLimits(), """
                        ERROR too-many-starts at cue.greet/steps[2].energise
                        "greet" starts "lid" 3 times within 10 s, and it allows 2
                        why: the driver refuses the starts that are too many
                        fix: take steps away, or spread them over more than 10 s
                        """);
        lid(Play.wish("lid", 500), Play.wishAt(2_000, "lid", 500), Play.wishAt(10_000, "lid", 500))
                .isFineFor(new CueKeepsLimits());
    }

    @Test
    void blinkingKeepsTheLimitsToo() {
        lid(Play.blink("lid", 4_001, 1_998)).finds(new CueKeepsLimits(), """
                        ERROR blink-too-fast at cue.greet/steps[0].blink
                        "greet" blinks "lid" too fast: half of blink=999 ms < shortest-off=1 s
                        why: the driver refuses every start that comes sooner
                        fix: make blink at least 2 s
                        ERROR too-many-starts at cue.greet/steps[0].blink
                        "greet" starts "lid" 3 times within 10 s, and it allows 2
                        why: the driver refuses the starts that are too many
                        fix: take steps away, or spread them over more than 10 s
                        """);
        lid(Play.blink("lid", 4_000, 2_000)).isFineFor(new CueKeepsLimits());
        lid(Play.blink("lid", 10_000, 6_002)).finds(new CueKeepsLimits(), """
                        ERROR step-too-long at cue.greet/steps[0].blink
                        "greet" wishes for "lid" too long: half of blink=3.001 s > longest-on=3 s
                        why: the driver rests it after 3 s, whatever the cue asks
                        fix: shorten the step to at most 3 s
                        """);
        lid(Play.blink("lid", 10_000, 6_000)).isFineFor(new CueKeepsLimits());
        lid(Play.blink("lid", 60_000, 4_999)).finds(new CueKeepsLimits(), """
                        ERROR too-many-starts at cue.greet/steps[0].blink
                        "greet" starts "lid" 3 times within 10 s, and it allows 2
                        why: the driver refuses the starts that are too many
                        fix: take steps away, or spread them over more than 10 s
                        """);
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
