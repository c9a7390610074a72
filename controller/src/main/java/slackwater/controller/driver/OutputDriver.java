package slackwater.controller.driver;

import java.time.Duration;
import java.util.Optional;
import slackwater.controller.image.Image;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.Phase;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Since;
import slackwater.controller.run.Timer;
import slackwater.controller.run.Window;
import slackwater.model.Limits;
import slackwater.model.Output;
import slackwater.model.event.Event;
import slackwater.model.event.Spans;

/**
 * Keeps one output within its own limits, whatever was asked and permitted. A demand that reached the longest on is used up
 * until it ends or a new step renews it.
 *
 * <pre>
 *   READY --permitted, and room for a start--> ENERGISED --not permitted, or too long--> RESTING --rested--> READY
 * </pre>
 */
final class OutputDriver {
    private enum State {
        READY,
        ENERGISED,
        RESTING
    }

    private final String name;
    private final int at;
    private final Limits limits;
    private final long longestOnNs;
    private final long shortestOffNs;
    private final Optional<Window> starts;
    private final Phase<State> state;
    private final Timer due;
    private final Flag isUsedUp;
    private final Since since;

    /**
     * @param at the output's position in the image
     */
    OutputDriver(final Output output, final int at, final Layout layout) {
        name = output.name();
        this.at = at;
        limits = output.limits();
        longestOnNs = limits.longestOn().map(Duration::toNanos).orElse(-1L);
        // a bought prop goes on by itself after its pulse, and must not be started again meanwhile
        final Duration runsOn = output.facts().duration("run-time").orElse(Duration.ZERO);
        shortestOffNs = Math.max(limits.shortestOff().toNanos(), runsOn.toNanos());
        final String place = "output." + name;
        starts = limits.starts().map(most -> layout.window(place + ".starts", most.most(), most.within()));
        state = layout.phase(place + ".state", State.class);
        due = layout.timer(place + ".due");
        isUsedUp = layout.flag(place + ".used-up");
        since = layout.since(place + ".state-since");
    }

    /** A demand that has ended, or that a new step renews, is no longer used up. */
    void renew(final RunState run) {
        isUsedUp.set(run, false);
    }

    boolean energises(final RunState run, final boolean isPermitted, final Image image) {
        final State now = state.of(run);
        final State next = switch (now) {
            case READY -> isPermitted && mayEnergise(run, false) ? State.ENERGISED : State.READY;
            case ENERGISED -> isPermitted && mayEnergise(run, true) ? State.ENERGISED : State.RESTING;
            case RESTING -> afterRest(run, isPermitted);
        };
        if (next != now) {
            enter(run, next);
        }
        // a step that ends with the limit was not cut short by it
        if (now == State.ENERGISED && isUsedUp.is(run) && image.demand[at]) {
            image.note(new Event.Limited(run.atNs(), name, "longest-on of " + Spans.text(longestOnNs)));
        }
        return next == State.ENERGISED;
    }

    boolean mayEnergise(final RunState run, final boolean isEnergised) {
        if (isEnergised) {
            return longestOnNs < 0 || !due.isDue(run);
        }
        final boolean hasRested = state.of(run) != State.RESTING || due.isDue(run);
        return hasRested && !isUsedUp.is(run) && hasRoom(run);
    }

    void rest(final RunState run) {
        if (state.of(run) == State.ENERGISED) {
            enter(run, State.RESTING);
        }
    }

    String observed(final RunState run) {
        if (isTooLong(run, state.of(run))) {
            return "it has reached its longest-on of " + Spans.text(longestOnNs) + ", energised";
        }
        if (state.of(run) == State.RESTING && !due.isDue(run)) {
            return "it has rested for less than its shortest-off of " + Spans.text(shortestOffNs) + ", resting";
        }
        if (isUsedUp.is(run)) {
            return "the demand has used up its longest-on of " + Spans.text(longestOnNs) + ", at rest";
        }
        return hasRoom(run)
                ? "it has been within its limits"
                : limits.starts()
                        .map(most -> "it has started " + most.most() + " times within "
                                + Spans.text(most.within().toNanos()) + ", in this state")
                        .orElse("");
    }

    long sinceNs(final RunState run) {
        return since.atNs(run);
    }

    String clearsWhen(final RunState run) {
        if (state.of(run) == State.RESTING && !due.isDue(run)) {
            return Spans.text(due.leftNs(run)) + " have passed";
        }
        return hasRoom(run)
                ? "it is asked for anew"
                : Spans.text(starts.map(window -> window.leftNs(run)).orElse(0L)) + " have passed";
    }

    private State afterRest(final RunState run, final boolean isPermitted) {
        if (!due.isDue(run)) {
            return State.RESTING;
        }
        return isPermitted && mayEnergise(run, false) ? State.ENERGISED : State.READY;
    }

    private boolean hasRoom(final RunState run) {
        return starts.isEmpty() || starts.get().room(run) > 0;
    }

    private void enter(final RunState run, final State next) {
        final State now = state.of(run);
        since.mark(run);
        switch (next) {
            case ENERGISED -> {
                startLimit(run);
                starts.ifPresent(window -> window.count(run));
            }
            case RESTING -> {
                isUsedUp.set(run, isTooLong(run, now));
                due.start(run, shortestOffNs);
            }
            case READY -> due.stop(run);
        }
        state.set(run, next);
    }

    private void startLimit(final RunState run) {
        if (longestOnNs < 0) {
            due.stop(run);
        } else {
            due.start(run, longestOnNs);
        }
    }

    private boolean isTooLong(final RunState run, final State now) {
        return now == State.ENERGISED && longestOnNs >= 0 && due.isDue(run);
    }
}
