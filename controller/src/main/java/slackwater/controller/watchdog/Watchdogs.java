package slackwater.controller.watchdog;

import slackwater.controller.pins.Gate;
import slackwater.controller.run.RunState;

/** Everything that is fed when, and only when, a scan is proved whole and in time. */
public final class Watchdogs {
    private final ProofOfScan proof = new ProofOfScan();
    private final HoldUpPulses holdUp;
    private final BoardWatchdog board;
    private final Heartbeat heartbeat;

    public Watchdogs(final HoldUpPulses holdUp, final BoardWatchdog board, final Heartbeat heartbeat) {
        this.holdUp = holdUp;
        this.board = board;
        this.heartbeat = heartbeat;
    }

    public ProofOfScan proof() {
        return proof;
    }

    public HoldUpPulses holdUp() {
        return holdUp;
    }

    /** Feeds what the proof has earned; nothing when a step is missing. Returns whether it was earned. */
    public boolean feed(final RunState run, final Gate gate) {
        if (!proof.isComplete()) {
            return false;
        }
        holdUp.prove(run, gate);
        board.feed();
        heartbeat.beat();
        return true;
    }

    /**
     * For a scan that ran and rests everything because a pin is stuck: no pulses, but neither the board's watchdog nor the
     * supervisor may end in a loop of starts, each of which finds the same pin (S10).
     */
    public void keepAlive() {
        board.feed();
        heartbeat.beat();
    }
}
