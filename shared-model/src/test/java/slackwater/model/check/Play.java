package slackwater.model.check;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.model.Condition;
import slackwater.model.Cue;
import slackwater.model.Facts;
import slackwater.model.Start;
import slackwater.model.Step;

/** A cue for a test. */
final class Play {
    private final String name;
    private final Start start;
    private String zone = "north";
    private final List<Condition> provided = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();

    private Play(final String name, final Start start) {
        this.name = name;
        this.start = start;
    }

    static Play on(final String input) {
        return new Play("greet", new Start.OnInput(input));
    }

    static Play inOrder(final String first, final String second) {
        return new Play("greet", new Start.InOrder(first, second, Duration.ofSeconds(5)));
    }

    static Play allOf(final String... inputs) {
        return new Play("greet", new Start.AllWithin(List.of(inputs), Duration.ofSeconds(5)));
    }

    /** {@code name} or {@code not name}. */
    static Condition condition(final String text) {
        return text.startsWith("not ")
                ? new Condition(text.substring("not ".length()), false)
                : new Condition(text, true);
    }

    static Step.Energise wish(final String output, final long lastsMs) {
        return wish(output, lastsMs, 0);
    }

    static Step.Energise wish(final String output, final long lastsMs, final long varyMs) {
        return new Step.Energise(
                List.of(output),
                Optional.empty(),
                Duration.ofMillis(lastsMs),
                Duration.ofMillis(varyMs),
                Optional.empty());
    }

    static Step.Energise wishAt(final long atMs, final String output, final long lastsMs) {
        return new Step.Energise(
                List.of(output),
                Optional.of(Duration.ofMillis(atMs)),
                Duration.ofMillis(lastsMs),
                Duration.ZERO,
                Optional.empty());
    }

    static Step.Energise blink(final String output, final long lastsMs, final long blinkMs) {
        return new Step.Energise(
                List.of(output),
                Optional.empty(),
                Duration.ofMillis(lastsMs),
                Duration.ZERO,
                Optional.of(Duration.ofMillis(blinkMs)));
    }

    static Step pause(final long lastsMs, final long varyMs) {
        return new Step.Pause(Duration.ofMillis(lastsMs), Duration.ofMillis(varyMs));
    }

    static Step await(final String condition) {
        return new Step.Await(condition(condition), Duration.ofSeconds(6), false);
    }

    static Step awaitOrGoOn(final String condition) {
        return new Step.Await(condition(condition), Duration.ofSeconds(6), true);
    }

    Play zone(final String other) {
        zone = other;
        return this;
    }

    Play provided(final String... conditions) {
        for (final String condition : conditions) {
            provided.add(condition(condition));
        }
        return this;
    }

    Play steps(final Step... more) {
        steps.addAll(List.of(more));
        return this;
    }

    Cue made() {
        return new Cue(
                name, zone, 0, start, provided, Optional.empty(), Duration.ZERO, steps, Optional.empty(), Facts.NONE);
    }
}
