package slackwater.simulator.junit;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import slackwater.controller.cue.Shape;
import slackwater.controller.cue.ShapedKind;
import slackwater.controller.run.Count;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.model.Output;
import slackwater.model.kind.Family;
import slackwater.model.kind.Key;
import slackwater.model.kind.OutputKind;

/** Kinds as somebody outside the project could write them: one that keeps the contract, and one for each way to break it. */
abstract class SampleKind implements OutputKind {
    private static final int PATTERN = 7;

    @Override
    public String word() {
        return "sample";
    }

    @Override
    public Family family() {
        return Family.LAMP;
    }

    private abstract static class Shaped extends SampleKind implements ShapedKind {}

    /** Blinks by a count that stands in the run, as it should. */
    public static final class Sound extends Shaped {
        @Override
        public List<Key> keys() {
            return List.of(Key.duration("burns", "how long it burns"));
        }

        @Override
        public Shape shape(final Output output, final Layout layout) {
            final Count count = layout.count("sample." + output.name(), PATTERN);
            return (run, isDemanded, mayAfterRun) -> {
                count.set(run, isDemanded ? (count.of(run) + 1) % PATTERN : 0);
                return isDemanded && count.of(run) != 0;
            };
        }
    }

    /** Blinks by a count that it keeps to itself. */
    public static final class HiddenCounter extends Shaped {
        @Override
        public Shape shape(final Output output, final Layout layout) {
            return new Blink();
        }

        private static final class Blink implements Shape {
            private int hidden;

            @Override
            public boolean asks(final RunState run, final boolean isDemanded, final boolean mayAfterRun) {
                hidden++;
                return isDemanded && hidden % PATTERN != 0;
            }
        }
    }

    /** Counts and never looks at the count: no run shows it, its field does. */
    public static final class IdleCounter extends Shaped {
        @Override
        public Shape shape(final Output output, final Layout layout) {
            return new Idle();
        }

        private static final class Idle implements Shape {
            private long idle;

            @Override
            public boolean asks(final RunState run, final boolean isDemanded, final boolean mayAfterRun) {
                idle++;
                return isDemanded;
            }

            @Override
            public String toString() {
                return "idle " + idle;
            }
        }
    }

    /** Counts in an array behind a final field: no field shows it, a run does. */
    public static final class CounterInAnArray extends Shaped {
        @Override
        public Shape shape(final Output output, final Layout layout) {
            final int[] hidden = new int[1];
            return (run, isDemanded, mayAfterRun) -> isDemanded && ++hidden[0] % PATTERN != 0;
        }
    }

    /** Counts in what a lambda has captured. */
    public static final class CounterInALambda extends Shaped {
        @Override
        public Shape shape(final Output output, final Layout layout) {
            final AtomicLong hidden = new AtomicLong();
            return (run, isDemanded, mayAfterRun) -> isDemanded && hidden.incrementAndGet() % PATTERN != 0;
        }
    }

    /** Remembers in a list behind a final field of the kind itself. */
    public static final class ListKeeper extends SampleKind {
        private final List<String> notes = new ArrayList<>();

        @Override
        public String toString() {
            return "noted " + notes;
        }
    }

    /** Counts for all of its outputs and all runs together. */
    public static final class StaticCounter extends Shaped {
        private static long shared;

        @Override
        public Shape shape(final Output output, final Layout layout) {
            return (run, isDemanded, mayAfterRun) -> isDemanded && isLit();
        }

        private static boolean isLit() {
            shared++;
            return shared % PATTERN != 0;
        }
    }

    /** Breaks while a scan runs. */
    public static final class Breaking extends Shaped {
        @Override
        public Shape shape(final Output output, final Layout layout) {
            return (run, isDemanded, mayAfterRun) -> {
                if (isDemanded) {
                    throw new IllegalStateException("the sample broke");
                }
                return false;
            };
        }
    }

    /** Never asks for anything, so that trying it proves nothing. */
    public static final class Silent extends Shaped {
        @Override
        public Shape shape(final Output output, final Layout layout) {
            return (run, isDemanded, mayAfterRun) -> false;
        }
    }

    /** Written as no rig file is. */
    public static final class BadlyWorded extends SampleKind {
        @Override
        public String word() {
            return "Sample_Lamp";
        }

        @Override
        public List<Key> keys() {
            return List.of(
                    Key.duration("burnsFor", "how long it burns"),
                    Key.duration("waits", " "),
                    Key.duration("waits", "how long it waits"));
        }
    }
}
