package slackwater.controller.scan;

import slackwater.controller.journal.Journal;
import slackwater.controller.latch.LatchStore;
import slackwater.controller.ledger.KeptLedger;
import slackwater.controller.ledger.LedgerStore;
import slackwater.controller.pins.Pins;
import slackwater.controller.watchdog.BoardWatchdog;
import slackwater.controller.watchdog.SampleAge;

/** Everything outside the logic that a scan touches. */
public record Ports(
        Pins pins, LatchStore store, LedgerStore ledgers, Journal journal, BoardWatchdog board, SampleAge age) {

    /** Where the ledger does not outlive the run. */
    public Ports(
            final Pins pins,
            final LatchStore store,
            final Journal journal,
            final BoardWatchdog board,
            final SampleAge age) {
        this(pins, store, LedgerStore.inMemory(KeptLedger.NOTHING), journal, board, age);
    }
}
