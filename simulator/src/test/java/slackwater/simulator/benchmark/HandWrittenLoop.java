package slackwater.simulator.benchmark;

import java.util.Arrays;
import slackwater.controller.pins.Pins;

/**
 * What somebody might write by hand for the north bank of the sea cave and for nothing else: the same inputs, cues, limits and
 * interlocks as the rig's files, as one loop of ifs with its numbers in place. It explains no refusal, keeps no journal, cannot
 * be forked, and knows no lockout, schedule or read-back; it is the comparison that a general scan has to stand.
 */
final class HandWrittenLoop {
    // inputs, in the order of the rig
    private static final int STOP = 0;
    private static final int RESET = 1;
    private static final int KEY = 2;
    private static final int OUTER = 3;
    private static final int INNER = 4;
    private static final int LOW = 5;
    private static final int HIGH = 6;
    private static final int REACH = 7;
    private static final int AIR_OK = 8;
    private static final int HOT = 9;
    private static final int RAIN = 10;
    private static final int HUNG = 11;

    // outputs, in the order of the rig
    private static final int AIR = 0;
    private static final int LID = 1;
    private static final int JET = 2;
    private static final int LIGHTNING = 3;
    private static final int HEATER = 4;
    private static final int PUMP = 5;
    private static final int FAN = 6;
    private static final int LAMP = 7;
    private static final int HORN = 8;
    private static final int GULL = 9;
    private static final int OUTPUTS = 10;

    private static final long MS = 1_000_000L;
    private static final long S = 1_000 * MS;
    private static final long NEVER = Long.MIN_VALUE / 2;

    private static final boolean[] ACTIVE_LOW = {
        true, true, true, false, false, false, false, false, true, true, false, true
    };
    private static final long[] ACTIVE_AFTER = {
        200 * MS, 30 * MS, 50 * MS, 0, 0, 0, 0, 0, 100 * MS, 100 * MS, 2 * S, 30 * MS
    };
    private static final long[] INACTIVE_AFTER = {
        0, 30 * MS, 50 * MS, 500 * MS, 500 * MS, 200 * MS, 200 * MS, 200 * MS, 100 * MS, 100 * MS, 60 * S, 30 * MS
    };
    private static final long[] LONGEST_ON = {0, 3 * S, S, 200 * MS, 0, 4 * S, 0, 0, 6 * S, 500 * MS};
    private static final long[] SHORTEST_OFF = {0, S, 2 * S, 300 * MS, 0, 8 * S, 0, 0, 0, 0};
    private static final double[] AMPS = {0, 0.4, 0.3, 1.5, 0, 0, 0.4, 0.5, 0.6, 0};
    private static final double AMPS_MAX = 4.5;

    private final Pins pins;
    private final boolean[] isActive = new boolean[ACTIVE_LOW.length];
    private final long[] changed = new long[ACTIVE_LOW.length];
    private final boolean[] provenActive = new boolean[ACTIVE_LOW.length];
    private final boolean[] provenInactive = new boolean[ACTIVE_LOW.length];
    private final boolean[] rose = new boolean[ACTIVE_LOW.length];

    private final boolean[] wanted = new boolean[OUTPUTS];
    private final boolean[] isOn = new boolean[OUTPUTS];
    private final boolean[] isUsedUp = new boolean[OUTPUTS];
    private final long[] switched = new long[OUTPUTS];
    private final long[] lidStarts = new long[6];
    private final long[] jetStarts = new long[8];
    private int lidStart;
    private int jetStart;
    private long flashedAt = NEVER;

    private boolean isStopped = true;
    private boolean isReset;
    private boolean isArmed;
    private boolean isSpent;
    private boolean holdUp;
    private long random = 0x9E3779B97F4A7C15L;

    private long outerAt = NEVER;
    private long innerAt = NEVER;
    private long highAt = NEVER;
    private long clamAwaits = NEVER;
    private long clamBegan = NEVER;
    private long clamLidEnds;
    private long clamPumpEnds;
    private long clamStarted = NEVER;
    private long clamClear = NEVER;
    private boolean clamAwaitsClear;
    private long swellBegan = NEVER;
    private boolean swellBlinks;
    private long swellStarted = NEVER;
    private long swellClear = NEVER;
    private boolean swellAwaitsClear;
    private long jetBegan = NEVER;
    private long jetFires;
    private long jetStarted = NEVER;
    private long jetClear = NEVER;
    private boolean jetAwaitsClear;
    private long gullBegan = NEVER;
    private long fanWanted = NEVER;

    HandWrittenLoop(final Pins pins) {
        this.pins = pins;
        Arrays.fill(changed, NEVER);
        Arrays.fill(switched, NEVER);
        Arrays.fill(lidStarts, NEVER);
        Arrays.fill(jetStarts, NEVER);
    }

