package slackwater.simulator.referee;

import slackwater.simulator.yard.Truth;

/**
 * One rule, told of every change. Its own memory is its own; what it reads of the levels is handed to it, so that a
 * copy of the whole is a copy of each part.
 */
abstract class Rule {

    /** The first look: the levels of inputs are known, nothing has changed yet. */
    void begun(final Levels levels) {}

    /** Time went by until {@code untilNs} with the levels as they were; finds every deadline before that. */
    void passed(final long untilNs, final Levels levels, final Log log) {}

    /** An input changed on one controller's pin. */
    void sensed(final int sense, final Levels levels) {}

    /** A reset button of this controller was pressed for its proving time, and released now. */
    void reset(final int controller, final Levels levels) {}

    /** A zone was armed. */
    void armed(final int zone, final Levels levels) {}

    /** A zone was stood down; a controller knows it for certain from this moment on, now or later. */
    void stoodDown(final int zone, final long surelyNs, final Levels levels) {}

    void acted(final Act act, final Levels levels) {}

    void rested(final int output, final Levels levels) {}

    void started(final int output, final Levels levels, final Log log) {}

    /** Looks at the plants, after pins. */
    void plants(final Truth truth, final Levels levels, final Log log) {}

    /** When it needs a look even though nothing changes, or {@link Dues#NEVER}. */
    long wakeNs(final Levels levels) {
        return Dues.NEVER;
    }

    abstract Rule copy();
}
