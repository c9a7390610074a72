package slackwater.controller.ledger;

import java.util.List;
import java.util.Optional;

/** What the ledger remembers over a restart. */
public record KeptLedger(List<Line> lines) {
    /** A controller that was never used: every bottle and tray counts as full, for the builder fills them first. */
    public static final KeptLedger NOTHING = new KeptLedger(List.of());

    /**
     * One output's account.
     *
     * @param starts how often it has been energised, ever
     * @param onNs how long, ever
     * @param sinceFillNs how long since its bottle or tray was last filled
     * @param factorMillionths what the last weighing said, in millionths of what its keys say; 0 for none
     * @param isFillKnown whether somebody has filled it up since the ledger was last lost
     * @param hasWarned whether it has warned since it was last filled
     */
    public record Line(
            String output,
            long starts,
            long onNs,
            long sinceFillNs,
            long factorMillionths,
            boolean isFillKnown,
            boolean hasWarned) {}

    public KeptLedger {
        lines = List.copyOf(lines);
    }

    Optional<Line> of(final String output) {
        return lines.stream().filter(line -> line.output().equals(output)).findFirst();
    }
}
