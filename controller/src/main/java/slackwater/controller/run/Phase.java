package slackwater.controller.run;

/** Where a state machine is. */
public final class Phase<E extends Enum<E>> {
    private final int index;
    private final E[] constants;

    Phase(final int index, final E[] constants) {
        this.index = index;
        this.constants = constants;
    }

    public E of(final RunState run) {
        return constants[(int) run.cell(index)];
    }

    @SuppressWarnings("EnumOrdinal") // a cell keeps the position; it never leaves this run
    public void set(final RunState run, final E next) {
        run.setCell(index, next.ordinal());
    }
}
