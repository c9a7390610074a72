package slackwater.controller.pins;

/**
 * The one-way gate before every pin write (S8). The supervisor can close it once, from its own thread, while a write hangs:
 * nothing is shared but one volatile flag, looked at before and again after each write, so that a write that was let
 * through and lands late is followed by a rest.
 */
public final class Gate {
    private final Pins pins;
    private final boolean[] restIsHigh;
    private volatile boolean isClosed;

    /**
     * @param pins what lies behind
     * @param restIsHigh the level at rest, by output
     */
    public Gate(final Pins pins, final boolean[] restIsHigh) {
        this.pins = pins;
        this.restIsHigh = restIsHigh.clone();
    }

    /** Puts an output to rest; allowed whether the gate is open or closed. */
    public void rest(final int output) {
        pins.write(output, restIsHigh[output]);
    }

    /** Energises an output, unless the gate is closed. */
    public void energise(final int output) {
        if (isClosed) {
            rest(output);
            return;
        }
        pins.write(output, !restIsHigh[output]);
        if (isClosed) {
            rest(output);
        }
    }

    /** Makes an edge for the hold-up relay, unless the gate is closed. */
    public void pulse(final boolean isHigh) {
        if (!isClosed) {
            pins.writeHoldUp(isHigh);
        }
    }

    /** Rests every output. Any thread, any number of times; goes on to the next when a write throws. */
    public void restAll() {
        RuntimeException first = null;
        for (int output = 0; output < restIsHigh.length; output++) {
            try {
                rest(output);
            } catch (final RuntimeException broken) {
                first = first == null ? broken : first;
            }
        }
        if (first != null) {
            throw first;
        }
    }

    /** Closes for good: from now on every write is a rest. */
    public void close() {
        isClosed = true;
    }

    public boolean isClosed() {
        return isClosed;
    }

    /** Levels, edges and read-back pass through unchanged. */
    public Pins lines() {
        return pins;
    }
}
