package slackwater.simulator.referee;

/** The words by which violations name the rule that was broken. */
public final class RuleWords {
    /** Energised longer than its longest on and one scan period. */
    public static final String LONGEST_ON = "longest-on";
    /** Energised again before its shortest off. */
    public static final String SHORTEST_OFF = "shortest-off";
    /** More starts than allowed within a time. */
    public static final String STARTS = "starts";
    /** A bought prop was pulsed again while it still ran. */
    public static final String STILL_RUNNING = "still-running";
    /** A release was energised again without having been hung. */
    public static final String SPENT = "spent";

    public static final String EXCLUSION = "exclusion";
    public static final String PERMISSIVE = "permissive";
    public static final String TRIP = "trip";
    /** A less important output started although what it needs had been scarce for long enough. */
    public static final String SHED = "shed";

    public static final String LOAD_LIMIT = "load-limit";
    public static final String FLASH_LIMIT = "flash-limit";
    /** Energised although the stop loop was open, or had been and nobody had reset it. */
    public static final String STOP = "stop";
    /** Something that can hurt or startle moved before anybody armed, after a stand-down, or before the warning was over. */
    public static final String BEFORE_ARM = "before-arm";

    /** Powered again without a reset after its output supply had gone away, the stop loop apart. */
    public static final String SUPPLY_LOST = "supply-lost";

    public static final String LOCKOUT = "lockout";
    /** The pump ran into a block that was not hot enough. */
    public static final String COLD_PUMP = "cold-pump";
    /** The pump ran on an empty bottle. */
    public static final String DRY_PUMP = "dry-pump";
    /** The mister's discs ran without water. */
    public static final String DRY_MIST = "dry-mist";
    /** A stroke that began with somebody in the reach moved above the caution energy while somebody was there. */
    public static final String MOVED_INTO_PERSON = "moved-into-person";

    private RuleWords() {}
}
