package slackwater.model.engineering;

/**
 * A fault is found and answered before it can do harm (handbook 6.8 case 6, from memory): the longest time until it is found and
 * the answer's time together stay below the time in which it can do harm.
 *
 * @param foundInS longest time until the fault is found, the interval of a test, seconds
 * @param answeredInS from finding it to rest, seconds
 * @param harmsInS from the fault to the moment at which harm is possible, the process safety time, seconds
 */
public record FaultReaction(double foundInS, double answeredInS, double harmsInS) {

    public FaultReaction {
        Given.notNegative("foundInS", foundInS);
        Given.notNegative("answeredInS", answeredInS);
        Given.positive("harmsInS", harmsInS);
    }

    /** What is left, seconds; negative when the answer comes too late by so much. */
    public double marginS() {
        return harmsInS - foundInS - answeredInS;
    }

    /** An answer at the very moment is too late. */
    public boolean isInTime() {
        return marginS() > 0;
    }
}
