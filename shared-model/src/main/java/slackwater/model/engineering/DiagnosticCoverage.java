package slackwater.model.engineering;

/**
 * How large a share of the dangerous faults a test finds (handbook 6.6 case 6 and 6.8 cases 1 to 5; ISO 13849-1 in its editions of
 * 2006 and 2015, IEC 61508-2 Table A.10). For information: this project claims no level of safety.
 */
public enum DiagnosticCoverage {
    NONE(0),
    LOW(0.60),
    MEDIUM(0.90),
    HIGH(0.99);

    private final double fromShare;

    DiagnosticCoverage(final double fromShare) {
        this.fromShare = fromShare;
    }

    /** What a watchdog or a check of the program's order may claim at most (handbook 6.8 cases 1 to 4). */
    public enum Monitoring {
        /** A time base of its own, but no window: too early a kick passes (A.9.1). */
        WATCHDOG(LOW),
        /** A time base of its own and a window (A.9.2). */
        WINDOWED_WATCHDOG(MEDIUM),
        /** Logical monitoring of the program's order (A.9.3); depends on its quality. */
        PROGRAM_ORDER(MEDIUM),
        /** Order and time, both monitored (A.9.4). */
        ORDER_AND_TIME(HIGH);

        private final DiagnosticCoverage atMost;

        Monitoring(final DiagnosticCoverage atMost) {
            this.atMost = atMost;
        }

        public DiagnosticCoverage atMost() {
            return atMost;
        }
    }

    /** The least share that bears this name; it belongs to it. */
    public double fromShare() {
        return fromShare;
    }

    /** The name of a share, 0 to 1. */
    public static DiagnosticCoverage of(final double share) {
        Given.within("share", share, 0, 1);
        DiagnosticCoverage found = NONE;
        for (final DiagnosticCoverage coverage : values()) {
            found = share >= coverage.fromShare ? coverage : found;
        }
        return found;
    }
}
