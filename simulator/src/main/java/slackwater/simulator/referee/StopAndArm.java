package slackwater.simulator.referee;

import java.util.Arrays;
import java.util.List;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;

/**
 * Stop and arming (S4, S6; handbook 6.5: releasing the stop permits a restart and starts nothing). Each controller is
 * held to the loop as its own pin shows it: an open loop shows on all of them, a broken sense wire on one. After a
 * stop nothing starts until that controller is reset with the loop closed, and nothing that moves until its zone is
 * armed after that. A stand-down, the schedule's closing (S5) and a lockout of the zone (S4) ask for a later arming too.
 */
final class StopAndArm extends Rule {
    /** What may hurt or startle, and so waits for the first arming and for the end of its warning. */
    private static final List<Family> WAITS_FOR_ARM =
            List.of(Family.VALVE, Family.PUMP, Family.MISTER, Family.RELEASE, Family.STROBE, Family.CONTACT);

    private final int[] controllerOf;
    private final int[] zoneOf;
    private final boolean[] isWaiting;
    private final boolean[] isAir;
    private final boolean[] isLoop;
    private final int[] controllerOfSense;
    private final Dues dues;
    private final boolean[] isStopped;
    private final boolean[] wasStopped;
    private final boolean[] wasStoodDown;
    private final long[] armedNs;
    private final long[] standsDownNs;
    private final long[] openedNs;
    private long worstNs;

    StopAndArm(final Wiring wiring) {
        final int outputs = wiring.outputs().size();
        controllerOf = new int[outputs];
        zoneOf = new int[outputs];
        isWaiting = new boolean[outputs];
        isAir = new boolean[outputs];
        for (int output = 0; output < outputs; output++) {
            controllerOf[output] = wiring.controllerOf(output);
            zoneOf[output] = wiring.zoneOf(output);
            isWaiting[output] = WAITS_FOR_ARM.contains(wiring.output(output).family());
            isAir[output] = wiring.output(output).family() == Family.AIR_SUPPLY;
        }
        isLoop = new boolean[wiring.senses().size()];
        controllerOfSense = new int[isLoop.length];
        for (final Wiring.Sense sense : wiring.senses()) {
            isLoop[sense.index()] = sense.input().family() == InputFamily.STOP_LOOP;
            controllerOfSense[sense.index()] = sense.controller();
        }
        dues = new Dues(outputs);
        isStopped = new boolean[wiring.controllers()];
        wasStopped = new boolean[wiring.zones()];
        wasStoodDown = new boolean[wiring.zones()];
        armedNs = new long[wiring.zones()];
        Arrays.fill(armedNs, Levels.NONE);
        standsDownNs = new long[wiring.zones()];
        Arrays.fill(standsDownNs, Dues.NEVER);
        openedNs = new long[wiring.controllers()];
        Arrays.fill(openedNs, Levels.NONE);
    }

    private StopAndArm(final StopAndArm other) {
        controllerOf = other.controllerOf;
        zoneOf = other.zoneOf;
        isWaiting = other.isWaiting;
        isAir = other.isAir;
        isLoop = other.isLoop;
        controllerOfSense = other.controllerOfSense;
        dues = other.dues.copy();
        isStopped = other.isStopped.clone();
        wasStopped = other.wasStopped.clone();
        wasStoodDown = other.wasStoodDown.clone();
        armedNs = other.armedNs.clone();
        standsDownNs = other.standsDownNs.clone();
        openedNs = other.openedNs.clone();
        worstNs = other.worstNs;
    }

    @Override
    void begun(final Levels levels) {
        for (int sense = 0; sense < isLoop.length; sense++) {
            sensed(sense, levels);
        }
    }

    @Override
    void passed(final long untilNs, final Levels levels, final Log log) {
        for (int zone = 0; zone < standsDownNs.length; zone++) {
            if (standsDownNs[zone] <= untilNs) {
                disarm(zone);
            }
        }
        for (int output = 0; dues.isAnyPending() && output < isWaiting.length; output++) {
            if (dues.isOver(output, untilNs)) {
                log.add(
                        RuleWords.STOP,
                        levels.wiring().outputName(output),
                        dues.lateNs(output),
                        "still energised one scan after the stop loop opened");
                dues.clear(output);
            }
        }
    }

    @Override
    void sensed(final int sense, final Levels levels) {
        if (isLoop[sense] && !levels.isActive(sense)) {
            stop(controllerOfSense[sense], levels);
        }
    }

