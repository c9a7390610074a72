package slackwater.simulator.report;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The result of a run, for the summary, the page and scripts.
 *
 * @param digest SHA-256 over the run's pin levels, as hexadecimal digits
 */
public record Evening(
        Run run, Visits visits, List<SeenAhead> seenAhead, Tallies tallies, List<Violation> violations, String digest) {
    public Evening {
        seenAhead = List.copyOf(seenAhead);
        violations = List.copyOf(violations);
    }

    /**
     * What was run.
     *
     * @param virtualNs length of the evening
     * @param wallNs how long the computer took for it
     * @param scans of all controllers together
     */
    public record Run(
            String rig, String show, long seed, StartedAt startedAt, long virtualNs, long wallNs, long scans) {}

    /**
     * Who came, and what they met.
     *
     * @param visitors people and dogs that passed
     * @param groups the groups they came in
     * @param greeted groups for which at least one cue played
     * @param nearMisses times somebody stood in the reach of a prop that moved
     * @param startledByMistake cues for tall visitors that began with only small ones or dogs near
     */
    public record Visits(long visitors, long groups, long greeted, long nearMisses, long startledByMistake) {}

    /**
     * How far ahead a sensor sees people.
     *
     * @param passing people who pass the prop
     * @param seen those of them whom the sensor sees before they are nearest to it
     * @param medianNs from first sight to the nearest point, the median of those seen
     * @param leastNs the least of them
     */
    public record SeenAhead(String input, String output, long passing, long seen, long medianNs, long leastNs) {}

    /**
     * Counts, each in the order in which it is to be listed.
     *
     * @param cuesStarted by cue
     * @param startsLost by reason
     * @param refusals by rule
     * @param actuations by output
     * @param longestOn of each output
     * @param restShare share of the evening in which every output was at rest, 0 to 1
     */
    public record Tallies(
            Map<String, Long> cuesStarted,
            Map<String, Long> startsLost,
            Map<String, Long> refusals,
            Map<String, Long> actuations,
            List<LongestOn> longestOn,
            double restShare) {
        public Tallies {
            cuesStarted = ordered(cuesStarted);
            startsLost = ordered(startsLost);
            refusals = ordered(refusals);
            actuations = ordered(actuations);
            longestOn = List.copyOf(longestOn);
        }

        private static Map<String, Long> ordered(final Map<String, Long> counts) {
            return Collections.unmodifiableMap(new LinkedHashMap<>(counts));
        }
    }

    /**
     * The longest time that an output was energised without a break.
     *
     * @param limitNs its longest-on, or 0 for an output without one
     */
    public record LongestOn(String output, long longestNs, long limitNs) {}

    /** Something that the referee saw and that must not happen. */
    public record Violation(String rule, String output, long atNs, String detail) {}
}
