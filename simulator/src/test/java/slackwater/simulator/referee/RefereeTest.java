package slackwater.simulator.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static slackwater.simulator.referee.TestRig.MS;
import static slackwater.simulator.referee.TestRig.is;
import static slackwater.simulator.referee.TestRig.limits;
import static slackwater.simulator.referee.TestRig.ms;
import static slackwater.simulator.referee.TestRig.not;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import slackwater.model.Begun;
import slackwater.model.Facts;
import slackwater.model.Input;
import slackwater.model.Interlock;
import slackwater.model.Level;
import slackwater.model.Limits;
import slackwater.model.Load;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;

final class RefereeTest {
    private static TestRig lid() {
        return new TestRig().limited("lid", Family.VALVE, limits(ms(2000), ms(1000)));
    }

    private static TestRig everything() {
        final TestRig rig = lid().output("mist", Family.MISTER)
                .output("flash", Family.STROBE)
                .input("reach", InputFamily.BEAM, ms(0), ms(200))
                .input("water", InputFamily.LEVEL, ms(0), ms(500))
                .button("reset", Input.Use.RESET, Facts.NONE)
                .interlock(new Interlock.Permissive("clear", List.of("lid"), List.of(not("reach")), Begun.REST))
                .interlock(new Interlock.Permissive("wet", List.of("mist"), List.of(is("water")), Begun.REST))
                .interlock(new Interlock.Trip("dry", List.of("mist"), List.of(not("water")), Begun.REST))
                .interlock(new Interlock.Exclusion("one", List.of("lid", "mist"), ms(500)))
                .interlock(new Interlock.LoadLimit("supply", List.of("lid", "mist"), 1, Map.of()))
                .interlock(new Interlock.FlashLimit("seen", List.of("flash"), 1, Map.of()));
        for (int more = 0; more < 22; more++) {
            rig.output("lamp-" + more, Family.LAMP);
        }
        return rig;
    }

    @Test
    void a_pin_that_is_energised_high_is_read_by_its_own_polarity() {
        final TestRig rig =
                new TestRig().output("lid", Family.VALVE, limits(ms(100), ms(0)), Load.NONE, Facts.NONE, Level.HIGH);
        final Run run = Run.armed(rig);
        assertThat(run.idle(9000 * MS).look(9000 * MS).found()).isEmpty();
        run.yard.isOutputHigh[0] = true;
        assertThat(run.look(9001 * MS).idle(9999 * MS).found()).containsExactly("longest-on lid 9111000001");
    }

    @Test
    void a_controller_that_swaps_the_polarity_of_a_pin_is_caught_at_power_on() {
        final Run run = Run.dark(lid());
        run.setOutput("lid", true);
        assertThat(run.look(0).idle(9000 * MS).found())
                .containsExactly("before-arm lid 0", "longest-on lid 2010000001");
    }

    @Test
    void rules_are_judged_by_pins_even_while_the_load_has_no_power() {
        final Run run = Run.armed(lid()).on("lid", 0);
        run.yard.isPowered[0] = false;
        assertThat(run.idle(9000 * MS).found()).containsExactly("longest-on lid 2010000001");
    }

    @Test
    void it_needs_no_look_while_nothing_is_due() {
        final Run run = Run.armed(everything());
        run.idle(1000 * MS);
        assertThat(run.referee.wakeNs()).isEqualTo(Long.MAX_VALUE);
    }

    @Test
    void time_does_not_run_back() {
        final Run run = Run.armed(lid()).look(10);
        assertThatThrownBy(() -> run.look(9))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("10 ns to 9 ns");
    }

    @Test
    void a_copy_goes_its_own_way_with_the_same_past() {
        final Run run = Run.armed(everything()).active("reach", 100 * MS);
        run.pulse("flash", 200 * MS, 210 * MS).on("lid", 300 * MS);
        final List<String> before = run.found();
        final Referee copy = run.referee.copy();
        assertThat(copy.violations()).isEqualTo(run.referee.violations());
        assertThat(copy.wakeNs()).isEqualTo(run.referee.wakeNs());
        run.idle(9000 * MS).on("flash", 9001 * MS);
        assertThat(run.found()).hasSizeGreaterThan(before.size());
        assertThat(copy.violations()).hasSize(before.size());
        assertThat(copy.figures().outputs().get(0).longestOnNs()).isZero();
    }

    @Test
    void a_copy_told_the_same_finds_the_same() {
        final Run run = Run.armed(everything()).active("water", 100 * MS).inactive("water", 150 * MS);
        run.on("lid", 300 * MS).pulse("flash", 310 * MS, 320 * MS).act(new Act.Lockout("north", "Ole"), 330 * MS);
        final Referee copy = run.referee.copy();
        final FakeYard yard = run.yard;
        for (long at = 331; at < 3000; at += 7) {
            yard.isOutputHigh[1] = at % 3 == 0;
            yard.isOutputHigh[2] = at % 5 == 0;
            yard.isInputHigh[1][0] = at % 11 == 0;
            yard.isInputHigh[2][0] = at % 1000 < 600;
            run.look(at * MS);
            copy.look(at * MS, yard);
        }
        assertThat(run.found()).hasSizeGreaterThan(20);
        assertThat(copy.violations()).isEqualTo(run.referee.violations());
        assertThat(copy.figures()).isEqualTo(run.referee.figures());
    }

    @Test
    void times_and_starts_are_counted_up_to_the_last_look() {
        final Run run = Run.armed(lid()).pulse("lid", 1000 * MS, 1500 * MS).on("lid", 4000 * MS);
        run.look(4700 * MS);
        final Figures.OfOutput lid = run.referee.figures().outputs().get(0);
        assertThat(lid.starts()).isEqualTo(2);
        assertThat(lid.longestOnNs()).isEqualTo(700 * MS);
        assertThat(lid.atRestNs()).isEqualTo(3500 * MS);
        assertThat(run.off("lid", 4800 * MS)
                        .look(5000 * MS)
                        .referee
                        .figures()
                        .outputs()
                        .get(0)
                        .atRestNs())
                .isEqualTo(3700 * MS);
    }

    @Test
    void a_look_at_which_nothing_changed_allocates_nothing() {
        final Run run = Run.armed(everything()).on("lid", 1000 * MS);
        final Referee referee = run.referee;
        final FakeYard yard = run.yard;
        final ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long atNs = 1000 * MS;
        for (int look = 0; look < 20_000; look++) {
            atNs++;
            referee.look(Math.min(atNs, referee.wakeNs()), yard);
        }
        final long before = threads.getCurrentThreadAllocatedBytes();
        for (int look = 0; look < 20_000; look++) {
            atNs++;
            referee.look(Math.min(atNs, referee.wakeNs()), yard);
        }
        final long bytes = threads.getCurrentThreadAllocatedBytes() - before;
        assertThat(bytes / 20_000).as("bytes for each look").isZero();
    }

    @Test
    void a_violation_reads_as_one_line() {
        final Run run = Run.armed(lid()).on("lid", 0).idle(9000 * MS);
        assertThat(run.referee.violations().get(0).text())
                .isEqualTo("0:00:02.010 lid: longest-on, energised for more than 2 s and one scan");
    }

    @Test
    void outputs_without_limits_are_not_limited() {
        final TestRig rig = new TestRig().limited("lamp", Family.LAMP, Limits.NONE);
        assertThat(Run.armed(rig).on("lamp", 0).idle(9000 * MS).look(9000 * MS).found())
                .isEmpty();
    }
}
