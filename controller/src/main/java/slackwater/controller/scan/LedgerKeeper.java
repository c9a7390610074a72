package slackwater.controller.scan;

import slackwater.controller.image.Image;
import slackwater.controller.ledger.Ledger;
import slackwater.controller.ledger.LedgerStore;
import slackwater.controller.run.RunState;
import slackwater.model.event.Event;

/**
 * Keeps the ledger over a restart: whenever something that is counted down comes to rest, is filled or weighed, and once a
 * minute while anything runs. When it is kept decides nothing, so it is no part of the run.
 */
final class LedgerKeeper {
    private static final long MINUTE_NS = 60_000_000_000L;

    private final Ledger ledger;
    private final LedgerStore store;
    private boolean hasFailed;
    private long dueNs = Long.MAX_VALUE;

    LedgerKeeper(final Ledger ledger, final LedgerStore store) {
        this.ledger = ledger;
        this.store = store;
    }

    void goOnFrom(final LedgerKeeper other) {
        hasFailed = other.hasFailed;
        dueNs = other.dueNs;
    }

    /** At the end of a scan. A store that fails is told once, and tried again each minute (S22). */
    void keep(final RunState run, final Image image) {
        final boolean isCounting = ledger.isCounting(run);
        if (dueNs == Long.MAX_VALUE && isCounting) {
            dueNs = run.atNs() + MINUTE_NS;
        }
        if (!ledger.takeNews(run) && run.atNs() < dueNs) {
            return;
        }
        dueNs = isCounting ? run.atNs() + MINUTE_NS : Long.MAX_VALUE;
        try {
            store.keep(ledger.kept(run));
            hasFailed = false;
        } catch (final RuntimeException broken) {
            if (!hasFailed) {
                image.note(
                        new Event.Commanded(run.atNs(), "keeping the ledger over a restart", false, broken.toString()));
            }
            hasFailed = true;
            dueNs = run.atNs() + MINUTE_NS;
        }
    }

    /** When it wants to keep although nothing changes. */
    long wakeNs() {
        return dueNs;
    }
}
