package slackwater.controller.cue;

import java.util.Optional;
import slackwater.controller.image.Conditions;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.Count;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.OnDelay;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Timer;
import slackwater.model.Cue;
import slackwater.model.event.Spans;

/** When one cue may start, and that it plays. */
final class CueLogic {
    private static final long STARTS_MAX = Long.MAX_VALUE;

    private final Cue cue;
    private final int zone;
    private final StartLogic start;
    private final Conditions provided;
    private final Playing playing;
    private final int[] outputs;
    private final Flag isPlaying;
    private final Count starts;
    private final Timer holdOff;
    private final Flag awaitsClear;
    private final Optional<OnDelay> clear;

    CueLogic(final Cue cue, final Places places, final Layout layout, final Playing playing) {
        this.cue = cue;
        this.playing = playing;
        final String place = "cue." + cue.name();
        zone = places.zone(cue.zone());
        start = new StartLogic(cue.start(), places, layout, place);
        provided = places.conditions(cue.provided());
        outputs = playing.outputs();
        isPlaying = layout.flag(place + ".playing");
        starts = layout.count(place + ".starts", STARTS_MAX);
        holdOff = layout.timer(place + ".hold-off");
        awaitsClear = layout.flag(place + ".awaits-clear");
        clear = cue.againAfterClear().map(after -> new OnDelay(layout, place + ".clear", after.toNanos()));
    }

    Cue cue() {
        return cue;
    }

    int zone() {
        return zone;
    }

    boolean isPlaying(final RunState run) {
        return isPlaying.is(run);
    }

    /** Follows the clear time, whatever the zone does. */
    void watch(final RunState run, final Image image) {
        if (clear.isPresent() && awaitsClear.is(run)) {
            if (clear.get().update(run, start.isClear(image))) {
                awaitsClear.set(run, false);
                clear.get().update(run, false);
            }
        }
    }

    boolean isAskedToStart(final RunState run, final Image image) {
        return start.isComplete(run, image);
    }

    /** Why it may not start now, or an empty text. Names of others are looked at elsewhere. */
    String refusal(final RunState run, final Image image) {
        if (isPlaying.is(run)) {
            return "it is playing";
        }
        if (awaitsClear.is(run)) {
            return "they have been greeted and have not gone yet";
        }
        if (holdOff.isRunning(run)) {
            return "hold-off for another " + Spans.text(holdOff.leftNs(run));
        }
        final int unproven = provided.firstUnproven(image);
        return unproven < 0 ? "" : "not provided: " + cue.provided().get(unproven);
    }

    void begin(final RunState run) {
        starts.set(run, starts.of(run) + 1);
        isPlaying.set(run, true);
        holdOff.start(run, cue.holdOff().toNanos());
        awaitsClear.set(run, clear.isPresent());
        playing.begin(run, starts.of(run));
    }

    /** Goes on if it plays; returns whether it has just ended. */
    boolean goOn(final RunState run, final Asking asking) {
        if (!isPlaying.is(run) || playing.goOn(run, asking)) {
            return false;
        }
        isPlaying.set(run, false);
        return true;
    }

    /** Ends it whole. */
    void end(final RunState run) {
        isPlaying.set(run, false);
        playing.end(run);
    }

    boolean sharesAnOutputWith(final CueLogic other) {
        for (final int mine : outputs) {
            for (final int theirs : other.outputs) {
                if (mine == theirs) {
                    return true;
                }
            }
        }
        return false;
    }
}
