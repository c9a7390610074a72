package slackwater.simulator.junit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.model.kind.OutputKind;

/** S25: a kind or cue from outside takes part in snapshot, comparison and hash, or is refused by name. */
class KindContractTest {
    private static final String SAMPLES = "slackwater.simulator.junit.SampleKind$";

    @TempDir
    private Path folder;

    private KindContract contract(final OutputKind kind) {
        return SampleRig.with(folder, kind);
    }

    @Test
    void aKindThatRemembersInTheRunKeepsIt() {
        assertThat(contract(new SampleKind.Sound()).breaches()).isEmpty();
    }

    @Test
    void aCueThatRemembersInTheRunKeepsIt() {
        assertThat(SampleRig.with(folder, new SampleCode.Sound()).breaches()).isEmpty();
    }

    @Test
    void aHiddenCounterIsRefusedByItsName() {
        assertThat(contract(new SampleKind.HiddenCounter()).fieldBreaches())
                .containsExactly(
                        SAMPLES + "HiddenCounter$Blink.hidden is not final: what it remembers is not in the run");
    }

    @Test
    void aHiddenCounterIsSeenInItsRunsToo() {
        assertThat(contract(new SampleKind.HiddenCounter()).behaviourBreaches())
                .hasSize(2)
                .allMatch(breach -> breach.startsWith("sample: "))
                .anyMatch(breach -> breach.startsWith("sample: a fork goes another way than the run that it came from")
                        || breach.startsWith("sample: a run goes another way because it was forked"))
                .anyMatch(breach -> breach.startsWith("sample: passing over quiet scans changes what the pins do"));
    }

    @Test
    void aCounterThatNoRunShowsIsSeenByItsField() {
        final KindContract contract = contract(new SampleKind.IdleCounter());

        assertThat(contract.behaviourBreaches()).isEmpty();
        assertThat(contract.fieldBreaches())
                .containsExactly(SAMPLES + "IdleCounter$Idle.idle is not final: what it remembers is not in the run");
    }

    @Test
    void aCounterThatNoFieldShowsIsSeenInItsRuns() {
        final KindContract contract = contract(new SampleKind.CounterInAnArray());

        assertThat(contract.fieldBreaches()).isEmpty();
        assertThat(contract.behaviourBreaches()).isNotEmpty().allMatch(breach -> breach.startsWith("sample: "));
    }

    @Test
    void aCounterThatALambdaCapturedIsFound() {
        assertThat(contract(new SampleKind.CounterInALambda()).fieldBreaches())
                .singleElement()
                .asString()
                .startsWith(SAMPLES + "CounterInALambda$$Lambda")
                .endsWith(" holds a java.util.concurrent.atomic.AtomicLong, which is not known never to change");
    }

    @Test
    void aListThatCanGrowIsFound() {
        assertThat(contract(new SampleKind.ListKeeper()).fieldBreaches())
                .containsExactly(
                        SAMPLES + "ListKeeper.notes holds a java.util.ArrayList, which is not known never to change");
    }

    @Test
    void aCounterSharedByAllRunsIsFoundByItsFieldAndByRunningTwice() {
        final KindContract contract = contract(new SampleKind.StaticCounter());

        assertThat(contract.fieldBreaches())
                .containsExactly(SAMPLES + "StaticCounter.shared is not final: what it remembers is not in the run");
        assertThat(contract.behaviourBreaches())
                .anyMatch(breach -> breach.startsWith("sample: the same run twice goes two ways"));
    }

    @Test
    void aCueThatCountsItsStartsByItselfIsRefusedByNameAndSeenInItsRuns() {
        final KindContract contract = SampleRig.with(folder, new SampleCode.HiddenCount());

        assertThat(contract.fieldBreaches())
                .containsExactly("slackwater.simulator.junit.SampleCode$Longer.hiddenStarts is not final: what it"
                        + " remembers is not in the run");
        assertThat(contract.behaviourBreaches())
                .isNotEmpty()
                .allMatch(breach -> breach.startsWith("sample-cue: "))
                .anyMatch(breach -> breach.contains("fork"));
    }

    @Test
    void aKindThatBreaksAScanIsNamedWithWhatItThrew() {
        assertThat(contract(new SampleKind.Breaking()).breaches())
                .anyMatch(breach -> breach.startsWith("sample: ")
                        && breach.endsWith("a scan failed: java.lang.IllegalStateException: the sample broke"));
    }

    @Test
    void whatWasNeverEnergisedWasNotTried() {
        assertThat(contract(new SampleKind.Silent()).breaches())
                .containsExactly("sample: \"light\" was never energised, so it was not tried");
    }

    @Test
    void wordsAreLowerCaseWithHyphensAndKeysSayWhatTheyMean() {
        final String name = SAMPLES + "BadlyWorded: the ";
        final String rule = " is not lower case with hyphens, as every word in a rig file is";
        assertThat(contract(new SampleKind.BadlyWorded()).breaches())
                .containsExactly(
                        name + "word \"Sample_Lamp\"" + rule,
                        name + "key \"burnsFor\"" + rule,
                        name + "key \"waits\" does not say what it means",
                        name + "key \"waits\" is there twice");
    }

    @Test
    void aRigWithNothingFromOutsideProvesNothing() {
        assertThat(SampleRig.plain(folder).breaches())
                .singleElement()
                .asString()
                .endsWith("so nothing was tried");
    }

    @Test
    void theCheckListsEveryBreachWithItsSeed() {
        final KindContract contract = contract(new SampleKind.Silent()).withSeed(7);

        assertThatThrownBy(contract::check)
                .isInstanceOf(AssertionError.class)
                .hasMessage("what comes from outside the project breaks its contract (seed 7):\n"
                        + "- sample: \"light\" was never energised, so it was not tried");
    }
}
