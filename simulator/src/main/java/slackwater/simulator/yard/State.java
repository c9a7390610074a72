package slackwater.simulator.yard;

import java.util.Arrays;

/**
 * Everything in a yard that changes, in two arrays, so that a copy is cheap and exact (S21). The plants are immutable and
 * know where their numbers stand.
 */
final class State {
    /** The yard's own grid, whatever the controllers' scan is. */
    static final long GRID_NS = 10_000_000L;

    /** People are looked at on this grid while anybody is there. */
    static final long LOOK_NS = 50_000_000L;

    static final double NS_PER_S = 1e9;

    private static final int NOW = 0;
    private static final int STOP_OPEN = 1;
    private static final int PRESENT = 2;
    private static final int FIRST_HERE = 3;
    private static final int NEXT_TO_COME = 4;
    private static final int FIXED = 5;
    private static final int PER_OUTPUT = 5;
    private static final int PER_INPUT = 5;

    private final int controllers;
    private final int outputs;
    private final int inputs;
    private final long[] whole;
    private final double[] real;

    /** Follows from the rest, and is therefore no part of the fingerprint. */
    private long wakeNs;

    State(final int controllers, final int outputs, final int inputs, final long[] whole, final double[] real) {
        this.controllers = controllers;
        this.outputs = outputs;
        this.inputs = inputs;
        this.whole = whole;
        this.real = real;
    }

    static int fixedWholes(final int controllers, final int outputs, final int inputs) {
        return FIXED + controllers + PER_OUTPUT * outputs + PER_INPUT * inputs;
    }

    static long nextGridNs(final long afterNs) {
        return (Math.floorDiv(afterNs, GRID_NS) + 1) * GRID_NS;
    }

    static long ceilGridNs(final long atNs) {
        return Math.floorDiv(atNs + GRID_NS - 1, GRID_NS) * GRID_NS;
    }

    State copy() {
        final State copy = new State(controllers, outputs, inputs, whole.clone(), real.clone());
        copy.wakeNs = wakeNs;
        return copy;
    }

    long fingerprint() {
        return Draw.mix(Arrays.hashCode(whole)) ^ Draw.mix(~(long) Arrays.hashCode(real));
    }

    boolean isSameAs(final State other) {
        return Arrays.equals(whole, other.whole) && Arrays.equals(real, other.real);
    }

    long whole(final int slot) {
        return whole[slot];
    }

    void setWhole(final int slot, final long value) {
        whole[slot] = value;
    }

    boolean flag(final int slot) {
        return whole[slot] != 0;
    }

    void setFlag(final int slot, final boolean value) {
        whole[slot] = value ? 1 : 0;
    }

    double real(final int slot) {
        return real[slot];
    }

    void setReal(final int slot, final double value) {
        real[slot] = value;
    }

    /** All real numbers, for a plant that goes on by many small steps with numbers of its own that stand in a row. */
    double[] reals() {
        return real;
    }

    long nowNs() {
        return whole[NOW];
    }

    void setNowNs(final long nowNs) {
        whole[NOW] = nowNs;
    }

    /** Seconds from a moment in the past until now. */
    double secondsSince(final long thenNs) {
        return (whole[NOW] - thenNs) / NS_PER_S;
    }

    boolean isLookingNow() {
        return whole[NOW] % LOOK_NS == 0;
    }

    long wakeNs() {
        return wakeNs;
    }

    void setWakeNs(final long wakeNs) {
        this.wakeNs = wakeNs;
    }

    boolean isStopLoopOpen() {
        return flag(STOP_OPEN);
    }

    void setStopLoopOpen(final boolean isOpen) {
        setFlag(STOP_OPEN, isOpen);
    }

    int present() {
        return (int) whole[PRESENT];
    }

    void setPresent(final int count) {
        whole[PRESENT] = count;
    }

    int firstHere() {
        return (int) whole[FIRST_HERE];
    }

    int nextToCome() {
        return (int) whole[NEXT_TO_COME];
    }

    void setWindow(final int firstHere, final int nextToCome) {
        whole[FIRST_HERE] = firstHere;
        whole[NEXT_TO_COME] = nextToCome;
    }

    boolean isPulledIn(final int controller) {
        return flag(FIXED + controller);
    }

    void setPulledIn(final int controller, final boolean isPulledIn) {
        setFlag(FIXED + controller, isPulledIn);
    }

    boolean isPinHigh(final int output) {
        return flag(ofOutput(0, output));
    }

    void setPinHigh(final int output, final boolean isHigh) {
        setFlag(ofOutput(0, output), isHigh);
    }

    boolean isPowered(final int output) {
        return flag(ofOutput(1, output));
    }

    /** A load that gets power and loses it again between two grid points is still seen to have had it. */
    void setPowered(final int output, final boolean isPowered) {
        if (isPowered && !isPowered(output)) {
            setFlag(ofOutput(2, output), true);
        }
        setFlag(ofOutput(1, output), isPowered);
    }

    /** Whether the load has power, or got it since the last grid point. */
    boolean isOn(final int output) {
        return flag(ofOutput(1, output)) || flag(ofOutput(2, output));
    }

    /** The step has seen what was short; returns whether it must look at a load again. */
    boolean forgetShortPulses() {
        boolean isAnyShort = false;
        for (int output = 0; output < outputs; output++) {
            isAnyShort |= isOn(output) && !isPowered(output);
            setFlag(ofOutput(2, output), false);
        }
        return isAnyShort;
    }

    long outputOverlay(final int output) {
        return whole[ofOutput(3, output)];
    }

    void setOutputOverlay(final int output, final long code) {
        whole[ofOutput(3, output)] = code;
    }

    int peopleInReach(final int output) {
        return (int) whole[ofOutput(4, output)];
    }

    void setPeopleInReach(final int output, final int count) {
        whole[ofOutput(4, output)] = count;
    }

    boolean isActive(final int input) {
        return flag(ofInput(0, input));
    }

    void setActive(final int input, final boolean isActive) {
        setFlag(ofInput(0, input), isActive);
    }

    /** Whether somebody was in the field or the beam of an input when people were last looked at. */
    boolean isSomebodySeen(final int input) {
        return flag(ofInput(1, input));
    }

    void setSomebodySeen(final int input, final boolean isSeen) {
        setFlag(ofInput(1, input), isSeen);
    }

    long hand(final int input) {
        return whole[ofInput(2, input)];
    }

    void setHand(final int input, final long code) {
        whole[ofInput(2, input)] = code;
    }

    long inputOverlay(final int input) {
        return whole[ofInput(3, input)];
    }

    long chatterHalfNs(final int input) {
        return whole[ofInput(4, input)];
    }

    void setInputOverlay(final int input, final long code, final long chatterHalfNs) {
        whole[ofInput(3, input)] = code;
        whole[ofInput(4, input)] = chatterHalfNs;
    }

    private int ofOutput(final int which, final int output) {
        return FIXED + controllers + which * outputs + output;
    }

    private int ofInput(final int which, final int input) {
        return FIXED + controllers + PER_OUTPUT * outputs + which * inputs + input;
    }
}
