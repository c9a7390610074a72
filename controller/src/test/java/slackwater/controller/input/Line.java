package slackwater.controller.input;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.pins.VirtualPins;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.model.Condition;
import slackwater.model.Facts;
import slackwater.model.Input;
import slackwater.model.Level;
import slackwater.model.Pull;
import slackwater.model.kind.BuiltInInput;

/** One input on one line, sampled whenever the test says so. */
final class Line {
    private static final long MS = 1_000_000L;

    final VirtualPins pins;
    final Image image;
    final RunState run;
    final InputStage stage;
    private final Places places;

    private Line(final Input input, final boolean isHigh) {
        final Layout layout = new Layout();
        places = new Places("porch", List.of(input), List.of(), List.of());
        stage = new InputStage(List.of(input), layout);
        run = layout.newRun();
        image = places.newImage();
        pins = new VirtualPins(new boolean[] {isHigh}, new boolean[0]);
    }

    /** Active high, low to begin with, sampled at 0. */
    static Line low(final Input.Proving proving) {
        return new Line(input(proving, Level.HIGH), false).at(0);
    }

    /** Active high, high to begin with, sampled at 0. */
    static Line high(final Input.Proving proving) {
        return new Line(input(proving, Level.HIGH), true).at(0);
    }

    /** Active low, high to begin with, sampled at 0. */
    static Line activeLow(final Input.Proving proving) {
        return new Line(input(proving, Level.LOW), true).at(0);
    }

    static Input.Proving proving(final long activeMs, final long inactiveMs) {
        return new Input.Proving(ms(activeMs), ms(inactiveMs), Duration.ZERO, Optional.empty());
    }

    static Input.Proving warmingUp(final long activeMs, final long inactiveMs, final long warmUpMs) {
        return new Input.Proving(ms(activeMs), ms(inactiveMs), ms(warmUpMs), Optional.empty());
    }

    static Input.Proving stuckAfter(final long stuckMs) {
        return new Input.Proving(ms(0), ms(0), ms(0), Optional.of(ms(stuckMs)));
    }

    private static Duration ms(final long ms) {
        return Duration.ofMillis(ms);
    }

    private static Input input(final Input.Proving proving, final Level active) {
        return new Input(
                "path",
                BuiltInInput.MOTION,
                Optional.empty(),
                List.of("porch"),
                Map.of(),
                active,
                Pull.DOWN,
                proving,
                Input.Use.SENSE,
                List.of(),
                Input.Sees.NOTHING,
                Facts.NONE);
    }

    /** Samples at a moment. */
    Line at(final long ms) {
        return atNs(ms * MS);
    }

    Line atNs(final long atNs) {
        run.begin(atNs);
        image.begin();
        stage.update(run, pins, image);
        return this;
    }

    /** Sets the level and samples. */
    Line levelAt(final boolean isHigh, final long ms) {
        pins.set(0, isHigh);
        return at(ms);
    }

    boolean isProvenActive() {
        return image.provenActive[0];
    }

    boolean isProvenInactive() {
        return image.provenInactive[0];
    }

    boolean rose() {
        return image.rose[0];
    }

    boolean fell() {
        return image.fell[0];
    }

    /** Whether a rule that wants it so would be content. */
    boolean satisfies(final boolean isActive) {
        return places.conditions(List.of(new Condition("path", isActive))).areProven(image);
    }
}
