package slackwater.controller.watchdog;

import java.util.Optional;
import slackwater.controller.pins.Gate;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.Phase;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Since;
import slackwater.model.HoldUp;

/**
 * The pulses that hold the output supply's relay: one inversion per proved scan, made by the scan thread alone (S2). They
 * begin only after the relay was seen open, which is also its drop test, and after a gap that may have let it drop they
 * stay away until a reset.
 *
 * <pre>
 *   AWAITING_OPEN --seen open--> PULSING --gap, or a pin stuck on--> WITHHELD --reset, all at rest, seen open--> PULSING
 * </pre>
 */
public final class HoldUpPulses {
    private enum State {
        AWAITING_OPEN,
        PULSING,
        WITHHELD
    }

    private final boolean isThere;
    private final boolean isSeen;
    private final long dropOutNs;
    private final Phase<State> state;
    private final Flag hasSeenClosed;
    private final Since lastEdge;
    /** The line's level, 0 or 1; no part of what decides the future. */
    private final Since level;

    public HoldUpPulses(final Optional<HoldUp> holdUp, final Layout layout) {
        isThere = holdUp.isPresent();
        isSeen = holdUp.isPresent() && holdUp.get().seenPin().isPresent();
        dropOutNs = holdUp.map(relay -> relay.dropOut().toNanos()).orElse(0L);
        state = layout.phase("hold-up.state", State.class);
        hasSeenClosed = layout.flag("hold-up.seen-closed");
        lastEdge = layout.since("hold-up.last-edge");
        level = layout.since("hold-up.level");
    }

    /** Whether the relay may have dropped since the last edge: then outputs rest before anything else is done. */
    public boolean mayHaveDropped(final RunState run) {
        return isThere && state.of(run) == State.PULSING && run.atNs() - lastEdge.atNs(run) >= dropOutNs;
    }

    /** Stops the pulses until a reset. */
    public void withhold(final RunState run) {
        if (isThere) {
            state.set(run, State.WITHHELD);
        }
    }

    /** Notes whether the relay has been seen closed since it was seen open. */
    public void look(final RunState run, final Gate gate) {
        if (isSeen && state.of(run) == State.PULSING && gate.lines().isHoldUpSeenClosed()) {
            hasSeenClosed.set(run, true);
        }
    }

    /** Whether arming may go on: the relay was seen open, then closed by the pulses; true where there is none to see. */
    public boolean hasPassedDropTest(final RunState run) {
        return !isThere || (state.of(run) == State.PULSING && (!isSeen || hasSeenClosed.is(run)));
    }

    /** Whether a fault may be cleared: every output at rest and, where it can be seen, the relay open. */
    public boolean mayReset(final RunState run, final Gate gate, final boolean areAllAtRest) {
        if (!isThere || state.of(run) != State.WITHHELD) {
            return areAllAtRest;
        }
        return areAllAtRest && !(isSeen && gate.lines().isHoldUpSeenClosed());
    }

    /** After a reset: the pulses may begin again, with a new drop test. */
    public void release(final RunState run) {
        if (isThere && state.of(run) == State.WITHHELD) {
            state.set(run, State.AWAITING_OPEN);
            hasSeenClosed.set(run, false);
        }
    }

    /** One inversion for a proved scan. */
    public void prove(final RunState run, final Gate gate) {
        if (!isThere) {
            return;
        }
        if (state.of(run) == State.AWAITING_OPEN && !(isSeen && gate.lines().isHoldUpSeenClosed())) {
            state.set(run, State.PULSING);
        }
        if (state.of(run) == State.PULSING) {
            final long next = 1 - level.atNs(run);
            level.markAt(run, next);
            gate.pulse(next == 1);
            lastEdge.mark(run);
        }
    }

    /** Whether pulses are being made. */
    public boolean isPulsing(final RunState run) {
        return !isThere || state.of(run) == State.PULSING;
    }

    /** Scans that were passed over because nothing could change would each have made an edge. */
    public void passOver(final RunState run, final long lastScanNs) {
        if (isThere && state.of(run) == State.PULSING) {
            lastEdge.markAt(run, lastScanNs);
        }
    }
}
