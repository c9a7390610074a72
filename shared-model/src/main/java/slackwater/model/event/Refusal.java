package slackwater.model.event;

/**
 * Why an output may not be energised now.
 *
 * @param output the output that was asked for
 * @param rule the name of the interlock, or of the limit or mode that refuses
 * @param observed what the rule saw
 * @param sinceNs since when, from the run's start
 * @param clearsWhen what would clear it
 */
public record Refusal(String output, String rule, String observed, long sinceNs, String clearsWhen) {

    /** The whole text, for the person who stands in front of it. */
    public String text(final long nowNs) {
        return output + " may not: \"" + rule + "\" refuses because " + observed + " for " + Spans.text(nowNs - sinceNs)
                + "; clears when " + clearsWhen;
    }
}
