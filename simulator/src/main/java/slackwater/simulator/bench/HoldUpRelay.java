package slackwater.simulator.bench;

/** The external relay of one controller: closed by an edge, open again when none has come for its drop-out time. */
final class HoldUpRelay {
    private final boolean isThere;
    private final long dropOutNs;
    private boolean isClosed;
    private long edges;
    private long lastEdgeNs;
    private boolean isBeingPulsed;

    HoldUpRelay(final boolean isThere, final long dropOutNs) {
        this.isThere = isThere;
        this.dropOutNs = dropOutNs;
    }

    private HoldUpRelay(final HoldUpRelay other) {
        isThere = other.isThere;
        dropOutNs = other.dropOutNs;
        isClosed = other.isClosed;
        edges = other.edges;
        lastEdgeNs = other.lastEdgeNs;
        isBeingPulsed = other.isBeingPulsed;
    }

    HoldUpRelay copy() {
        return new HoldUpRelay(this);
    }

    /** A scan ran and the line has made so many edges since the start. */
    void scanned(final long atNs, final long edgesNow) {
        isBeingPulsed = edgesNow != edges;
        if (isBeingPulsed) {
            edges = edgesNow;
            lastEdgeNs = atNs;
            isClosed = true;
        }
    }

    /** Scans up to this moment were passed over; each would have made an edge. */
    void passedOver(final long atNs) {
        lastEdgeNs = Math.max(lastEdgeNs, atNs);
    }

    /** Whether the last scan made an edge. */
    boolean isBeingPulsed() {
        return isBeingPulsed;
    }

    /** Time passes; returns whether the contact is closed. */
    boolean isClosedAt(final long atNs) {
        if (isClosed && atNs - lastEdgeNs >= dropOutNs) {
            isClosed = false;
        }
        return isClosed;
    }

    /** When it will drop if no edge comes, or never. */
    long dropsAtNs() {
        return isThere && isClosed ? lastEdgeNs + dropOutNs : Long.MAX_VALUE;
    }

    boolean isThere() {
        return isThere;
    }
}
