package slackwater.controller.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

final class RunStateTest {
    private enum Place {
        SHORE,
        SHOAL,
        DEEP
    }

    private final Layout layout = new Layout();
    private final Flag flag = layout.flag("lit");
    private final Count count = layout.count("greeted", 3);
    private final Bits bits = layout.bits("people");
    private final Phase<Place> phase = layout.phase("place", Place.class);
    private final Timer timer = layout.timer("rests");
    private final Timer other = layout.timer("waits");
    private final Since since = layout.since("lit.since");
    private RunState run = layout.newRun();

    @BeforeEach
    void begin() {
        run = layout.newRun();
        run.begin(100);
    }

    @Test
    void everything_begins_at_its_beginning() {
        assertThat(flag.is(run)).isFalse();
        assertThat(count.of(run)).isZero();
        assertThat(bits.isEmpty(run)).isTrue();
        assertThat(phase.of(run)).isEqualTo(Place.SHORE);
        assertThat(timer.isStarted(run)).isFalse();
        assertThat(timer.isRunning(run)).isFalse();
        assertThat(timer.isDue(run)).isFalse();
        assertThat(run.wakeNs()).isEqualTo(Long.MAX_VALUE);
        assertThat(run.hasChanged()).isFalse();
    }

    @Test
    void what_is_set_is_read() {
        flag.set(run, true);
        count.set(run, 2);
        bits.set(run, 5);
        phase.set(run, Place.DEEP);
        since.mark(run);
        assertThat(flag.is(run)).isTrue();
        assertThat(count.of(run)).isEqualTo(2);
        assertThat(bits.of(run)).isEqualTo(5);
        assertThat(bits.isEmpty(run)).isFalse();
        assertThat(phase.of(run)).isEqualTo(Place.DEEP);
        assertThat(since.atNs(run)).isEqualTo(100);
        flag.set(run, false);
        since.markAt(run, 70);
        assertThat(flag.is(run)).isFalse();
        assertThat(since.atNs(run)).isEqualTo(70);
    }

    @Test
    void a_timer_is_due_exactly_at_its_time() {
        timer.start(run, 50);
        run.begin(149);
        assertThat(timer.isDue(run)).isFalse();
        assertThat(timer.isRunning(run)).isTrue();
        assertThat(timer.leftNs(run)).isEqualTo(1);
        run.begin(150);
        assertThat(timer.isDue(run)).isTrue();
        assertThat(timer.isRunning(run)).isFalse();
        assertThat(timer.isStarted(run)).isTrue();
        assertThat(timer.leftNs(run)).isZero();
        run.begin(151);
        assertThat(timer.isDue(run)).isTrue();
        assertThat(timer.leftNs(run)).isZero();
        timer.stop(run);
        assertThat(timer.isStarted(run)).isFalse();
        assertThat(timer.isDue(run)).isFalse();
    }

    @Test
    void a_timer_of_no_length_is_due_in_the_very_scan() {
        timer.start(run, 0);
        assertThat(timer.isDue(run)).isTrue();
        assertThat(timer.isRunning(run)).isFalse();
    }

