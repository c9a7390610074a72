package slackwater.simulator.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import slackwater.model.Interlock;
import slackwater.model.Rig;

/** Makes the rules that a rig asks for. */
final class RuleBook {
    private final Rig rig;
    private final Wiring wiring;
    private final List<Rule> rules = new ArrayList<>();

    RuleBook(final Rig rig, final Wiring wiring) {
        this.rig = rig;
        this.wiring = wiring;
    }

    /** Those of the interlocks; what every rig has is added by the referee. */
    List<Rule> rules() {
        for (final Interlock interlock : rig.interlocks()) {
            add(interlock);
        }
        return List.copyOf(rules);
    }

    private void add(final Interlock interlock) {
        if (interlock instanceof Interlock.Permissive permissive) {
            addOnEach(permissive, controller -> new Permission(permissive, controller, wiring));
        } else if (interlock instanceof Interlock.Trip trip) {
            addOnEach(trip, controller -> new Tripping(trip, controller, wiring));
        } else if (interlock instanceof Interlock.Shed shed) {
            addOnEach(shed, controller -> new Shedding(shed, controller, wiring));
        } else if (interlock instanceof Interlock.Exclusion exclusion) {
            rules.add(new OneAtATime(exclusion, wiring));
        } else if (interlock instanceof Interlock.LoadLimit limit) {
            addLoads(limit);
        } else if (interlock instanceof Interlock.FlashLimit limit) {
            addFlashes(limit);
        } else {
            throw new IllegalStateException("no rule for interlock " + interlock);
        }
    }

    private void addOnEach(final Interlock interlock, final IntFunction<Rule> onController) {
        for (int controller = 0; controller < wiring.controllers(); controller++) {
            if (Guarded.isAny(Guarded.on(controller, interlock.outputs(), wiring))) {
                rules.add(onController.apply(controller));
            }
        }
    }

    private void addLoads(final Interlock.LoadLimit limit) {
        rules.add(new CurrentSum(limit.name(), Guarded.all(limit.outputs(), wiring), limit.amps(), wiring));
        for (int controller = 0; controller < wiring.controllers(); controller++) {
            final Map<String, Double> shares = limit.shares();
            final Double share = shares.get(wiring.controllerName(controller));
            if (share != null) {
                final boolean[] isGuarded = Guarded.on(controller, limit.outputs(), wiring);
                rules.add(new CurrentSum(shareOf(limit, controller), isGuarded, share, wiring));
            }
        }
    }

    private void addFlashes(final Interlock.FlashLimit limit) {
        rules.add(new FlashCount(limit.name(), Guarded.all(limit.outputs(), wiring), limit.flashes(), wiring));
        for (int controller = 0; controller < wiring.controllers(); controller++) {
            final Map<String, Integer> shares = limit.shares();
            final Integer share = shares.get(wiring.controllerName(controller));
            if (share != null) {
                final boolean[] isGuarded = Guarded.on(controller, limit.outputs(), wiring);
                rules.add(new FlashCount(shareOf(limit, controller), isGuarded, share, wiring));
            }
        }
    }

    private String shareOf(final Interlock limit, final int controller) {
        return limit.name() + ", share of " + wiring.controllerName(controller);
    }
}
