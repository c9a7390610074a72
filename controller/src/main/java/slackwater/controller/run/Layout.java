package slackwater.controller.run;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * Hands out the run's places while a plan is compiled. Places are named, so that a run can be shown and compared in words.
 */
public final class Layout {
    private final List<String> timerNames = new ArrayList<>();
    private final List<String> cellNames = new ArrayList<>();
    private final List<Long> cellStarts = new ArrayList<>();
    private final List<String> tallyNames = new ArrayList<>();

    public Flag flag(final String name) {
        return new Flag(cell(name, 0));
    }

    /** A number from 0 to {@code most}; going beyond is a programmer's mistake and throws. */
    public Count count(final String name, final long most) {
        return new Count(cell(name, 0), most);
    }

    /** A set of up to 64 members. */
    public Bits bits(final String name) {
        return new Bits(cell(name, 0));
    }

    /** One of an enum's constants; the first one to begin with. */
    public <E extends Enum<E>> Phase<E> phase(final String name, final Class<E> of) {
        return new Phase<>(cell(name, 0), of.getEnumConstants());
    }

    /** A deadline. */
    public Timer timer(final String name) {
        timerNames.add(name);
        return new Timer(timerNames.size() - 1);
    }

    /** At most {@code most} in any span of {@code within}: exactly that many timers. */
    public Window window(final String name, final int most, final Duration within) {
        final Timer[] timers = new Timer[most];
        for (int i = 0; i < most; i++) {
            timers[i] = timer(name + "." + i);
        }
        return new Window(timers, within.toNanos());
    }

    /** When something last happened; for words and watchdogs, no part of what decides the future. */
    public Since since(final String name) {
        tallyNames.add(name);
        return new Since(tallyNames.size() - 1);
    }

    /** A number that decides nothing; no part of what is compared. */
    public Tally tally(final String name) {
        tallyNames.add(name);
        return new Tally(tallyNames.size() - 1);
    }

    /** A fresh run with everything at its beginning. */
    public RunState newRun() {
        return new RunState(
                timerNames.size(),
                cellStarts.stream().mapToLong(Long::longValue).toArray(),
                tallyNames.size());
    }

    /** All places in the order in which they were handed out, for a person. */
    public List<String> describe(final RunState run) {
        final List<String> lines = new ArrayList<>();
        for (int i = 0; i < cellNames.size(); i++) {
            lines.add(cellNames.get(i) + " = " + run.cell(i));
        }
        for (int i = 0; i < timerNames.size(); i++) {
            final long due = run.due(i);
            lines.add(timerNames.get(i) + " due " + (due == RunState.NEVER ? "never" : due - run.atNs() + " ns"));
        }
        return lines;
    }

    private int cell(final String name, final long start) {
        cellNames.add(name);
        cellStarts.add(start);
        return cellStarts.size() - 1;
    }
}
