package slackwater.simulator.referee;

import java.util.ArrayList;
import java.util.List;

/**
 * A locked output, or any in a locked zone, rests within one period and does not start until every name is off (S4).
 */
final class Lockouts extends Rule {
    /** One name on one output. */
    private record Lock(String target, String who) {}

    private final List<Lock> locks;
    private final Dues dues;

    Lockouts(final Wiring wiring) {
        this(List.of(), new Dues(wiring.outputs().size()));
    }

    private Lockouts(final List<Lock> locks, final Dues dues) {
        this.locks = new ArrayList<>(locks);
        this.dues = dues;
    }

    @Override
    void acted(final Act act, final Levels levels) {
        if (act instanceof Act.Lockout lockout) {
            final Lock lock = new Lock(checked(lockout.target(), levels.wiring()), lockout.who());
            if (!locks.contains(lock)) {
                locks.add(lock);
            }
            for (int output = 0; output < levels.wiring().outputs().size(); output++) {
                if (levels.isEnergised(output) && isIn(lockout.target(), output, levels.wiring())) {
                    dues.set(output, levels.nowNs() + levels.wiring().periodNs());
                }
            }
        } else if (act instanceof Act.Unlock unlock) {
            locks.remove(new Lock(checked(unlock.target(), levels.wiring()), unlock.who()));
        }
    }

    private static String checked(final String target, final Wiring wiring) {
        return wiring.hasZone(target) ? target : wiring.outputName(wiring.outputIndex(target));
    }

    private static boolean isIn(final String target, final int output, final Wiring wiring) {
        return target.equals(wiring.outputName(output))
                || target.equals(wiring.output(output).zone());
    }

    @Override
    void passed(final long untilNs, final Levels levels, final Log log) {
        for (int output = 0;
                dues.isAnyPending() && output < levels.wiring().outputs().size();
                output++) {
            if (dues.isOver(output, untilNs)) {
                log.add(
                        RuleWords.LOCKOUT,
                        levels.wiring().outputName(output),
                        dues.lateNs(output),
                        "still energised one scan after it was locked");
                dues.clear(output);
            }
        }
    }

    @Override
    void rested(final int output, final Levels levels) {
        dues.clear(output);
    }

    @Override
    void started(final int output, final Levels levels, final Log log) {
        for (final Lock lock : locks) {
            if (isIn(lock.target(), output, levels.wiring())) {
                log.add(
                        RuleWords.LOCKOUT,
                        levels.wiring().outputName(output),
                        levels.nowNs(),
                        "started although " + lock.who() + " had locked " + lock.target());
                return;
            }
        }
    }

    @Override
    long wakeNs(final Levels levels) {
        return dues.wakeNs();
    }

    @Override
    Lockouts copy() {
        return new Lockouts(locks, dues.copy());
    }
}
