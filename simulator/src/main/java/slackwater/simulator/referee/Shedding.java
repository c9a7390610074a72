package slackwater.simulator.referee;

import java.util.Arrays;
import slackwater.model.Interlock;

/**
 * What is shed on one controller when something gets scarce. The first output of the list must not start unless every need
 * is proven, as with a permissive; each further one not once the needs have been unproven for its time, and the one period
 * in which a controller may have learned of it.
 */
final class Shedding extends Rule {
    private final String name;
    private final Terms needs;
    private final long[] shedAfterNs;
    private long scarceNs = Levels.NONE;

    Shedding(final Interlock.Shed shed, final int controller, final Wiring wiring) {
        name = shed.name();
        needs = new Terms(shed.needs(), controller, wiring);
        final boolean[] isGuarded = Guarded.on(controller, shed.outputs(), wiring);
        shedAfterNs = new long[isGuarded.length];
        Arrays.fill(shedAfterNs, Dues.NEVER);
        for (int output = 0; output < isGuarded.length; output++) {
            if (isGuarded[output]) {
                final int place = shed.outputs().indexOf(wiring.outputName(output));
                shedAfterNs[output] = place * Wiring.ns(shed.nextAfter());
            }
        }
    }

    private Shedding(final Shedding other) {
        name = other.name;
        needs = other.needs;
        shedAfterNs = other.shedAfterNs;
        scarceNs = other.scarceNs;
    }

    @Override
    void begun(final Levels levels) {
        scarceNs = levels.nowNs();
    }

    @Override
    void passed(final long untilNs, final Levels levels, final Log log) {
        if (needs.provenFromNs(levels) <= untilNs) {
            scarceNs = Levels.NONE;
        }
    }

    @Override
    void sensed(final int sense, final Levels levels) {
        if (scarceNs == Levels.NONE && needs.names(sense) && !needs.isEachThere(levels)) {
            scarceNs = levels.nowNs();
        }
    }

    @Override
    void started(final int output, final Levels levels, final Log log) {
        final long shedNs = shedAfterNs[output];
        if (shedNs == Dues.NEVER) {
            return;
        }
        final boolean isFirst = shedNs == 0;
        final boolean isLate = scarceNs != Levels.NONE
                && levels.nowNs() >= scarceNs + shedNs + levels.wiring().periodNs();
        if (isFirst ? !needs.isEachProven(levels) : isLate) {
            log.add(
                    RuleWords.SHED,
                    levels.wiring().outputName(output),
                    levels.nowNs(),
                    "\"" + name + "\" needs " + needs.text() + ": started although it should have been shed");
        }
    }

    @Override
    Shedding copy() {
        return new Shedding(this);
    }
}
