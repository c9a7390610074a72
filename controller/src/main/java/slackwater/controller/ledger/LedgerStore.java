package slackwater.controller.ledger;

import java.util.Optional;

/** The port to where the ledger outlives a restart. */
public interface LedgerStore {

    /** What was kept; empty when it cannot be read, and then nobody knows what is left. */
    Optional<KeptLedger> read();

    /** Keeps this in place of what was kept. */
    void keep(KeptLedger kept);

    /** A store in memory, for the simulator and for tests. */
    static LedgerStore inMemory(final KeptLedger first) {
        return new LedgerStore() {
            private KeptLedger kept = first;

            @Override
            public Optional<KeptLedger> read() {
                return Optional.of(kept);
            }

            @Override
            public void keep(final KeptLedger next) {
                kept = next;
            }
        };
    }
}
