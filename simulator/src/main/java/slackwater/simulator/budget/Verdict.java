package slackwater.simulator.budget;

/** What a line of a budget comes to. */
public enum Verdict {
    /** What is asked is there. */
    FITS("fits"),
    /** It is there, but a person should look at it: a figure of caution, or little margin. */
    LOOK("look"),
    /** It is not there. */
    SHORT("short"),
    /** A figure that is only told. */
    TOLD("");

    private final String word;

    Verdict(final String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
