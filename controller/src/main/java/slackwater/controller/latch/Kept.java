package slackwater.controller.latch;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What outlives a restart (S5).
 *
 * @param latched names of latched things, such as {@code stop} or {@code trip south-tray-dry}
 * @param lockouts names of people by locked target, such as {@code zone north}
 * @param spent releases that have not been hung again
 * @param openedDay the local date, as a day count, on which a schedule last opened; a negative number for never
 */
public record Kept(List<String> latched, Map<String, List<String>> lockouts, List<String> spent, long openedDay) {

    /** Nothing to remember: a controller that was never used. */
    public static final Kept NOTHING = new Kept(List.of(), new TreeMap<>(), List.of(), -1);

    public Kept {
        latched = List.copyOf(latched);
        lockouts = java.util.Collections.unmodifiableMap(new TreeMap<>(lockouts));
        spent = List.copyOf(spent);
    }
}
