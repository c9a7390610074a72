package slackwater.simulator.yard;

import java.util.ArrayList;
import java.util.List;
import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.model.Point;
import slackwater.model.Ray;
import slackwater.model.Rig;
import slackwater.simulator.visitor.Cone;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.visitor.Sight;
import slackwater.simulator.visitor.Visitor;

/** Looks where people are: in whose field, in which beam, in which prop's reach. Rests while nobody is there. */
final class Lookout implements Plant {
    private record Eye(int input, Cone cone) {}

    private record Light(int input, Ray ray) {}

    private record Reach(int output, Point at, double radiusM) {}

    private final Crowd crowd;
    private final List<Eye> eyes = new ArrayList<>();
    private final List<Light> lights = new ArrayList<>();
    private final List<Reach> reaches = new ArrayList<>();

    Lookout(final Rig rig, final Crowd crowd) {
        this.crowd = crowd;
        for (int i = 0; i < rig.inputs().size(); i++) {
            final int index = i;
            final Input.Sees sees = rig.inputs().get(i).sees();
            sees.field().ifPresent(field -> eyes.add(new Eye(index, Cone.of(field))));
            sees.ray().ifPresent(ray -> lights.add(new Light(index, ray)));
        }
        for (int i = 0; i < rig.outputs().size(); i++) {
            final int index = i;
            final Output output = rig.outputs().get(i);
            if (output.reachM() > 0) {
                output.at().ifPresent(at -> reaches.add(new Reach(index, at, output.reachM())));
            }
        }
    }

    @Override
    public void step(final State state) {
        if (!state.isLookingNow()) {
            return;
        }
        if (state.present() > 0) {
            forget(state);
        }
        final long nowNs = state.nowNs();
        final int next = comeUntil(nowNs, state.nextToCome());
        int first = next;
        int present = 0;
        for (int i = state.firstHere(); i < next; i++) {
            final Visitor visitor = crowd.visitor(i);
            if (visitor.isHere(nowNs)) {
                first = Math.min(first, i);
                present++;
                lookAt(visitor, state);
            }
        }
        state.setPresent(present);
        state.setWindow(first, next);
    }

    @Override
    public long wakesNs(final State state) {
        if (state.present() > 0) {
            return nextLookNs(state.nowNs() + 1);
        }
        final int next = state.nextToCome();
        return next == crowd.size() ? ASLEEP : nextLookNs(crowd.visitor(next).arrivesNs());
    }

    private int comeUntil(final long nowNs, final int from) {
        int next = from;
        while (next < crowd.size() && crowd.visitor(next).arrivesNs() <= nowNs) {
            next++;
        }
        return next;
    }

    private void forget(final State state) {
        for (final Eye eye : eyes) {
            state.setSomebodySeen(eye.input(), false);
        }
        for (final Light light : lights) {
            state.setSomebodySeen(light.input(), false);
        }
        for (final Reach reach : reaches) {
            state.setPeopleInReach(reach.output(), 0);
        }
    }

    private void lookAt(final Visitor visitor, final State state) {
        final double xM = visitor.xM(state.nowNs());
        final double yM = visitor.yM(state.nowNs());
        if (Sight.isMoving(visitor, state.nowNs())) {
            for (final Eye eye : eyes) {
                if (eye.cone().sees(xM, yM)) {
                    state.setSomebodySeen(eye.input(), true);
                }
            }
        }
        for (final Light light : lights) {
            if (Sight.blocks(light.ray(), xM, yM, visitor.heightM())) {
                state.setSomebodySeen(light.input(), true);
            }
        }
        for (final Reach reach : reaches) {
            if (Sight.isWithin(reach.at(), reach.radiusM(), xM, yM)) {
                state.setPeopleInReach(reach.output(), state.peopleInReach(reach.output()) + 1);
            }
        }
    }

    private static long nextLookNs(final long atNs) {
        return Math.floorDiv(atNs + State.LOOK_NS - 1, State.LOOK_NS) * State.LOOK_NS;
    }
}
