package slackwater.simulator.junit;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import slackwater.model.Controller;
import slackwater.model.Rig;
import slackwater.model.event.Event;
import slackwater.model.event.Spans;
import slackwater.simulator.bench.BenchListener;

/** The last things that happened on a bench, as lines. */
final class BenchLog implements BenchListener {
    /** As many as a person reads before looking elsewhere. */
    static final int MOST = 40;

    private final List<String> controllers;
    private final Deque<String> lines = new ArrayDeque<>(MOST);

    BenchLog(final Rig rig) {
        controllers = rig.controllers().stream().map(Controller::name).toList();
    }

    @Override
    public void event(final int controller, final Event event) {
        if (lines.size() == MOST) {
            lines.removeFirst();
        }
        lines.addLast(Spans.moment(event.atNs()) + "  " + controllers.get(controller) + "  " + event.text());
    }

    String text() {
        if (lines.isEmpty()) {
            return "nothing happened on the bench";
        }
        final String title = lines.size() == 1 ? "the last event" : "the last " + lines.size() + " events";
        return title + ":\n  " + String.join("\n  ", lines);
    }
}