    @Test
    void a_length_beyond_all_time_is_never_due_but_started_and_less_than_none_is_refused() {
        timer.start(run, Long.MAX_VALUE);
        assertThat(timer.isStarted(run)).isTrue();
        assertThat(timer.isDue(run)).isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> timer.start(run, -1))
                .withMessageContaining("lengthNs=-1");
    }

    @Test
    void a_count_keeps_within_its_bounds() {
        count.set(run, 3);
        count.set(run, 0);
        count.set(run, 3);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> count.set(run, 4))
                .withMessage("count=4 is not in 0..3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> count.set(run, -1))
                .withMessage("count=-1 is not in 0..3");
        assertThat(count.of(run)).isEqualTo(3);
    }

    @Test
    void time_may_stand_still_but_never_goes_back() {
        run.begin(100);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> run.begin(99))
                .withMessage("time goes back: nowNs=99 < 100");
        assertThat(run.atNs()).isEqualTo(100);
    }

    @Test
    void only_what_differs_counts_as_a_change_and_a_tally_never_does() {
        flag.set(run, false);
        timer.stop(run);
        since.mark(run);
        assertThat(run.hasChanged()).isFalse();
        flag.set(run, true);
        assertThat(run.hasChanged()).isTrue();
        run.begin(101);
        assertThat(run.hasChanged()).isFalse();
        timer.start(run, 5);
        assertThat(run.hasChanged()).isTrue();
    }

    @Test
    void it_wakes_at_once_after_a_change_and_else_at_the_nearest_deadline_to_come() {
        timer.start(run, 50);
        other.start(run, 20);
        assertThat(run.wakeNs()).isEqualTo(100);
        run.begin(101);
        assertThat(run.wakeNs()).isEqualTo(120);
        run.begin(119);
        assertThat(run.wakeNs()).isEqualTo(120);
        run.begin(120);
        assertThat(run.wakeNs()).isEqualTo(150);
        run.begin(150);
        assertThat(run.wakeNs()).isEqualTo(Long.MAX_VALUE);
    }

    @Test
    void a_copy_goes_on_by_itself() {
        flag.set(run, true);
        timer.start(run, 50);
        since.mark(run);
        final RunState copy = run.copy();
        assertThat(copy.isSameAs(run)).isTrue();
        assertThat(copy.fingerprint()).isEqualTo(run.fingerprint());
        assertThat(copy.atNs()).isEqualTo(100);
        assertThat(copy.hasChanged()).isTrue();
        assertThat(since.atNs(copy)).isEqualTo(100);

        flag.set(copy, false);
        timer.stop(copy);
        since.markAt(copy, 1);
        copy.begin(500);
        assertThat(flag.is(run)).isTrue();
        assertThat(timer.isStarted(run)).isTrue();
        assertThat(since.atNs(run)).isEqualTo(100);
        assertThat(run.atNs()).isEqualTo(100);
        assertThat(copy.isSameAs(run)).isFalse();
    }

    @Test
    void runs_are_the_same_only_when_every_cell_and_every_deadline_is() {
        final RunState copy = run.copy();
        count.set(copy, 1);
        assertThat(copy.isSameAs(run)).isFalse();
        assertThat(copy.fingerprint()).isNotEqualTo(run.fingerprint());
        count.set(copy, 0);
        assertThat(copy.isSameAs(run)).isTrue();
        assertThat(copy.fingerprint()).isEqualTo(run.fingerprint());
        timer.start(copy, 1);
        assertThat(copy.isSameAs(run)).isFalse();
        assertThat(copy.fingerprint()).isNotEqualTo(run.fingerprint());
    }

    @Test
    void a_fingerprint_does_not_tell_when_the_run_began_or_how_long_ago_something_was_due() {
        timer.start(run, 50);
        final RunState later = layout.newRun();
        later.begin(7_000);
        timer.start(later, 50);
        since.mark(later);
        assertThat(later.fingerprint()).isEqualTo(run.fingerprint());
        run.begin(150);
        later.begin(9_000);
        assertThat(later.fingerprint()).isEqualTo(run.fingerprint());
        assertThat(later.isSameAs(run)).isFalse();
        run.begin(151);
        assertThat(later.fingerprint()).isEqualTo(run.fingerprint());
    }

    @Test
    void a_fingerprint_tells_time_left_apart() {
        timer.start(run, 50);
        final long before = run.fingerprint();
        run.begin(101);
        assertThat(run.fingerprint()).isNotEqualTo(before);
    }

    @Test
    void a_run_can_be_shown_in_words_in_the_order_of_the_layout() {
        count.set(run, 2);
        timer.start(run, 50);
        run.begin(130);
        assertThat(layout.describe(run))
                .containsExactly(
                        "lit = 0", "greeted = 2", "people = 0", "place = 0", "rests due 20 ns", "waits due never");
    }
}
