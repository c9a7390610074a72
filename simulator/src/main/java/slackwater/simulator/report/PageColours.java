package slackwater.simulator.report;

import java.util.Map;
import java.util.TreeMap;

/**
 * The page's colours: greys while all is well, colour for the abnormal only. Every pair that is read against the ground
 * keeps the contrast of WCAG 2.1: 4.5 for text (1.4.3), 3 for shapes (1.4.11).
 *
 * @param ground behind everything
 * @param text words
 * @param quiet lesser words: axis and units
 * @param shape blocks of pins and cues, outlines of inputs, lines of gauges
 * @param hair rules between lanes, decoration only
 * @param violation words and marks of what must not happen
 * @param refusal words and marks of what was refused
 */
record PageColours(
        String ground, String text, String quiet, String shape, String hair, String violation, String refusal) {
    static final PageColours LIGHT =
            new PageColours("#fbfbfa", "#1f2428", "#535b62", "#626b73", "#dcdfe1", "#b3261e", "#8a5200");
    static final PageColours DARK =
            new PageColours("#16191c", "#e3e6e8", "#a9b1b8", "#9aa3ab", "#33393e", "#ff8f85", "#f2b84b");

    /** As custom properties of a style sheet. */
    String css() {
        final StringBuilder text = new StringBuilder();
        words().forEach((name, colour) ->
                text.append("--").append(name).append(':').append(colour).append(';'));
        return text.toString();
    }

    private Map<String, String> words() {
        final Map<String, String> words = new TreeMap<>();
        words.put("ground", ground);
        words.put("text", text);
        words.put("quiet", quiet);
        words.put("shape", shape);
        words.put("hair", hair);
        words.put("violation", violation);
        words.put("refusal", refusal);
        return words;
    }
}
