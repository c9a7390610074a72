package slackwater.controller.cue;

import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Timer;
import slackwater.model.Start;

/** Watches for what starts a cue: rising edges of proven views only. */
final class StartLogic {
    private enum Form {
        ONE,
        ALL,
        ORDER
    }

    private final Form form;
    private final int[] inputs;
    private final Timer[] recent;
    private final long withinNs;

    StartLogic(final Start start, final Places places, final Layout layout, final String place) {
        inputs = start.inputs().stream().mapToInt(places::input).toArray();
        recent = new Timer[inputs.length];
        for (int i = 0; i < inputs.length; i++) {
            recent[i] = layout.timer(place + ".recent." + i);
        }
        if (start instanceof Start.AllWithin all) {
            form = Form.ALL;
            withinNs = all.within().toNanos();
        } else if (start instanceof Start.InOrder order) {
            form = Form.ORDER;
            withinNs = order.within().toNanos();
        } else {
            form = Form.ONE;
            withinNs = 0;
        }
    }

    /** Whether what starts the cue has just become complete. */
    boolean isComplete(final RunState run, final Image image) {
        return switch (form) {
            case ONE -> image.rose[inputs[0]];
            case ALL -> areAllRecent(run, image);
            case ORDER -> isInOrder(run, image);
        };
    }

    /** Whether every starting input is proven inactive. */
    boolean isClear(final Image image) {
        for (final int input : inputs) {
            if (!image.provenInactive[input]) {
                return false;
            }
        }
        return true;
    }

    private boolean areAllRecent(final RunState run, final Image image) {
        boolean hasRisen = false;
        boolean areAll = true;
        for (int i = 0; i < inputs.length; i++) {
            if (image.rose[inputs[i]]) {
                hasRisen = true;
                recent[i].start(run, withinNs);
            }
            areAll &= recent[i].isRunning(run);
        }
        if (hasRisen && areAll) {
            forget(run);
            return true;
        }
        return false;
    }

    /** Both in one scan is no direction. */
    private boolean isInOrder(final RunState run, final Image image) {
        final boolean hasFirst = image.rose[inputs[0]];
        final boolean isComplete = !hasFirst && image.rose[inputs[1]] && recent[0].isRunning(run);
        if (hasFirst) {
            recent[0].start(run, withinNs);
        } else if (isComplete) {
            forget(run);
        }
        return isComplete;
    }

    private void forget(final RunState run) {
        for (final Timer timer : recent) {
            timer.stop(run);
        }
    }
}
