package slackwater.simulator.referee;

import java.util.List;
import java.util.stream.Collectors;
import slackwater.model.Condition;

/** Conditions as one controller senses them. */
final class Terms {
    private final int[] senses;
    private final boolean[] wanted;
    private final String text;

    Terms(final List<Condition> conditions, final int controller, final Wiring wiring) {
        senses = new int[conditions.size()];
        wanted = new boolean[conditions.size()];
        for (int index = 0; index < senses.length; index++) {
            senses[index] = wiring.senseOf(conditions.get(index), controller);
            wanted[index] = conditions.get(index).isActive();
        }
        text = conditions.stream().map(Condition::toString).collect(Collectors.joining(" and "));
    }

    String text() {
        return text;
    }

    boolean names(final int sense) {
        for (final int named : senses) {
            if (named == sense) {
                return true;
            }
        }
        return false;
    }

    boolean isEachProven(final Levels levels) {
        for (int index = 0; index < senses.length; index++) {
            if (!levels.isProven(senses[index], wanted[index])) {
                return false;
            }
        }
        return true;
    }

    boolean isEachSampledProven(final Levels levels) {
        for (int index = 0; index < senses.length; index++) {
            if (!levels.isSampledProven(senses[index], wanted[index])) {
                return false;
            }
        }
        return true;
    }

    /** Whether the levels agree now, proven or not. */
    boolean isEachThere(final Levels levels) {
        for (int index = 0; index < senses.length; index++) {
            if (levels.isActive(senses[index]) != wanted[index]) {
                return false;
            }
        }
        return true;
    }

    /** From when on all of them are proven at the earliest, or {@link Dues#NEVER} while one disagrees. */
    long provenFromNs(final Levels levels) {
        if (!isEachThere(levels)) {
            return Dues.NEVER;
        }
        long latest = Levels.NONE;
        for (int index = 0; index < senses.length; index++) {
            latest = Math.max(latest, levels.provenFromNs(senses[index], wanted[index]));
        }
        return latest;
    }

    /** When a controller has proven all of them at the latest, or {@link Dues#NEVER} while one disagrees. */
    long surelyProvenNs(final Levels levels) {
        if (!isEachThere(levels)) {
            return Dues.NEVER;
        }
        long latest = Levels.NONE;
        for (int index = 0; index < senses.length; index++) {
            latest = Math.max(latest, levels.surelyProvenNs(senses[index], wanted[index]));
        }
        return latest;
    }
}
