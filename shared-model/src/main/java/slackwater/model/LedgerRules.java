package slackwater.model;

/**
 * How the ledger warns.
 *
 * @param warnAt the share of a full bottle or tray at which it warns, between 0 and 1
 */
public record LedgerRules(double warnAt) {
    /** At a fifth: time enough to fetch a bottle (common practice, no source). */
    public static final LedgerRules USUAL = new LedgerRules(0.2);
}
