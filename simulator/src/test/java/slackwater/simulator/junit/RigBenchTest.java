package slackwater.simulator.junit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectMethod;

import java.lang.reflect.Method;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtensionConfigurationException;
import org.junit.platform.launcher.LauncherDiscoveryRequest;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.launcher.listeners.SummaryGeneratingListener;
import slackwater.controller.cue.CueCode;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.evening.Keeper;

@RigBench(folder = "rigs/first")
class RigBenchTest {
    private static final Duration WARNED = Duration.ofSeconds(10);

    private int ownSeconds;

    /** The bench of a test is one, whoever asks for it. */
    @BeforeEach
    void letASecondPass(final VirtualBench bench) {
        ownSeconds++;
        bench.advance(Duration.ofSeconds(1));
    }

    @Test
    void aTestIsHandedItsRigOnABench(
            final VirtualBench bench, final Rig rig, final Show show, final List<CueCode> codes) {
        assertThat(bench.rig()).isSameAs(rig);
        assertThat(rig.name()).isEqualTo("first");
        assertThat(show.name()).isEqualTo("first");
        assertThat(codes).isEmpty();
        assertThat(Duration.ofNanos(bench.nowNs())).isEqualTo(Duration.ofSeconds(ownSeconds));
    }

    @Test
    void theKeeperOpensAndAVisitorIsGreeted(final VirtualBench bench, final Keeper keeper) {
        bench.advance(keeper.open(bench).plus(WARNED));

        bench.set("path", true).advance(Duration.ofMillis(50));

        assertThat(bench.isEnergised("lid")).as("%s", bench.whyNot("lid")).isTrue();
        bench.advance(Duration.ofSeconds(2));
        assertThat(bench.isEnergised("lid")).isFalse();
        assertThat(bench.violations()).isEmpty();
    }

    @Test
    @RigBench(folder = "rigs/driftwood", seed = 5)
    void aMethodsOwnRigCounts(final Rig rig) {
        assertThat(rig.name()).isEqualTo("Driftwood log");
    }

    @Test
    void aFailureTellsTheSeedALineToRunItAgainAndWhatHappened() {
        final Throwable failure = failureOf("failsAfterAGreeting");

        assertThat(failure).isInstanceOf(AssertionError.class).hasMessage("as this test is meant to");
        assertThat(failure.getSuppressed()).singleElement().satisfies(story -> {
            assertThat(story.getStackTrace()).isEmpty();
            assertThat(String.valueOf(story.getMessage()).lines())
                    .startsWith(
                            "on the bench: rig first, show first, seed 7, 1 min 15 s after its start",
                            "run it again: mvn test"
                                    + " -Dtest='slackwater.simulator.junit.MeantToFail#failsAfterAGreeting'"
                                    + " -Dslackwater.seed=7")
                    .contains("  0:01:15.010  porch  cue greet started by path", "  0:01:15.010  porch  lid energised");
        });
    }

    @Test
    void onlyTheLastFortyEventsAreTold() {
        final Throwable failure = failureOf("failsAfterAHundredRequests");
        final List<String> story =
                String.valueOf(failure.getSuppressed()[0].getMessage()).lines().toList();

        assertThat(story.get(2)).isEqualTo("the last 40 events:");
        assertThat(story).hasSize(3 + BenchLog.MOST);
    }

    @Test
    void anotherSeedCanBeGivenFromOutside() {
        System.setProperty(RigBench.SEED_PROPERTY, "99");
        try {
            assertThat(failureOf("failsAfterAGreeting").getSuppressed()[0]).hasMessageContaining("seed 99,");
        } finally {
            System.clearProperty(RigBench.SEED_PROPERTY);
        }
    }

    @Test
    void aRigWithErrorsFailsTheTestWithItsFindings() {
        assertThat(failureOf("hasABrokenRig"))
                .hasMessageContaining("cannot be put on a bench:")
                .hasMessageContaining("error unknown-word")
                .hasMessageContaining("did you mean \"valve\"?");
    }

    @Test
    void aFolderThatIsNowhereIsNamedWithWhereItWasLookedFor() {
        final Path here = Path.of("").toAbsolutePath();

        assertThatThrownBy(() -> RigBenchExtension.find(here, "rigs/nowhere"))
                .isInstanceOf(ExtensionConfigurationException.class)
                .hasMessage("there is no folder rigs/nowhere in " + here + " or in a folder above it");
    }

    private static Method method(final String name) {
        return Stream.of(MeantToFail.class.getDeclaredMethods())
                .filter(method -> method.getName().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Throwable failureOf(final String method) {
        final SummaryGeneratingListener heard = new SummaryGeneratingListener();
        final LauncherDiscoveryRequest request = LauncherDiscoveryRequestBuilder.request()
                .selectors(selectMethod(MeantToFail.class, method(method)))
                .build();
        LauncherFactory.create().execute(request, heard);
        assertThat(heard.getSummary().getFailures()).hasSize(1);
        return heard.getSummary().getFailures().get(0).getException();
    }
}
