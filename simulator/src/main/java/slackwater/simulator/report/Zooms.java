package slackwater.simulator.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Chooses the stretches of five minutes that are drawn again at a finer scale: first violations, then the busiest. */
final class Zooms {
    private static final long MINUTE_NS = 60_000_000_000L;
    private static final int MINUTES = 5;
    private static final int MOST = 3;

    private Zooms() {}

    /** Starts of the stretches in ascending time; none for an evening that is hardly longer than one. */
    static List<Long> of(final Story story) {
        final List<Long> starts = new ArrayList<>();
        if (story.endNs() < 2 * lengthNs()) {
            return starts;
        }
        for (int lane = 0; lane < story.size(); lane++) {
            for (final LaneMarks.Mark mark : story.violations(lane)) {
                final long startNs = (mark.atNs() / MINUTE_NS - MINUTES / 2) * MINUTE_NS;
                addFree(starts, Math.max(0, Math.min(startNs, story.endNs() - lengthNs())));
            }
        }
        busiest(story, starts);
        starts.sort(Long::compare);
        return List.copyOf(starts);
    }

    static long lengthNs() {
        return MINUTES * MINUTE_NS;
    }

    private static void busiest(final Story story, final List<Long> starts) {
        final long[] minutes = perMinute(story);
        final long[] stretches = new long[minutes.length - MINUTES + 1];
        for (int first = 0; first < stretches.length; first++) {
            stretches[first] = Arrays.stream(minutes, first, first + MINUTES).sum();
        }
        for (int tried = 0; tried < stretches.length && starts.size() < MOST; tried++) {
            int best = 0;
            for (int first = 1; first < stretches.length; first++) {
                best = stretches[first] > stretches[best] ? first : best;
            }
            if (stretches[best] <= 0) {
                return;
            }
            addFree(starts, best * MINUTE_NS);
            stretches[best] = 0;
        }
    }

    /** Changes in each whole minute; quantities change all the time and do not count. */
    private static long[] perMinute(final Story story) {
        final long[] minutes = new long[(int) (story.endNs() / MINUTE_NS)];
        for (int lane = 0; lane < story.size(); lane++) {
            final Lanes.Track track = story.track(lane);
            for (int change = 0; change < track.size() && story.lane(lane).sort() != Lane.Sort.GAUGE; change++) {
                final int minute = (int) (track.fromNs(change) / MINUTE_NS);
                // The start of the run is no event, and what comes after the last whole minute belongs to none.
                if (track.fromNs(change) > 0 && minute < minutes.length) {
                    minutes[minute]++;
                }
            }
        }
        return minutes;
    }

    private static void addFree(final List<Long> starts, final long startNs) {
        final boolean isFree = starts.stream().allMatch(each -> Math.abs(each - startNs) >= lengthNs());
        if (isFree && starts.size() < MOST) {
            starts.add(startNs);
        }
    }
}
