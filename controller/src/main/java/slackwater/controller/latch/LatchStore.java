package slackwater.controller.latch;

import java.util.Optional;

/** The port to what outlives a restart. */
public interface LatchStore {
    /** What was kept; empty when it cannot be read, and then the controller counts as locked out. */
    Optional<Kept> read();

    /**
     * Keeps this in place of what was kept; on disk before it returns.
     *
     * @throws NotYetException when that takes longer than a scan may wait
     */
    void keep(Kept kept);

    /** It is being written and not there yet: ask again. Nothing is wrong. */
    final class NotYetException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        public NotYetException() {
            super("it is still being written", null, false, false); // thrown to the scan: without the cost of a trace
        }
    }

    /** A store in memory, for the simulator and for tests. */
    static LatchStore inMemory(final Kept first) {
        return new LatchStore() {
            private Kept kept = first;

            @Override
            public Optional<Kept> read() {
                return Optional.of(kept);
            }

            @Override
            public void keep(final Kept next) {
                kept = next;
            }
        };
    }
}
