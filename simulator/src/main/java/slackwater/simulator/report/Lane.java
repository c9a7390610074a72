package slackwater.simulator.report;

import java.util.List;

/**
 * One signal that is drawn and recorded over a run.
 *
 * @param group the controller or zone that it belongs to
 * @param name unique among the lanes of its group and sort
 * @param sort decides its shape on the page
 * @param value what its numbers mean
 * @param words for a lane of words: what the indices say
 * @param unit for a lane of numbers: the unit that is printed after them
 */
public record Lane(String group, String name, Sort sort, Value value, List<String> words, String unit) {
    private static final List<String> TWO_WORDS = List.of("no", "yes");

    /** What a lane shows, in the order in which a group lists them. */
    public enum Sort {
        /** A mode of a zone. */
        MODE,
        /** A cue that plays. */
        CUE,
        /** An input's level as its controller finds it. */
        INPUT,
        /** An output's pin: energised or at rest. */
        PIN,
        /** A quantity of a plant, such as a pressure. */
        GAUGE
    }

    /** What the recorded numbers mean. */
    public enum Value {
        /** 0 or 1. */
        BIT,
        /** An index into the lane's words. */
        WORD,
        /** A quantity in the lane's unit. */
        NUMBER
    }

    public Lane {
        words = List.copyOf(words);
        if (value == Value.WORD && words.isEmpty()) {
            throw new IllegalArgumentException("lane " + group + "/" + name + " has no words");
        }
    }

    /** A lane that is on or off. */
    public static Lane bit(final String group, final String name, final Sort sort) {
        return new Lane(group, name, sort, Value.BIT, TWO_WORDS, "");
    }

    /** A lane that says one of some words, such as a mode. */
    public static Lane words(final String group, final String name, final Sort sort, final List<String> words) {
        return new Lane(group, name, sort, Value.WORD, words, "");
    }

    /** A lane of a quantity. */
    public static Lane gauge(final String group, final String name, final String unit) {
        return new Lane(group, name, Sort.GAUGE, Value.NUMBER, List.of(), unit);
    }

    /** How many bits hold every index of the lane's words: 3 for seven modes. */
    int bits() {
        return Math.max(1, Integer.SIZE - Integer.numberOfLeadingZeros(words.size() - 1));
    }
}
