package slackwater.simulator.evening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import slackwater.model.Cue;
import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.model.Point;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.simulator.report.Evening;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.visitor.Sight;
import slackwater.simulator.visitor.Visitor;

/** How far ahead a cue's sensor sees people, before they are nearest to the prop that it moves. */
final class Foresight {
    /** People are looked at on the same grid as by the yard's sensors. */
    private static final long GRID_NS = 50_000_000L;
    /** Whoever never comes so near to a prop does not pass it. */
    private static final double PASSES_WITHIN_M = 6;

    private final Rig rig;
    private final Crowd crowd;

    Foresight(final Rig rig, final Crowd crowd) {
        this.rig = rig;
        this.crowd = crowd;
    }

    /** One figure for each cue whose sensor and moving prop both have a place. */
    List<Evening.SeenAhead> of(final Show show) {
        final List<Evening.SeenAhead> all = new ArrayList<>();
        for (final Cue cue : show.cues()) {
            final List<String> starts = cue.start().inputs();
            final Optional<Input> sensor = rig.input(starts.get(starts.size() - 1))
                    .filter(input -> input.sees().field().isPresent()
                            || input.sees().ray().isPresent());
            final Optional<Output> prop = CueOutputs.of(cue).stream()
                    .flatMap(name -> rig.output(name).stream())
                    .filter(output -> output.family().moves() && output.at().isPresent())
                    .findFirst();
            if (sensor.isPresent() && prop.isPresent()) {
                all.add(measure(sensor.get(), prop.get()));
            }
        }
        return all.stream().distinct().toList();
    }

    private Evening.SeenAhead measure(final Input sensor, final Output prop) {
        final Point at = prop.at().orElseThrow();
        final List<Long> leads = new ArrayList<>();
        long passing = 0;
        for (final Visitor visitor : crowd.visitors()) {
            final Pass pass = pass(visitor, sensor, at);
            passing += pass.isNear() ? 1 : 0;
            if (pass.isNear() && pass.seenNs() >= 0 && pass.seenNs() <= pass.nearestNs()) {
                leads.add(pass.nearestNs() - pass.seenNs());
            }
        }
        final long[] sorted = leads.stream().mapToLong(Long::longValue).sorted().toArray();
        final long median = sorted.length == 0 ? 0 : sorted[sorted.length / 2];
        final long least = Arrays.stream(sorted).findFirst().orElse(0);
        return new Evening.SeenAhead(sensor.name(), prop.name(), passing, sorted.length, median, least);
    }

    /** When a visitor was first seen, or -1, and when they were nearest to the prop. */
    private record Pass(long seenNs, long nearestNs, boolean isNear) {}

    private static Pass pass(final Visitor visitor, final Input sensor, final Point prop) {
        long seenNs = -1;
        long nearestNs = visitor.arrivesNs();
        double nearestM = Double.MAX_VALUE;
        for (long now = visitor.arrivesNs(); now < visitor.leavesNs(); now += GRID_NS) {
            final double x = visitor.xM(now);
            final double y = visitor.yM(now);
            if (seenNs < 0 && sees(sensor, visitor, x, y)) {
                seenNs = now;
            }
            final double distance = prop.distanceM(new Point(x, y));
            if (distance < nearestM) {
                nearestM = distance;
                nearestNs = now;
            }
        }
        return new Pass(seenNs, nearestNs, nearestM <= PASSES_WITHIN_M);
    }

    private static boolean sees(final Input sensor, final Visitor visitor, final double x, final double y) {
        return sensor.sees().field().map(field -> Sight.isSeenBy(field, x, y)).orElse(false)
                || sensor.sees()
                        .ray()
                        .map(ray -> Sight.blocks(ray, x, y, visitor.heightM()))
                        .orElse(false);
    }
}
