package slackwater.controller.pins;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Bare lines that remember every write in order, and break where a test wants them to. */
public final class TracedPins implements Pins {
    private final VirtualPins lines;
    private final List<String> writes = new ArrayList<>();
    private final TreeSet<Integer> broken = new TreeSet<>();
    private Runnable beforeSample = () -> {};
    private Runnable beforeWrite = () -> {};
    private Runnable beforeReadBack = () -> {};

    public TracedPins(final VirtualPins lines) {
        this.lines = lines;
    }

    /** Low lines, all at rest. */
    public TracedPins(final int inputs, final int outputs) {
        this(new VirtualPins(new boolean[inputs], new boolean[outputs]));
    }

    public VirtualPins lines() {
        return lines;
    }

    /** Takes the writes since the last look, such as {@code 0=high}. */
    public List<String> takeWrites() {
        final List<String> taken = List.copyOf(writes);
        writes.clear();
        return taken;
    }

    /** From now on each write to this output throws before it lands. */
    public void breakWrite(final int output) {
        broken.add(output);
    }

    public void mend() {
        broken.clear();
    }

    public void beforeSample(final Runnable act) {
        beforeSample = act;
    }

    public void beforeWrite(final Runnable act) {
        beforeWrite = act;
    }

    public void beforeReadBack(final Runnable act) {
        beforeReadBack = act;
    }

    @Override
    public void sample() {
        beforeSample.run();
        lines.sample();
    }

    @Override
    public boolean isHigh(final int input) {
        return lines.isHigh(input);
    }

    @Override
    public boolean hadEdge(final int input) {
        return lines.hadEdge(input);
    }

    @Override
    public void write(final int output, final boolean isHigh) {
        beforeWrite.run();
        if (broken.contains(output)) {
            throw new IllegalStateException("line " + output + " is broken");
        }
        writes.add(output + (isHigh ? "=high" : "=low"));
        lines.write(output, isHigh);
    }

    @Override
    public ReadBack readBack(final int output) {
        beforeReadBack.run();
        return lines.readBack(output);
    }

    @Override
    public void writeHoldUp(final boolean isHigh) {
        lines.writeHoldUp(isHigh);
    }

    @Override
    public boolean isHoldUpSeenClosed() {
        return lines.isHoldUpSeenClosed();
    }
}