    /** Begins armed, with every line as it has long been: after an evening's opening. */
    void arm() {
        pins.sample();
        for (int i = 0; i < isActive.length; i++) {
            isActive[i] = pins.isHigh(i) != ACTIVE_LOW[i];
        }
        isStopped = false;
        isArmed = true;
    }

    void scan(final long now) {
        pins.sample();
        for (int i = 0; i < isActive.length; i++) {
            debounce(i, now);
        }
        stopAndArm();
        Arrays.fill(wanted, false);
        if (isArmed) {
            wanted[AIR] = true;
            wanted[HEATER] = true;
            remember(now);
            clam(now);
            swell(now);
            jet(now);
            gull(now);
        }
        afterRun(now);
        for (int out = 0; out < OUTPUTS; out++) {
            if (!wanted[out]) {
                isUsedUp[out] = false;
            }
            if (isOn[out] && !(wanted[out] && mayStayOn(out, now))) {
                turn(out, false, now);
            }
        }
        for (int out = 0; out < OUTPUTS; out++) {
            if (!isOn[out] && wanted[out] && mayTurnOn(out, now)) {
                turn(out, true, now);
            }
        }
        for (int out = 0; out < OUTPUTS; out++) {
            pins.write(out, isOn[out]);
        }
        holdUp = !holdUp;
        pins.writeHoldUp(holdUp);
    }

    private void debounce(final int in, final long now) {
        final boolean active = pins.isHigh(in) != ACTIVE_LOW[in];
        if (active != isActive[in] || pins.hadEdge(in)) {
            isActive[in] = active;
            changed[in] = now;
        }
        final boolean wasProven = provenActive[in];
        provenActive[in] = active && now - changed[in] >= ACTIVE_AFTER[in];
        provenInactive[in] = !active && now - changed[in] >= INACTIVE_AFTER[in];
        rose[in] = provenActive[in] && !wasProven;
    }

    private void stopAndArm() {
        if (!provenActive[STOP]) {
            isStopped = true;
            isArmed = false;
            clamAwaits = NEVER;
            clamBegan = NEVER;
            swellBegan = NEVER;
            jetBegan = NEVER;
            gullBegan = NEVER;
        } else if (isStopped) {
            if (rose[RESET]) {
                isReset = true;
            } else if (isReset && provenInactive[RESET]) {
                isReset = false;
                isStopped = false;
            }
        }
        if (!isStopped && rose[KEY] && provenInactive[REACH]) {
            isArmed = true;
        }
        if (provenInactive[KEY]) {
            isArmed = false;
        }
    }

    /** Whoever was greeted has gone once nobody was seen for the whole of a cue's time. */
    private void remember(final long now) {
        clamClear = provenInactive[OUTER] && provenInactive[INNER] ? first(clamClear, now) : NEVER;
        swellClear = provenInactive[LOW] ? first(swellClear, now) : NEVER;
        jetClear = provenInactive[INNER] && provenInactive[HIGH] ? first(jetClear, now) : NEVER;
        clamAwaitsClear &= clamClear == NEVER || now - clamClear < 15 * S;
        swellAwaitsClear &= swellClear == NEVER || now - swellClear < 10 * S;
        jetAwaitsClear &= jetClear == NEVER || now - jetClear < 30 * S;
    }

    private static long first(final long since, final long now) {
        return since == NEVER ? now : since;
    }

    private void clam(final long now) {
        final boolean isComplete = rose[INNER] && !rose[OUTER] && now - outerAt < 5 * S;
        if (rose[OUTER]) {
            outerAt = now;
        }
        if (isComplete) {
            outerAt = NEVER;
            if (clamAwaits == NEVER
                    && clamBegan == NEVER
                    && now - clamStarted >= 30 * S
                    && !clamAwaitsClear
                    && provenInactive[REACH]) {
                clamAwaits = now;
                clamStarted = now;
                clamClear = NEVER;
                clamAwaitsClear = true;
                swellBegan = NEVER;
            }
        }
        if (clamAwaits != NEVER) {
            if (provenActive[HIGH]) {
                clamAwaits = NEVER;
                clamBegan = now;
                clamPumpEnds = now + 2200 * MS + upTo(800 * MS);
                clamLidEnds = now + 2700 * MS + upTo(500 * MS);
            } else if (now - clamAwaits >= 4 * S) {
                clamAwaits = NEVER;
            }
        }
        if (clamBegan == NEVER) {
            return;
        }
        final long since = now - clamBegan;
        wanted[LAMP] = since < 8 * S;
        wanted[FAN] |= since < 6 * S;
        wanted[PUMP] = since >= 200 * MS && now < clamPumpEnds;
        wanted[LID] = since >= 1200 * MS && now < clamLidEnds;
        wanted[LIGHTNING] = since >= 1400 * MS && since < 1500 * MS;
        wanted[HORN] = since >= 1700 * MS && since < 2900 * MS;
        if (since >= 8 * S) {
            clamBegan = NEVER;
        }
    }

