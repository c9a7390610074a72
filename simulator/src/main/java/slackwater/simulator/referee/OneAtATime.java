package slackwater.simulator.referee;

import slackwater.model.Interlock;
import slackwater.model.event.Spans;
import slackwater.model.kind.Family;

/** An exclusion: a member counts until it has been at rest, and its own run is over, for the clear-after time (S12). */
final class OneAtATime extends Rule {
    private final String name;
    private final int[] members;
    private final long[] runTimeNs;
    private final long clearAfterNs;

    OneAtATime(final Interlock.Exclusion exclusion, final Wiring wiring) {
        name = exclusion.name();
        members = wiring.indicesOf(exclusion.outputs());
        clearAfterNs = Wiring.ns(exclusion.clearAfter());
        runTimeNs = new long[members.length];
        for (int index = 0; index < members.length; index++) {
            if (wiring.output(members[index]).family() == Family.CONTACT) {
                runTimeNs[index] = wiring.output(members[index])
                        .facts()
                        .duration("run-time")
                        .map(Wiring::ns)
                        .orElse(0L);
            }
        }
    }

    @Override
    void started(final int output, final Levels levels, final Log log) {
        if (!isMember(output)) {
            return;
        }
        for (int index = 0; index < members.length; index++) {
            if (members[index] != output && isCounted(index, levels)) {
                log.add(
                        RuleWords.EXCLUSION,
                        levels.wiring().outputName(output),
                        levels.nowNs(),
                        "\"" + name + "\": " + levels.wiring().outputName(members[index])
                                + " was not at rest and clear for " + Spans.text(clearAfterNs));
            }
        }
    }

    private boolean isMember(final int output) {
        for (final int member : members) {
            if (member == output) {
                return true;
            }
        }
        return false;
    }

    private boolean isCounted(final int index, final Levels levels) {
        final int other = members[index];
        if (levels.isEnergised(other)) {
            return true;
        }
        if (levels.restedNs(other) == Levels.NONE) {
            return false;
        }
        final long stillNs = Math.max(levels.restedNs(other), levels.startedNs(other) + runTimeNs[index]);
        return levels.nowNs() < stillNs + clearAfterNs;
    }

    /** Remembers nothing, so it is its own copy. */
    @Override
    OneAtATime copy() {
        return this;
    }
}
