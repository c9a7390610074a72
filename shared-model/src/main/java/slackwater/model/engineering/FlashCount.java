package slackwater.model.engineering;

import java.util.ArrayList;
import java.util.List;

/** Counts flashes as WCAG 2.x success criterion 2.3.1 does: onsets in any second [t, t + 1 s) (handbook 4.3). */
public final class FlashCount {
    /** Most general flashes in any second (handbook 4.1 case 1, WCAG 2.3.1). */
    public static final int MOST_IN_A_SECOND = 3;
    /** Most flashes a second of a strobe in a venue (handbook 4.2 case 1, UK Health and Safety Executive). */
    public static final int VENUE_MOST_IN_A_SECOND = 4;

    private static final long SECOND_NS = 1_000_000_000L;
    private static final long ONE_FLASH_NS = 20_000_000L;

    private FlashCount() {}

    /**
     * The most onsets in any second, of all lamps that people see together.
     *
     * @param onsetsNs moments at which a flash begins, in any order; those less than 20 ms after a counted one are the
     * same flash
     */
    public static int most(final List<Long> onsetsNs) {
        final List<Long> merged = merged(onsetsNs);
        int most = 0;
        int from = 0;
        for (int to = 0; to < merged.size(); to++) {
            while (merged.get(to) - merged.get(from) >= SECOND_NS) {
                from++;
            }
            most = Math.max(most, to - from + 1);
        }
        return most;
    }

    private static List<Long> merged(final List<Long> onsetsNs) {
        final List<Long> merged = new ArrayList<>();
        for (final Long onsetNs : onsetsNs.stream().sorted().toList()) {
            if (merged.isEmpty() || onsetNs - merged.get(merged.size() - 1) >= ONE_FLASH_NS) {
                merged.add(onsetNs);
            }
        }
        return merged;
    }
}
