package slackwater.simulator.referee;

import java.util.Arrays;
import slackwater.model.Input;
import slackwater.model.Level;
import slackwater.model.Output;
import slackwater.simulator.yard.Truth;

/** The electrical levels as the referee reads them, and since when: its own polarity and its own history (S20). */
final class Levels {
    /** A moment that has not been. */
    static final long NONE = Long.MIN_VALUE;

    private final Wiring wiring;
    private final boolean[] isEnergised;
    private final long[] startedNs;
    private final long[] restedNs;
    private final boolean[] isActive;
    private final long[] sinceNs;
    private final boolean[] isHighActive;
    private final boolean[] isHighEnergised;
    private long firstNs = NONE;
    private long nowNs = NONE;

    Levels(final Wiring wiring) {
        this.wiring = wiring;
        final int outputs = wiring.outputs().size();
        final int senses = wiring.senses().size();
        isEnergised = new boolean[outputs];
        startedNs = new long[outputs];
        restedNs = new long[outputs];
        Arrays.fill(startedNs, NONE);
        Arrays.fill(restedNs, NONE);
        isActive = new boolean[senses];
        sinceNs = new long[senses];
        isHighActive = new boolean[senses];
        isHighEnergised = new boolean[outputs];
        for (final Wiring.Sense sense : wiring.senses()) {
            isHighActive[sense.index()] = sense.input().activeLevel() == Level.HIGH;
        }
        for (int index = 0; index < outputs; index++) {
            final Output output = wiring.output(index);
            isHighEnergised[index] = output.energisedLevel() == Level.HIGH;
        }
    }

    private Levels(final Levels other) {
        wiring = other.wiring;
        isEnergised = other.isEnergised.clone();
        startedNs = other.startedNs.clone();
        restedNs = other.restedNs.clone();
        isActive = other.isActive.clone();
        sinceNs = other.sinceNs.clone();
        isHighActive = other.isHighActive;
        isHighEnergised = other.isHighEnergised;
        firstNs = other.firstNs;
        nowNs = other.nowNs;
    }

    Wiring wiring() {
        return wiring;
    }

    long nowNs() {
        return nowNs;
    }

    boolean hasBegun() {
        return firstNs != NONE;
    }

    void moveTo(final long atNs) {
        nowNs = atNs;
    }

    /** Takes every input as it is, at the first look, which counts as power-on. */
    void begin(final Truth truth) {
        firstNs = nowNs;
        for (final Wiring.Sense sense : wiring.senses()) {
            isActive[sense.index()] = isActiveNow(sense, truth);
            sinceNs[sense.index()] = nowNs;
        }
    }

    /** Takes an input as it is now; whether it changed. */
    boolean takeSense(final Wiring.Sense sense, final Truth truth) {
        final boolean isActiveNow = isActiveNow(sense, truth);
        if (isActiveNow == isActive[sense.index()]) {
            return false;
        }
        isActive[sense.index()] = isActiveNow;
        sinceNs[sense.index()] = nowNs;
        return true;
    }

    private boolean isActiveNow(final Wiring.Sense sense, final Truth truth) {
        return truth.isInputHigh(sense.inputIndex(), sense.controller()) == isHighActive[sense.index()];
    }

    boolean isEnergisedIn(final Truth truth, final int output) {
        return truth.isOutputHigh(output) == isHighEnergised[output];
    }

    void rest(final int output) {
        isEnergised[output] = false;
        restedNs[output] = nowNs;
    }

    void start(final int output) {
        isEnergised[output] = true;
        startedNs[output] = nowNs;
    }

    boolean isEnergised(final int output) {
        return isEnergised[output];
    }

    /** When it was last energised, or {@link #NONE}. */
    long startedNs(final int output) {
        return startedNs[output];
    }

    /** When it last came to rest, or {@link #NONE}. */
    long restedNs(final int output) {
        return restedNs[output];
    }

    long firstNs() {
        return firstNs;
    }

    boolean isActive(final int sense) {
        return isActive[sense];
    }

    long sinceNs(final int sense) {
        return sinceNs[sense];
    }

    /** Unbroken in this sense for its proving time, past its warm-up, and not stuck (S7, S23). */
    boolean isProven(final int sense, final boolean wanted) {
        final Input.Proving proving = wiring.senses().get(sense).input().proving();
        final long heldNs = nowNs - sinceNs[sense];
        return isActive[sense] == wanted
                && heldNs >= provingNs(proving, wanted)
                && nowNs - firstNs >= Wiring.ns(proving.warmUp())
                && !(wanted && isStuck(proving, heldNs));
    }

    /** From when on this sense is proven at the earliest, if nothing breaks it. */
    long provenFromNs(final int sense, final boolean wanted) {
        final Input.Proving proving = wiring.senses().get(sense).input().proving();
        return Math.max(sinceNs[sense] + provingNs(proving, wanted), firstNs + Wiring.ns(proving.warmUp()));
    }

    private static boolean isStuck(final Input.Proving proving, final long heldNs) {
        return proving.stuckAfter().isPresent()
                && heldNs > Wiring.ns(proving.stuckAfter().get());
    }

    /**
     * Whether a controller whose scan is now has certainly sampled it in this sense for its proving time. It samples
     * only whole periods ago, so what it saw first may be almost one period younger than the edge.
     */
    boolean isSampledProven(final int sense, final boolean wanted) {
        final Input.Proving proving = wiring.senses().get(sense).input().proving();
        return isActive[sense] == wanted
                && wholePeriods(nowNs - sinceNs[sense]) >= provingNs(proving, wanted)
                && wholePeriods(nowNs - firstNs) >= Wiring.ns(proving.warmUp());
    }

    /** When a controller has proven this sense at the latest, whatever the phase of its scans, if nothing breaks it. */
    long surelyProvenNs(final int sense, final boolean wanted) {
        final Input.Proving proving = wiring.senses().get(sense).input().proving();
        final long held = sinceNs[sense] + roundedUp(provingNs(proving, wanted));
        final long warm = firstNs + roundedUp(Wiring.ns(proving.warmUp()));
        return Math.max(held, warm) + wiring.periodNs();
    }

    private static long provingNs(final Input.Proving proving, final boolean wanted) {
        return Wiring.ns(wanted ? proving.activeAfter() : proving.inactiveAfter());
    }

    private long wholePeriods(final long spanNs) {
        return spanNs - spanNs % wiring.periodNs();
    }

    private long roundedUp(final long spanNs) {
        return wholePeriods(spanNs + wiring.periodNs() - 1);
    }

    Levels copy() {
        return new Levels(this);
    }
}
