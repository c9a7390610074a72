package slackwater.controller.pins;

import java.util.Arrays;

/** Bare lines in memory: what was set is read, what was written can be looked at. No faults; those are the simulator's. */
public final class VirtualPins implements Pins {
    private final boolean[] line;
    private final boolean[] sampled;
    private final boolean[] edge;
    private final boolean[] sampledEdge;
    private final boolean[] output;
    private final ReadBack[] readBack;
    private boolean holdUp;
    private boolean isHoldUpSeenClosed;
    private long holdUpEdges;

    /**
     * @param inputIsHigh levels to begin with, by input
     * @param outputIsHigh levels to begin with, by output
     */
    public VirtualPins(final boolean[] inputIsHigh, final boolean[] outputIsHigh) {
        line = inputIsHigh.clone();
        sampled = inputIsHigh.clone();
        edge = new boolean[inputIsHigh.length];
        sampledEdge = new boolean[inputIsHigh.length];
        output = outputIsHigh.clone();
        readBack = new ReadBack[outputIsHigh.length];
        Arrays.fill(readBack, ReadBack.UNKNOWN);
    }

    private VirtualPins(final VirtualPins other) {
        line = other.line.clone();
        sampled = other.sampled.clone();
        edge = other.edge.clone();
        sampledEdge = other.sampledEdge.clone();
        output = other.output.clone();
        readBack = other.readBack.clone();
        holdUp = other.holdUp;
        isHoldUpSeenClosed = other.isHoldUpSeenClosed;
        holdUpEdges = other.holdUpEdges;
    }

    /** Lines that go on from here by themselves. */
    public VirtualPins copy() {
        return new VirtualPins(this);
    }

    /** Sets an input line; a change is latched as an edge until the next sample. Returns whether it changed. */
    public boolean set(final int input, final boolean isHigh) {
        if (line[input] == isHigh) {
            return false;
        }
        line[input] = isHigh;
        edge[input] = true;
        return true;
    }

    /** Lets a line go to its other level and back before the next sample. */
    public void pulse(final int input) {
        edge[input] = true;
    }

    /** Whether any line has changed since the last sample. */
    public boolean hasNews() {
        for (final boolean changed : edge) {
            if (changed) {
                return true;
            }
        }
        return false;
    }

    /** What an independent look at an output says from now on. */
    public void setReadBack(final int out, final ReadBack known) {
        readBack[out] = known;
    }

    public void setHoldUpSeenClosed(final boolean isClosed) {
        isHoldUpSeenClosed = isClosed;
    }

    public boolean isOutputHigh(final int out) {
        return output[out];
    }

    /** How many edges the hold-up line has made. */
    public long holdUpEdges() {
        return holdUpEdges;
    }

    @Override
    public void sample() {
        for (int i = 0; i < line.length; i++) {
            // a level that is back where it was has been away; one that stays changed is no extra edge
            sampledEdge[i] = edge[i] && line[i] == sampled[i];
            sampled[i] = line[i];
            edge[i] = false;
        }
    }

    @Override
    public boolean isHigh(final int input) {
        return sampled[input];
    }

    @Override
    public boolean hadEdge(final int input) {
        return sampledEdge[input];
    }

    @Override
    public void write(final int out, final boolean isHigh) {
        output[out] = isHigh;
    }

    @Override
    public ReadBack readBack(final int out) {
        return readBack[out];
    }

    @Override
    public void writeHoldUp(final boolean isHigh) {
        if (holdUp != isHigh) {
            holdUp = isHigh;
            holdUpEdges++;
        }
    }

    @Override
    public boolean isHoldUpSeenClosed() {
        return isHoldUpSeenClosed;
    }
}
