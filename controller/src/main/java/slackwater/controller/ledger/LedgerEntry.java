package slackwater.controller.ledger;

import java.util.OptionalDouble;

/**
 * What the ledger says of one output.
 *
 * @param startsCount how often it has been energised, over all restarts
 * @param onNs how long, over all restarts
 * @param used what it has used in {@code unit}: since it was last filled, or of air ever; 0 where nothing is counted
 * @param left what is left in {@code unit}; empty where nobody counts down, or nobody knows
 * @param unit {@code g} of fluid, {@code ml} of water, {@code l} of free air; empty where nothing is counted
 * @param calibration what the last weighing made of the rate in the rig, 1 where nobody has weighed
 */
public record LedgerEntry(
        String output,
        long startsCount,
        long onNs,
        double used,
        OptionalDouble left,
        String unit,
        double calibration) {}
