package slackwater.simulator.referee;

import java.util.Locale;
import slackwater.model.kind.Family;
import slackwater.simulator.yard.Truth;

/**
 * What the plants suffer and what people meet, whatever the pins and interlocks say (S20), so that a missing interlock
 * shows. Nothing is allowed at the start; while running, what goes wrong has its tolerance to end.
 */
final class Harm extends Rule {
    /**
     * Kinetic energy above which a door without a protective device is no longer "low energy": handbook 1.11 case 11,
     * EN 16005 and ANSI A156.19. For healthy adults, not children; a figure for caution, no permission.
     */
    static final double CAUTION_J = 1.69;

    /**
     * Discs whose water runs out while they run stand it for a moment, and ripples uncover them for tenths of a
     * second; a level switch sits above them, so a second is far more than a rig that works will need. Common
     * practice, no source.
     */
    static final long DRY_TOLERATED_NS = 1_000_000_000L;

    private final boolean[] isPump;
    private final boolean[] isMister;
    private final boolean[] hasReach;
    private final boolean[] isPowered;
    private final boolean[] isBad;
    private final boolean[] isOccupiedFromStart;
    private final boolean[] isReported;
    private final boolean[] isMet;
    private final int[] nearMisses;
    private final double[] worstEnergyJ;
    private final Dues dues;

    Harm(final Wiring wiring) {
        final int outputs = wiring.outputs().size();
        isPump = new boolean[outputs];
        isMister = new boolean[outputs];
        hasReach = new boolean[outputs];
        for (int output = 0; output < outputs; output++) {
            isPump[output] = wiring.output(output).family() == Family.PUMP;
            isMister[output] = wiring.output(output).family() == Family.MISTER;
            hasReach[output] = wiring.output(output).reachM() > 0;
        }
        isPowered = new boolean[outputs];
        isBad = new boolean[outputs];
        isOccupiedFromStart = new boolean[outputs];
        isReported = new boolean[outputs];
        isMet = new boolean[outputs];
        nearMisses = new int[outputs];
        worstEnergyJ = new double[outputs];
        dues = new Dues(outputs);
    }

    private Harm(final Harm other) {
        isPump = other.isPump;
        isMister = other.isMister;
        hasReach = other.hasReach;
        isPowered = other.isPowered.clone();
        isBad = other.isBad.clone();
        isOccupiedFromStart = other.isOccupiedFromStart.clone();
        isReported = other.isReported.clone();
        isMet = other.isMet.clone();
        nearMisses = other.nearMisses.clone();
        worstEnergyJ = other.worstEnergyJ.clone();
        dues = other.dues.copy();
    }

    @Override
    void passed(final long untilNs, final Levels levels, final Log log) {
        for (int output = 0; dues.isAnyPending() && output < isPump.length; output++) {
            if (dues.isOver(output, untilNs)) {
                addBad(output, dues.lateNs(output), "ran on", levels, log);
                dues.clear(output);
            }
        }
    }

    @Override
    void plants(final Truth truth, final Levels levels, final Log log) {
        for (int output = 0; output < isPump.length; output++) {
            if (!isPump[output] && !isMister[output] && !hasReach[output]) {
                continue;
            }
            final boolean isPoweredNow = truth.isPowered(output);
            final boolean isStart = isPoweredNow && !isPowered[output];
            isPowered[output] = isPoweredNow;
            if (isPump[output]) {
                judgeBad(output, !truth.isHotEnough(output), isStart, levels, log);
            } else if (isMister[output]) {
                judgeBad(output, !truth.hasWater(output), isStart, levels, log);
            }
            if (hasReach[output]) {
                judgeReach(output, isStart, truth, levels, log);
            }
        }
    }

    private void judgeBad(
            final int output, final boolean isWrong, final boolean isStart, final Levels levels, final Log log) {
        final boolean isBadNow = isWrong && isPowered[output];
        if (!isBadNow) {
            dues.clear(output);
        } else if (isStart) {
            addBad(output, levels.nowNs(), "started", levels, log);
        } else if (!isBad[output]) {
            final long toleratedNs = isPump[output] ? levels.wiring().periodNs() : DRY_TOLERATED_NS;
            dues.set(output, levels.nowNs() + toleratedNs);
        }
        isBad[output] = isBadNow;
    }

    private void addBad(final int output, final long atNs, final String how, final Levels levels, final Log log) {
        final String name = levels.wiring().outputName(output);
        if (isPump[output]) {
            log.add(RuleWords.COLD_PUMP, name, atNs, how + " while its block was not hot enough");
        } else {
            log.add(RuleWords.DRY_MIST, name, atNs, how + " without water over its discs");
        }
    }

    /** A movement without power, on the way back or falling, belongs to the stroke before it. */
    private void judgeReach(
            final int output, final boolean isStart, final Truth truth, final Levels levels, final Log log) {
        final boolean isOccupied = truth.peopleInReach(output) > 0;
        if (isStart) {
            isOccupiedFromStart[output] = isOccupied;
            isReported[output] = false;
        } else if (!isOccupied) {
            isOccupiedFromStart[output] = false;
        }
        final boolean isMetNow = isOccupied && truth.isMoving(output);
        if (isMetNow) {
            meet(output, truth.energyJ(output), levels, log);
        }
        isMet[output] = isMetNow;
    }

    private void meet(final int output, final double energyJ, final Levels levels, final Log log) {
        if (!isMet[output]) {
            nearMisses[output]++;
        }
        worstEnergyJ[output] = Math.max(worstEnergyJ[output], energyJ);
        if (isOccupiedFromStart[output] && !isReported[output] && energyJ > CAUTION_J) {
            isReported[output] = true;
            log.add(
                    RuleWords.MOVED_INTO_PERSON,
                    levels.wiring().outputName(output),
                    levels.nowNs(),
                    String.format(Locale.ROOT, "%.2f J with somebody in the reach since before it started", energyJ));
        }
    }

    int nearMisses(final int output) {
        return nearMisses[output];
    }

    double worstEnergyJ(final int output) {
        return worstEnergyJ[output];
    }

    @Override
    long wakeNs(final Levels levels) {
        return dues.wakeNs();
    }

    @Override
    Harm copy() {
        return new Harm(this);
    }
}
