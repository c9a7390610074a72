package slackwater.simulator.bench;

import java.util.List;
import slackwater.controller.cue.CueCode;
import slackwater.controller.latch.Kept;
import slackwater.controller.ledger.KeptLedger;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.simulator.visitor.Crowd;

/**
 * What a bench is set up with.
 *
 * @param seed of every draw
 * @param crowd who comes
 * @param startEpochMs wall time at the run's start, milliseconds since 1970 UTC
 * @param skipsQuiet whether scans that would change nothing are passed over; the digest is the same either way
 * @param codes cues in code that the show may use
 * @param kept what outlived the last run of each controller
 * @param ledger what its ledger remembered
 */
public record Setup(
        Rig rig,
        Show show,
        long seed,
        Crowd crowd,
        long startEpochMs,
        boolean skipsQuiet,
        List<CueCode> codes,
        Kept kept,
        KeptLedger ledger) {

    /** A bench with nobody in the yard, beginning at 1970. */
    public static Setup of(final Rig rig, final Show show) {
        return new Setup(rig, show, 1, Crowd.NOBODY, 0, true, List.of(), Kept.NOTHING, KeptLedger.NOTHING);
    }

    public Setup withSeed(final long next) {
        return new Setup(rig, show, next, crowd, startEpochMs, skipsQuiet, codes, kept, ledger);
    }

    public Setup withCrowd(final Crowd next) {
        return new Setup(rig, show, seed, next, startEpochMs, skipsQuiet, codes, kept, ledger);
    }

    public Setup startingAt(final long epochMs) {
        return new Setup(rig, show, seed, crowd, epochMs, skipsQuiet, codes, kept, ledger);
    }

    public Setup skippingQuiet(final boolean isSkipping) {
        return new Setup(rig, show, seed, crowd, startEpochMs, isSkipping, codes, kept, ledger);
    }

    public Setup withCodes(final List<CueCode> next) {
        return new Setup(rig, show, seed, crowd, startEpochMs, skipsQuiet, next, kept, ledger);
    }

    public Setup remembering(final Kept next) {
        return new Setup(rig, show, seed, crowd, startEpochMs, skipsQuiet, codes, next, ledger);
    }

    public Setup remembering(final KeptLedger next) {
        return new Setup(rig, show, seed, crowd, startEpochMs, skipsQuiet, codes, kept, next);
    }
}
