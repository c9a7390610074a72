package slackwater.simulator.referee;

import java.util.ArrayList;
import java.util.List;

/** The violations found so far. */
final class Log {
    private final List<Violation> violations;

    Log() {
        this(List.of());
    }

    private Log(final List<Violation> violations) {
        this.violations = new ArrayList<>(violations);
    }

    void add(final String rule, final String output, final long atNs, final String detail) {
        violations.add(new Violation(rule, output, atNs, detail));
    }

    List<Violation> violations() {
        return List.copyOf(violations);
    }

    Log copy() {
        return new Log(violations);
    }
}
