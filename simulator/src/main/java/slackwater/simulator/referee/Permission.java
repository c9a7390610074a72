package slackwater.simulator.referee;

import java.util.List;
import slackwater.model.Begun;
import slackwater.model.Condition;
import slackwater.model.Interlock;

/**
 * A permissive on one controller. No allowance to start: at that moment every condition must have been electrically
 * true for its proving time. One period to end, where a stroke begun must rest: from the first level that disagrees,
 * even if it comes back at once (S7).
 */
final class Permission extends Rule {
    private final String name;
    private final boolean[] isGuarded;
    private final Terms needs;
    private final boolean isRestRequired;
    private final Dues dues;

    Permission(final Interlock.Permissive permissive, final int controller, final Wiring wiring) {
        this(
                permissive.name(),
                Guarded.on(controller, permissive.outputs(), wiring),
                terms(permissive.needs(), controller, wiring),
                permissive.begun() == Begun.REST,
                new Dues(wiring.outputs().size()));
    }

    private Permission(
            final String name,
            final boolean[] isGuarded,
            final Terms needs,
            final boolean isRestRequired,
            final Dues dues) {
        this.name = name;
        this.isGuarded = isGuarded;
        this.needs = needs;
        this.isRestRequired = isRestRequired;
        this.dues = dues;
    }

    private static Terms terms(final List<Condition> needs, final int controller, final Wiring wiring) {
        return new Terms(needs, controller, wiring);
    }

    @Override
    void passed(final long untilNs, final Levels levels, final Log log) {
        for (int output = 0; dues.isAnyPending() && output < isGuarded.length; output++) {
            if (dues.isOver(output, untilNs)) {
                add(output, dues.lateNs(output), "still energised one scan after it was not so", levels, log);
                dues.clear(output);
            }
        }
    }

    @Override
    void sensed(final int sense, final Levels levels) {
        if (!isRestRequired || !needs.names(sense) || needs.isEachThere(levels)) {
            return;
        }
        for (int output = 0; output < isGuarded.length; output++) {
            if (isGuarded[output] && levels.isEnergised(output)) {
                dues.set(output, levels.nowNs() + levels.wiring().periodNs());
            }
        }
    }

    @Override
    void rested(final int output, final Levels levels) {
        dues.clear(output);
    }

    @Override
    void started(final int output, final Levels levels, final Log log) {
        if (isGuarded[output] && !needs.isEachProven(levels)) {
            add(output, levels.nowNs(), "started without it being proven", levels, log);
        }
    }

    private void add(final int output, final long atNs, final String what, final Levels levels, final Log log) {
        log.add(
                RuleWords.PERMISSIVE,
                levels.wiring().outputName(output),
                atNs,
                "\"" + name + "\" needs " + needs.text() + ": " + what);
    }

    @Override
    long wakeNs(final Levels levels) {
        return dues.wakeNs();
    }

    @Override
    Permission copy() {
        return new Permission(name, isGuarded, needs, isRestRequired, dues.copy());
    }
}
