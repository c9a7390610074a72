package slackwater.controller.latch;

import java.util.Optional;

/** The port to what outlives a restart. */
public interface LatchStore {
    /** What was kept; empty when it cannot be read, and then the controller counts as locked out. */
    Optional<Kept> read();

    /** Keeps this in place of what was kept; on disk before it returns. */
    void keep(Kept kept);

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
