package slackwater.model;

/** What a moving part does when it loses power or air (S1). */
public enum Return {
    SPRING_RETURNS,
    AIR_DRIVES,
    /** Gravity moves it; needs a stated restraint. */
    FALLS,
    STAYS
}
