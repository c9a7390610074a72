package slackwater.simulator.referee;

import slackwater.model.event.Spans;

/**
 * A rule was broken. A breach that lasts is reported once, when it begins.
 *
 * @param rule one of the words in {@link RuleWords}
 * @param output the output that broke it
 * @param atNs the first moment at which it was broken, from the run's start
 * @param detail what was seen, for a person
 */
public record Violation(String rule, String output, long atNs, String detail) {

    /** One line for a person. */
    public String text() {
        return Spans.moment(atNs) + " " + output + ": " + rule + ", " + detail;
    }
}
