package slackwater.controller.pins;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The one-way gate (S8). The second output rests high. */
@Timeout(20)
final class GateTest {
    private final TracedPins pins = new TracedPins(0, 3);
    private final Gate gate = new Gate(pins, new boolean[] {false, true, false});

    @Test
    void an_open_gate_writes_each_level_by_the_outputs_own_polarity() {
        gate.energise(0);
        gate.energise(1);
        gate.rest(0);
        gate.rest(1);
        assertThat(pins.takeWrites()).containsExactly("0=high", "1=low", "0=low", "1=high");
        assertThat(gate.isClosed()).isFalse();
    }

    @Test
    void a_closed_gate_turns_every_write_into_a_rest_and_makes_no_pulse() {
        gate.close();
        gate.energise(0);
        gate.energise(1);
        gate.pulse(true);
        assertThat(pins.takeWrites()).containsExactly("0=low", "1=high");
        assertThat(pins.lines().holdUpEdges()).isZero();
        assertThat(gate.isClosed()).isTrue();
    }

    @Test
    void an_open_gate_lets_pulses_through() {
        gate.pulse(true);
        gate.pulse(false);
        assertThat(pins.lines().holdUpEdges()).isEqualTo(2);
    }

    @Test
    void a_gate_that_closes_between_the_write_and_the_look_after_it_rests_again() {
        pins.beforeWrite(gate::close);
        gate.energise(1);
        assertThat(pins.takeWrites()).containsExactly("1=low", "1=high");
    }

    /** A lock around check and write would let the supervisor hang with the write. */
    @Test
    void a_write_that_hangs_while_the_gate_closes_ends_at_rest_when_it_is_let_go() throws InterruptedException {
        final CountDownLatch hangs = new CountDownLatch(1);
        final CountDownLatch release = new CountDownLatch(1);
        final Thread scan = new Thread(() -> gate.energise(0), "scan");
        pins.beforeWrite(() -> {
            if (Thread.currentThread() == scan && hangs.getCount() > 0) {
                hangs.countDown();
                waitFor(release);
            }
        });
        scan.start();
        assertThat(hangs.await(5, TimeUnit.SECONDS)).isTrue();

        gate.close();
        gate.restAll();
        assertThat(pins.takeWrites()).containsExactly("0=low", "1=high", "2=low");

        release.countDown();
        scan.join();
        assertThat(pins.takeWrites()).containsExactly("0=high", "0=low");
        assertThat(pins.lines().isOutputHigh(0)).isFalse();
    }

    @Test
    void resting_all_goes_on_when_one_write_throws_and_then_tells_the_first() {
        pins.breakWrite(0);
        pins.breakWrite(1);
        assertThatIllegalStateException().isThrownBy(gate::restAll).withMessage("line 0 is broken");
        assertThat(pins.takeWrites()).containsExactly("2=low");
    }

    @Test
    void what_lies_behind_can_be_looked_at() {
        assertThat(gate.lines()).isSameAs(pins);
    }

    private static void waitFor(final CountDownLatch release) {
        try {
            release.await();
        } catch (final InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
