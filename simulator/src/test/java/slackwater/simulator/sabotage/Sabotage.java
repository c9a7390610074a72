package slackwater.simulator.sabotage;

import java.util.List;
import slackwater.simulator.sabotage.Workshop.Edit;

/** One way of breaking the controller, the scene that it spoils, and the rule by which the referee sees it. */
record Sabotage(String what, String rule, String scene, List<Edit> edits) {
    @Override
    public String toString() {
        return what + ", by the rule " + rule;
    }
}
