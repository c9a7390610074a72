package slackwater.controller.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.controller.image.Image;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.model.event.Event;

/** Records are bounded, and what is lost is counted and told (S22). */
final class RecorderTest {
    private static final long SECOND_NS = 1_000_000_000L;

    /** A journal with so much room left; a negative number breaks it. */
    private static final class Narrow implements Journal {
        final List<Event> taken = new ArrayList<>();
        int room;

        @Override
        public boolean offer(final Event event) {
            if (room < 0) {
                throw new IllegalStateException("the disk is gone");
            }
            if (room == 0) {
                return false;
            }
            room--;
            taken.add(event);
            return true;
        }
    }

    private final Narrow journal = new Narrow();
    private final Recorder recorder = new Recorder(journal);
    private final RunState run = new Layout().newRun();
    private final Image image = new Image(0, 0, 0);

    private Event note() {
        final Event event = new Event.Cleared(run.atNs(), "stop", "reset");
        image.note(event);
        return event;
    }

    @Test
    void notes_go_to_the_journal_in_order_and_are_then_gone_from_the_scan() {
        journal.room = 10;
        final Event first = note();
        final Event second = new Event.Switched(0, "lid", true);
        image.note(second);
        recorder.record(run, image);
        recorder.record(run, image);
        assertThat(journal.taken).containsExactly(first, second);
        assertThat(image.events()).isEmpty();
        assertThat(recorder.dropped()).isZero();
    }

    @Test
    void what_finds_no_room_is_counted_and_told_before_what_comes_next() {
        note();
        note();
        recorder.record(run, image);
        assertThat(recorder.dropped()).isEqualTo(2);
        journal.room = 10;
        run.begin(5);
        final Event next = note();
        recorder.record(run, image);
        assertThat(journal.taken).containsExactly(new Event.Dropped(5, 2), next);
        assertThat(recorder.dropped()).isZero();
    }

    @Test
    void the_count_is_told_by_a_quiet_scan_too_and_only_once() {
        note();
        recorder.record(run, image);
        journal.room = 10;
        recorder.record(run, image);
        recorder.record(run, image);
        assertThat(journal.taken).containsExactly(new Event.Dropped(0, 1));
    }

    @Test
    void room_for_the_count_alone_leaves_the_rest_to_be_counted_anew() {
        note();
        recorder.record(run, image);
        journal.room = 1;
        note();
        note();
        recorder.record(run, image);
        assertThat(journal.taken).containsExactly(new Event.Dropped(0, 1));
        assertThat(recorder.dropped()).isEqualTo(2);
    }

    @Test
    void a_disk_that_is_dead_for_an_hour_costs_no_memory_and_its_losses_are_told_as_one_number() {
        journal.room = -1;
        for (int second = 1; second <= 3_600; second++) {
            run.begin(second * SECOND_NS);
            note();
            recorder.record(run, image);
            assertThat(image.events()).isEmpty();
        }
        journal.room = 10;
        run.begin(3_601 * SECOND_NS);
        recorder.record(run, image);
        assertThat(journal.taken).containsExactly(new Event.Dropped(3_601 * SECOND_NS, 3_600));
    }

    @Test
    void a_scan_with_more_notes_than_it_holds_counts_the_others() {
        journal.room = 1_000;
        for (int i = 0; i < 256; i++) {
            note();
        }
        assertThat(image.takeEventsLost()).isZero();
        note();
        note();
        recorder.record(run, image);
        assertThat(journal.taken).hasSize(257);
        assertThat(journal.taken.get(0)).isEqualTo(new Event.Dropped(0, 2));
        assertThat(image.takeEventsLost()).isZero();
    }
}
