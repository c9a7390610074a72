package slackwater.model;

import java.time.Duration;
import java.util.List;

/** What starts a cue: always rising edges of proven-active views. */
public sealed interface Start {
    /** The inputs that it listens to, in the order of the file. */
    List<String> inputs();

    /** One input. */
    record OnInput(String input) implements Start {
        @Override
        public List<String> inputs() {
            return List.of(input);
        }
    }

    /** All of them within a time, in any order. */
    record AllWithin(List<String> inputs, Duration within) implements Start {
        public AllWithin {
            inputs = List.copyOf(inputs);
        }
    }

    /** First one, then the other within a time: a direction of walking. */
    record InOrder(String first, String second, Duration within) implements Start {
        @Override
        public List<String> inputs() {
            return List.of(first, second);
        }
    }
}
