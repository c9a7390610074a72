package slackwater.simulator.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A run's lanes with the marks that belong to each, looked up once for all pictures. */
final class Story {
    private final Lanes lanes;
    private final StartedAt startedAt;
    private final List<Lanes.Track> tracks = new ArrayList<>();
    private final List<List<LaneMarks.Mark>> violations = new ArrayList<>();
    private final List<List<LaneMarks.Mark>> refusals = new ArrayList<>();

    Story(final Evening evening, final Lanes lanes) {
        this.lanes = lanes;
        this.startedAt = evening.run().startedAt();
        for (int lane = 0; lane < lanes.lanes().size(); lane++) {
            tracks.add(lanes.track(lane));
            violations.add(violationsOf(evening, lanes.lanes().get(lane)));
            refusals.add(refusalsOf(lane));
        }
    }

    private static List<LaneMarks.Mark> violationsOf(final Evening evening, final Lane lane) {
        return evening.violations().stream()
                .filter(each -> lane.sort() == Lane.Sort.PIN && each.output().equals(lane.name()))
                .sorted((left, right) -> Long.compare(left.atNs(), right.atNs()))
                .map(each -> new LaneMarks.Mark(
                        each.atNs(),
                        evening.run().startedAt().moment(each.atNs()) + " " + each.rule() + ": " + each.detail()))
                .toList();
    }

    private List<LaneMarks.Mark> refusalsOf(final int lane) {
        return lanes.refused().stream()
                .filter(each -> each.lane() == lane)
                .sorted((left, right) -> Long.compare(left.atNs(), right.atNs()))
                .map(each -> new LaneMarks.Mark(each.atNs(), startedAt.moment(each.atNs()) + " " + each.text()))
                .toList();
    }

    int size() {
        return tracks.size();
    }

    long endNs() {
        return lanes.endNs();
    }

    Lane lane(final int index) {
        return lanes.lanes().get(index);
    }

    Lanes.Track track(final int index) {
        return tracks.get(index);
    }

    StartedAt startedAt() {
        return startedAt;
    }

    List<LaneMarks.Mark> violations(final int lane) {
        return violations.get(lane);
    }

    List<LaneMarks.Mark> refusals(final int lane) {
        return refusals.get(lane);
    }

    /** What stands at a lane's end: how often it went on, or the range of a quantity. */
    String said(final int index, final Axis axis) {
        final Lanes.Track track = tracks.get(index);
        long pulses = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int change = 0; change < track.size(); change++) {
            if (track.untilNs(change) > axis.fromNs() && track.fromNs(change) < axis.untilNs()) {
                pulses += track.value(change) != 0 ? 1 : 0;
                least = Math.min(least, track.value(change));
                most = Math.max(most, track.value(change));
            }
        }
        return switch (lane(index).value()) {
            case BIT -> pulses == 0 ? "never" : pulses == 1 ? "once" : Summary.grouped(pulses) + " times";
            case WORD -> "";
            case NUMBER ->
                least > most
                        ? "unknown"
                        : String.format(
                                Locale.ROOT,
                                "%.1f to %.1f %s",
                                least,
                                most,
                                lane(index).unit());
        };
    }
}
