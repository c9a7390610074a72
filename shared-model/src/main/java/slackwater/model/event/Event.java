package slackwater.model.event;

import slackwater.model.Mode;

/** Something that happened on one controller. Times count from the run's start, in nanoseconds. */
public sealed interface Event {
    long atNs();

    /** One line for a person. */
    String text();

    /** An output went to or from its energised level. */
    record Switched(long atNs, String output, boolean isEnergised) implements Event {
        @Override
        public String text() {
            return output + (isEnergised ? " energised" : " at rest");
        }
    }

    /** A demand was refused; reported once, when the refusal begins. */
    record Refused(long atNs, Refusal refusal) implements Event {
        @Override
        public String text() {
            return refusal.text(atNs);
        }
    }

    /** A driver ended a demand at one of its own limits. */
    record Limited(long atNs, String output, String limit) implements Event {
        @Override
        public String text() {
            return output + " ended by its " + limit;
        }
    }

    /** A cue began. */
    record CueStarted(long atNs, String cue, String startedBy) implements Event {
        @Override
        public String text() {
            return "cue " + cue + " started by " + startedBy;
        }
    }

    /** A cue ended: whole, pre-empted, or because its zone may not play. */
    record CueEnded(long atNs, String cue, String why) implements Event {
        @Override
        public String text() {
            return "cue " + cue + " ended: " + why;
        }
    }

    /** Somebody came, but the cue did not start: a greeting lost. */
    record StartLost(long atNs, String cue, String why) implements Event {
        @Override
        public String text() {
            return "cue " + cue + " not started: " + why;
        }
    }

    /** A zone's mode changed. */
    record ModeChanged(long atNs, String zone, Mode from, Mode to, String why) implements Event {
        @Override
        public String text() {
            return "zone " + zone + " " + from + " -> " + to + ": " + why;
        }
    }

    /** A latch was set: it stays until somebody clears it. */
    record Latched(long atNs, String what, String why) implements Event {
        @Override
        public String text() {
            return what + " latched: " + why;
        }
    }

    /** A latch was cleared. */
    record Cleared(long atNs, String what, String by) implements Event {
        @Override
        public String text() {
            return what + " cleared by " + by;
        }
    }

    /** A request was taken or refused. */
    record Commanded(long atNs, String request, boolean isTaken, String why) implements Event {
        @Override
        public String text() {
            return request + (isTaken ? " taken" : " refused: " + why);
        }
    }

    /** A bottle or tray is nearly empty; once a fill. */
    record RunningLow(long atNs, String output, String left, String lasts) implements Event {
        @Override
        public String text() {
            return output + " is running low: " + left + " left; " + lasts;
        }
    }

    /** Somebody told that a bottle or tray has been filled up. */
    record Refilled(long atNs, String output, String by, String used) implements Event {
        @Override
        public String text() {
            return output + " refilled, told by " + by + "; " + used + " had been used";
        }
    }

    /** A weighing told how much an output really uses. */
    record Calibrated(long atNs, String output, String who, String factor) implements Event {
        @Override
        public String text() {
            return output + " calibrated by " + who + ": " + factor;
        }
    }

    /** What a bottle or tray holds is not known; its output stays refused until somebody fills it up. */
    record FillUnknown(long atNs, String output, String why) implements Event {
        @Override
        public String text() {
            return output + " is refused until it is filled up: " + why;
        }
    }

    /** An input stopped or started to be believed. */
    record InputDoubted(long atNs, String input, boolean isDoubted, String why) implements Event {
        @Override
        public String text() {
            return input + (isDoubted ? " not believed: " : " believed again: ") + why;
        }
    }

    /** Records that found no room, counted since the last one that did. */
    record Dropped(long atNs, long count) implements Event {
        @Override
        public String text() {
            return count + " records dropped";
        }
    }
}
