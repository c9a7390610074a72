package slackwater.controller.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.time.Duration;
import org.junit.jupiter.api.Test;

final class WindowTest {
    private static final long SECOND_NS = 1_000_000_000L;

    private final Layout layout = new Layout();
    private final Window window = layout.window("flashes", 3, Duration.ofSeconds(1));
    private final RunState run = layout.newRun();

    private void countAt(final long atNs) {
        run.begin(atNs);
        window.count(run);
    }

    @Test
    void room_comes_back_one_by_one_exactly_when_each_has_left_the_span() {
        countAt(0);
        countAt(10);
        countAt(20);
        assertThat(window.room(run)).isZero();
        assertThat(window.leftNs(run)).isEqualTo(SECOND_NS - 20);

        run.begin(SECOND_NS - 1);
        assertThat(window.room(run)).isZero();
        assertThat(window.leftNs(run)).isEqualTo(1);
        run.begin(SECOND_NS);
        assertThat(window.room(run)).isEqualTo(1);
        assertThat(window.leftNs(run)).isZero();
        run.begin(SECOND_NS + 9);
        assertThat(window.room(run)).isEqualTo(1);
        run.begin(SECOND_NS + 10);
        assertThat(window.room(run)).isEqualTo(2);
    }

    /** A counter that starts afresh every second would allow six within a moment. */
    @Test
    void the_span_slides_and_does_not_start_afresh() {
        countAt(SECOND_NS - 3);
        countAt(SECOND_NS - 2);
        countAt(SECOND_NS - 1);
        run.begin(SECOND_NS);
        assertThat(window.room(run)).isZero();
        assertThatIllegalStateException()
                .isThrownBy(() -> window.count(run))
                .withMessage("no room: most=3 within 1000000000 ns");
        run.begin(2 * SECOND_NS - 3);
        window.count(run);
        assertThat(window.room(run)).isZero();
    }

    @Test
    void it_has_all_its_room_to_begin_with() {
        assertThat(window.room(run)).isEqualTo(3);
        assertThat(window.leftNs(run)).isZero();
        window.count(run);
        assertThat(window.room(run)).isEqualTo(2);
        assertThat(window.leftNs(run)).isZero();
    }
}