    private void swell(final long now) {
        final boolean isClamPlaying = clamAwaits != NEVER || clamBegan != NEVER;
        if (rose[LOW]
                && swellBegan == NEVER
                && !isClamPlaying
                && provenInactive[HIGH]
                && now - swellStarted >= 20 * S
                && !swellAwaitsClear) {
            swellBegan = now;
            swellStarted = now;
            swellClear = NEVER;
            swellAwaitsClear = true;
            swellBlinks = upTo(2) == 1;
        }
        if (swellBegan == NEVER) {
            return;
        }
        final long since = now - swellBegan;
        if (swellBlinks) {
            wanted[LAMP] |= since < 5 * S && since / (600 * MS) % 2 == 0;
        } else {
            wanted[FAN] |= since < 4 * S;
            wanted[LAMP] |= since >= S && since < 4 * S;
        }
        if (since >= (swellBlinks ? 5 : 4) * S) {
            swellBegan = NEVER;
        }
    }

    private void jet(final long now) {
        final boolean hasRisen = rose[INNER] || rose[HIGH];
        innerAt = rose[INNER] ? now : innerAt;
        highAt = rose[HIGH] ? now : highAt;
        if (hasRisen && now - innerAt < 4 * S && now - highAt < 4 * S) {
            innerAt = NEVER;
            highAt = NEVER;
            if (jetBegan == NEVER && now - jetStarted >= 60 * S && !jetAwaitsClear) {
                jetBegan = now;
                jetStarted = now;
                jetClear = NEVER;
                jetAwaitsClear = true;
                jetFires = now + 5 * S + upTo(S);
            }
        }
        if (jetBegan != NEVER) {
            wanted[JET] = now >= jetFires && now < jetFires + 600 * MS;
            if (now >= jetFires + 600 * MS) {
                jetBegan = NEVER;
            }
        }
    }

    private void gull(final long now) {
        if (rose[REACH] && now - gullBegan >= 1800 * S) {
            gullBegan = now;
        }
        wanted[GULL] = now - gullBegan < 300 * MS;
    }

    private void afterRun(final long now) {
        if (wanted[FAN]) {
            fanWanted = now;
        } else if (isArmed && now - fanWanted < 8 * S) {
            wanted[FAN] = true;
        }
    }

    private boolean mayStayOn(final int out, final long now) {
        if (LONGEST_ON[out] > 0 && now - switched[out] >= LONGEST_ON[out]) {
            isUsedUp[out] = true;
            return false;
        }
        return switch (out) {
            case PUMP -> provenActive[HOT];
            case LIGHTNING -> provenInactive[RAIN];
            default -> true;
        };
    }

    private boolean mayTurnOn(final int out, final long now) {
        if (isUsedUp[out] || now - switched[out] < SHORTEST_OFF[out] || !hasAmps(out)) {
            return false;
        }
        return switch (out) {
            case LID ->
                provenInactive[REACH]
                        && provenActive[AIR_OK]
                        && !isOn[JET]
                        && now - switched[JET] >= 500 * MS
                        && now - lidStarts[lidStart] >= 60 * S;
            case JET ->
                provenActive[AIR_OK]
                        && !isOn[LID]
                        && now - switched[LID] >= 500 * MS
                        && now - jetStarts[jetStart] >= 60 * S;
            case LIGHTNING -> provenInactive[RAIN] && now - flashedAt >= S;
            case PUMP -> provenActive[HOT];
            case GULL -> provenActive[HUNG] && !isSpent;
            default -> true;
        };
    }

    private boolean hasAmps(final int out) {
        double amps = AMPS[out];
        for (int other = 0; other < OUTPUTS; other++) {
            amps += isOn[other] ? AMPS[other] : 0;
        }
        return AMPS[out] == 0 || amps <= AMPS_MAX;
    }

    private void turn(final int out, final boolean on, final long now) {
        isOn[out] = on;
        switched[out] = now;
        if (!on) {
            return;
        }
        switch (out) {
            case LID -> {
                lidStarts[lidStart] = now;
                lidStart = (lidStart + 1) % lidStarts.length;
            }
            case JET -> {
                jetStarts[jetStart] = now;
                jetStart = (jetStart + 1) % jetStarts.length;
            }
            case LIGHTNING -> flashedAt = now;
            case GULL -> isSpent = true;
            default -> {}
        }
    }

    /** A draw below {@code most}: Marsaglia's xorshift (from memory), since the steps vary. */
    private long upTo(final long most) {
        random ^= random << 13;
        random ^= random >>> 7;
        random ^= random << 17;
        return Math.floorMod(random, most);
    }
}
