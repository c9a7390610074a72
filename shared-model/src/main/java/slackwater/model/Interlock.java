package slackwater.model;

import java.time.Duration;
import java.util.List;
import java.util.Map;

/** A reason not to energise. An interlock can only refuse: in the same state, one more never energises what was not. */
public sealed interface Interlock {
    String name();

    /** Names of the outputs that it guards, in the order of the file. */
    List<String> outputs();

    /** Energise only while every condition is proven; comes back by itself, but never resumes a cue. */
    record Permissive(String name, List<String> outputs, List<Condition> needs, Begun begun) implements Interlock {
        public Permissive {
            outputs = List.copyOf(outputs);
            needs = List.copyOf(needs);
        }
    }

    /** Once every condition is proven, the outputs rest and a fault latches, demand or not. */
    record Trip(String name, List<String> outputs, List<Condition> when, Begun begun) implements Interlock {
        public Trip {
            outputs = List.copyOf(outputs);
            when = List.copyOf(when);
        }
    }

    /** At most one at a time, counting each until it has been at rest for {@code clearAfter}. */
    record Exclusion(String name, List<String> outputs, Duration clearAfter) implements Interlock {
        public Exclusion {
            outputs = List.copyOf(outputs);
        }
    }

    /**
     * When something gets scarce, the least important outputs go without first; new starts only, a stroke begun is
     * finished. From the moment at which a need is no longer proven the first output is refused, and each further one
     * after another {@code nextAfter}; all are permitted again as soon as every need is proven.
     *
     * @param outputs the least important first
     */
    record Shed(String name, List<String> outputs, List<Condition> needs, Duration nextAfter) implements Interlock {
        public Shed {
            outputs = List.copyOf(outputs);
            needs = List.copyOf(needs);
        }
    }

    /**
     * The sum of currents stays at or below a limit.
     *
     * @param amps the whole limit
     * @param shares fixed parts by controller where the outputs are on several (S13); empty on one controller
     */
    record LoadLimit(String name, List<String> outputs, double amps, Map<String, Double> shares) implements Interlock {
        public LoadLimit {
            outputs = List.copyOf(outputs);
            shares = Map.copyOf(shares);
        }
    }

    /**
     * At most so many flash onsets in any second [t, t+1 s) (S14).
     *
     * @param flashes the whole limit
     * @param shares fixed parts by controller where the outputs are on several (S13); empty on one controller
     */
    record FlashLimit(String name, List<String> outputs, int flashes, Map<String, Integer> shares)
            implements Interlock {
        public FlashLimit {
            outputs = List.copyOf(outputs);
            shares = Map.copyOf(shares);
        }
    }
}