    private void stop(final int controller, final Levels levels) {
        isStopped[controller] = true;
        boolean isAnyEnergised = false;
        for (int output = 0; output < isWaiting.length; output++) {
            if (controllerOf[output] != controller) {
                continue;
            }
            armedNs[zoneOf[output]] = Levels.NONE;
            wasStopped[zoneOf[output]] = true;
            if (levels.isEnergised(output)) {
                dues.set(output, levels.nowNs() + levels.wiring().periodNs());
                isAnyEnergised = true;
            }
        }
        if (isAnyEnergised && openedNs[controller] == Levels.NONE) {
            openedNs[controller] = levels.nowNs();
        }
    }

    @Override
    void reset(final int controller, final Levels levels) {
        if (isLoopClosed(controller, levels)) {
            isStopped[controller] = false;
        }
    }

    private boolean isLoopClosed(final int controller, final Levels levels) {
        for (int sense = 0; sense < isLoop.length; sense++) {
            if (isLoop[sense] && controllerOfSense[sense] == controller && !levels.isActive(sense)) {
                return false;
            }
        }
        return true;
    }

    @Override
    void stoodDown(final int zone, final long surelyNs, final Levels levels) {
        if (surelyNs <= levels.nowNs()) {
            disarm(zone);
        } else {
            standsDownNs[zone] = Math.min(standsDownNs[zone], surelyNs);
        }
    }

    /** While a zone is locked its lock is judged elsewhere; when it comes off, nobody has armed since. */
    @Override
    void acted(final Act act, final Levels levels) {
        if (act instanceof Act.Unlock unlock && levels.wiring().hasZone(unlock.target())) {
            disarm(levels.wiring().zoneIndex(unlock.target()));
        }
    }

    private void disarm(final int zone) {
        wasStoodDown[zone] |= armedNs[zone] != Levels.NONE;
        armedNs[zone] = Levels.NONE;
        standsDownNs[zone] = Dues.NEVER;
    }

    /** Arming an armed zone again changes nothing; a zone with a stopped controller cannot be armed. */
    @Override
    void armed(final int zone, final Levels levels) {
        for (int output = 0; output < isWaiting.length; output++) {
            if (zoneOf[output] == zone && isStopped[controllerOf[output]]) {
                return;
            }
        }
        standsDownNs[zone] = Dues.NEVER; // a key that was off for too short a time to be proven so
        if (armedNs[zone] == Levels.NONE) {
            armedNs[zone] = levels.nowNs();
        }
    }

    @Override
    void rested(final int output, final Levels levels) {
        dues.clear(output);
        final int controller = controllerOf[output];
        if (openedNs[controller] != Levels.NONE && isAllAtRest(controller, levels)) {
            worstNs = Math.max(worstNs, levels.nowNs() - openedNs[controller]);
            openedNs[controller] = Levels.NONE;
        }
    }

    private boolean isAllAtRest(final int controller, final Levels levels) {
        for (int output = 0; output < controllerOf.length; output++) {
            if (controllerOf[output] == controller && levels.isEnergised(output)) {
                return false;
            }
        }
        return true;
    }

    /** Longest time from an opening until all was at rest; {@link Long#MAX_VALUE} while one has not come to rest. */
    long worstStopToRestNs() {
        for (final long opened : openedNs) {
            if (opened != Levels.NONE) {
                return Long.MAX_VALUE;
            }
        }
        return worstNs;
    }

    @Override
    void started(final int output, final Levels levels, final Log log) {
        final String name = levels.wiring().outputName(output);
        final int zone = zoneOf[output];
        if (isStopped[controllerOf[output]]) {
            log.add(RuleWords.STOP, name, levels.nowNs(), "started without a reset since the stop");
        } else if (armedNs[zone] == Levels.NONE) {
            if (wasStopped[zone] && (isWaiting[output] || isAir[output])) {
                log.add(RuleWords.STOP, name, levels.nowNs(), "started before anybody armed after the stop");
            } else if (isWaiting[output] || (isAir[output] && wasStoodDown[zone])) {
                final String since = wasStoodDown[zone] ? " after the stand-down" : "";
                log.add(RuleWords.BEFORE_ARM, name, levels.nowNs(), "started before anybody armed" + since);
            }
        } else if (isWaiting[output]
                && levels.nowNs() - armedNs[zone] < levels.wiring().warningNs()) {
            log.add(RuleWords.BEFORE_ARM, name, levels.nowNs(), "started before the warning was over");
        }
    }

    @Override
    long wakeNs(final Levels levels) {
        return dues.wakeNs();
    }

    @Override
    StopAndArm copy() {
        return new StopAndArm(this);
    }
}
