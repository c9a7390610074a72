package slackwater.simulator.sabotage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.simulator.referee.Violation;
import slackwater.simulator.sabotage.Workshop.Edit;

/** Each way of breaking the controller is seen by the referee, who shares no code with it (S20). */
final class SabotageTest {
    private static final ClassLoader WHOLE = Workshop.loader(List.of());
    private static final Quay.Set BY_KEY = Quay.byKey();
    private static final Quay.Set BY_SCHEDULE = Quay.bySchedule();

    static Stream<Sabotage> sabotages() {
        return Sabotages.ALL.stream();
    }

    static Stream<String> scenes() {
        return Sabotages.ALL.stream().map(Sabotage::scene).distinct();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sabotages")
    void the_referee_sees(final Sabotage sabotage) throws Exception {
        assertThat(play(Workshop.loader(sabotage.edits()), sabotage.scene()))
                .extracting(Violation::rule)
                .contains(sabotage.rule());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scenes")
    void the_whole_controller_breaks_no_rule_in(final String scene) throws Exception {
        assertThat(play(WHOLE, scene)).extracting(Violation::text).isEmpty();
    }

    /** The referee knows no demand (S20), so a demand that fires twice shows in its count of starts only. */
    @Test
    void a_demand_that_is_not_used_up_by_a_refusal_fires_again_when_the_wind_is_gone() throws Exception {
        final List<Edit> edits = List.of(new Edit(
                "guard/GuardStage", "consumes[o] = outputs.get(o).family().consumesDemand();", "consumes[o] = false;"));
        assertThat(starts(WHOLE, "the wind rises", "jet")).isEqualTo(1);
        assertThat(starts(Workshop.loader(edits), "the wind rises", "jet")).isEqualTo(2);
    }

    @Test
    void a_demand_that_is_not_used_up_by_its_longest_on_fires_again() throws Exception {
        final List<Edit> edits = List.of(
                new Edit(
                        "driver/DriverStage",
                        "if (!image.demand[output] || image.renewed[output])",
                        "if (output >= 0)"),
                new Edit(
                        "guard/GuardStage",
                        "consumes[o] = outputs.get(o).family().consumesDemand();",
                        "consumes[o] = false;"));
        assertThat(starts(WHOLE, "lid held", "lid")).isEqualTo(1);
        assertThat(starts(Workshop.loader(edits), "lid held", "lid")).isEqualTo(2);
    }

    @Test
    void a_sabotage_that_no_longer_fits_its_source_is_told() {
        assertThatThrownBy(() -> Workshop.loader(List.of(new Edit("mode/ModeTable", "no such text", ""))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("mode/ModeTable must say exactly once");
    }

    private static Quay.Set set(final String scene) {
        return Sabotages.BY_SCHEDULE.contains(scene) ? BY_SCHEDULE : BY_KEY;
    }

    @SuppressWarnings("unchecked") // what the scenes give is loaded by the test's own loader
    private static List<Violation> play(final ClassLoader loader, final String scene) throws Exception {
        final Quay.Set set = set(scene);
        return (List<Violation>) scenes(loader)
                .getMethod("play", String.class, Rig.class, Show.class)
                .invoke(null, scene, set.rig(), set.show());
    }

    private static int starts(final ClassLoader loader, final String scene, final String output) throws Exception {
        final Quay.Set set = set(scene);
        return (int) scenes(loader)
                .getMethod("starts", String.class, Rig.class, Show.class, String.class)
                .invoke(null, scene, set.rig(), set.show(), output);
    }

    private static Class<?> scenes(final ClassLoader loader) throws ClassNotFoundException {
        return loader.loadClass(Scenes.class.getName());
    }
}
