package slackwater.simulator.evening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.model.Cue;
import slackwater.model.Input;
import slackwater.model.Point;
import slackwater.model.Rig;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.visitor.Sight;
import slackwater.simulator.visitor.Visitor;

/** Who stood near what started a cue. */
final class Near {
    /** A sensor of a yard sees about so far (handbook 5.1 gives up to 7 m; common practice for a hooded one, no source). */
    private static final double RADIUS_M = 4;

    private final Rig rig;
    private final Crowd crowd;

    Near(final Rig rig, final Crowd crowd) {
        this.rig = rig;
        this.crowd = crowd;
    }

    /** The people near a cue's starting inputs; everybody in the yard where those have no positions. */
    List<Visitor> whoStarted(final Cue cue, final long atNs) {
        final List<Point> places = cue.start().inputs().stream()
                .flatMap(name -> rig.input(name).stream())
                .flatMap(input -> place(input).stream())
                .toList();
        final List<Visitor> near = new ArrayList<>();
        for (final Visitor visitor : crowd.visitors()) {
            if (visitor.arrivesNs() > atNs) {
                break;
            }
            if (visitor.isHere(atNs) && (places.isEmpty() || isNearAny(visitor, places, atNs))) {
                near.add(visitor);
            }
        }
        return near;
    }

    private static boolean isNearAny(final Visitor visitor, final List<Point> places, final long atNs) {
        return places.stream().anyMatch(place -> Sight.isWithin(place, RADIUS_M, visitor.xM(atNs), visitor.yM(atNs)));
    }

    private static Optional<Point> place(final Input input) {
        return input.sees()
                .field()
                .map(field -> field.at())
                .or(() -> input.sees()
                        .ray()
                        .map(ray -> new Point(
                                (ray.from().xM() + ray.to().xM()) / 2,
                                (ray.from().yM() + ray.to().yM()) / 2)));
    }
}
