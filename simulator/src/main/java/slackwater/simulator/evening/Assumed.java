package slackwater.simulator.evening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.model.Field;
import slackwater.model.Input;
import slackwater.model.Point;
import slackwater.model.Ray;
import slackwater.model.Rig;
import slackwater.model.WalkWay;
import slackwater.model.kind.InputFamily;

/**
 * What the simulator assumes of a rig that says nothing of places, so that a first sketch can be tried: a straight way, and
 * sensors at its middle. Only what nobody said is assumed, and every assumption is told.
 *
 * @param rig the rig with its gaps filled
 * @param notes one line for each assumption
 */
public record Assumed(Rig rig, List<String> notes) {
    private static final double WAY_M = 20;
    private static final double WIDTH_M = 1.5;
    private static final double GROUPS_PER_HOUR = 20;
    private static final double ASIDE_M = 2;
    private static final double ANGLE_DEG = 60;
    private static final double RANGE_M = 5;
    private static final double BEAM_HEIGHT_M = 0.9;
    private static final double QUARTER_TURN_DEG = 90;

    public Assumed {
        notes = List.copyOf(notes);
    }

    /** Fills the gaps of a rig. */
    public static Assumed of(final Rig rig) {
        final List<String> notes = new ArrayList<>();
        final WalkWay way = rig.surroundings().way().orElseGet(() -> {
            notes.add("assumed: a straight way of 20 m, 1.5 m wide, 20 groups an hour; [way] says it better");
            return new WalkWay(List.of(new Point(0, 0), new Point(WAY_M, 0)), WIDTH_M, GROUPS_PER_HOUR);
        });
        final List<Input> inputs =
                rig.inputs().stream().map(input -> placed(input, way, notes)).toList();
        return new Assumed(
                new Rig(
                        rig.name(),
                        rig.scan(),
                        rig.place(),
                        rig.controllers(),
                        rig.zones(),
                        inputs,
                        rig.outputs(),
                        rig.interlocks(),
                        rig.arming(),
                        rig.people(),
                        rig.surroundings().along(way),
                        rig.ledger()),
                notes);
    }

    private static Input placed(final Input input, final WalkWay way, final List<String> notes) {
        final Input.Sees sees = input.sees();
        final Point a = way.points().get(0);
        final Point b = way.points().get(1);
        final Point middle = new Point((a.xM() + b.xM()) / 2, (a.yM() + b.yM()) / 2);
        final double alongDeg = StrictMath.toDegrees(StrictMath.atan2(b.yM() - a.yM(), b.xM() - a.xM()));
        if (input.family() == InputFamily.MOTION && sees.field().isEmpty()) {
            notes.add("assumed: " + input.name() + " hangs 2 m beside the middle of the way and sees 5 m across it");
            final Point at = beside(middle, alongDeg, ASIDE_M);
            return seeing(
                    input,
                    new Input.Sees(
                            Optional.of(new Field(at, alongDeg - QUARTER_TURN_DEG, ANGLE_DEG, RANGE_M)), sees.ray()));
        }
        if (input.family() == InputFamily.BEAM
                && sees.ray().isEmpty()
                && input.reachOf().isEmpty()) {
            notes.add("assumed: " + input.name() + " crosses the middle of the way 0.9 m above the ground");
            final Ray ray = new Ray(
                    beside(middle, alongDeg, way.widthM()), beside(middle, alongDeg, -way.widthM()), BEAM_HEIGHT_M);
            return seeing(input, new Input.Sees(sees.field(), Optional.of(ray)));
        }
        return input;
    }

    private static Point beside(final Point of, final double alongDeg, final double byM) {
        final double acrossRad = StrictMath.toRadians(alongDeg + QUARTER_TURN_DEG);
        return new Point(of.xM() + byM * StrictMath.cos(acrossRad), of.yM() + byM * StrictMath.sin(acrossRad));
    }

    private static Input seeing(final Input input, final Input.Sees sees) {
        return new Input(
                input.name(),
                input.kind(),
                input.zone(),
                input.controllers(),
                input.pins(),
                input.activeLevel(),
                input.pull(),
                input.proving(),
                input.use(),
                input.reachOf(),
                sees,
                input.facts());
    }
}
