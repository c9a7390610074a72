package slackwater.controller.watchdog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Logical monitoring of program sequence, IEC 61508-2 Table A.10 (handbook 6.8); S2. */
final class ProofOfScanTest {
    private static final List<Step> STEPS = List.of(Step.values());

    private static boolean isComplete(final List<Step> marks) {
        final ProofOfScan proof = new ProofOfScan();
        proof.begin();
        marks.forEach(proof::mark);
        return proof.isComplete();
    }

    @Test
    void every_step_once_and_in_order_is_a_proof() {
        assertThat(isComplete(STEPS)).isTrue();
    }

    @Test
    void any_missing_step_spoils_it() {
        for (int missing = 0; missing < STEPS.size(); missing++) {
            final List<Step> marks = new ArrayList<>(STEPS);
            marks.remove(missing);
            assertThat(isComplete(marks)).as("without %s", STEPS.get(missing)).isFalse();
        }
        assertThat(isComplete(List.of())).isFalse();
    }

    @Test
    void any_repeated_step_spoils_it() {
        for (int twice = 0; twice < STEPS.size(); twice++) {
            for (int at = 0; at <= STEPS.size(); at++) {
                final List<Step> marks = new ArrayList<>(STEPS);
                marks.add(at, STEPS.get(twice));
                assertThat(isComplete(marks))
                        .as("%s again at %d", STEPS.get(twice), at)
                        .isFalse();
            }
        }
    }

    @Test
    void any_two_swapped_steps_spoil_it() {
        for (int a = 0; a < STEPS.size(); a++) {
            for (int b = a + 1; b < STEPS.size(); b++) {
                final List<Step> marks = new ArrayList<>(STEPS);
                Collections.swap(marks, a, b);
                assertThat(isComplete(marks))
                        .as("%s and %s swapped", STEPS.get(a), STEPS.get(b))
                        .isFalse();
            }
        }
    }

    @Test
    void a_new_scan_begins_with_nothing_proved_and_nothing_spoiled() {
        final ProofOfScan proof = new ProofOfScan();
        proof.begin();
        STEPS.forEach(proof::mark);
        proof.begin();
        assertThat(proof.isComplete()).isFalse();
        proof.mark(Step.PINS);
        proof.begin();
        STEPS.forEach(proof::mark);
        assertThat(proof.isComplete()).isTrue();
    }
}
