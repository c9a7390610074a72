package slackwater.model.check;

import java.util.Map;
import org.junit.jupiter.api.Test;
import slackwater.model.kind.Family;
import slackwater.model.quantity.Dimension;

/** Strobes and people (S14): WCAG 2.x success criterion 2.3.1 (handbook 4.1), venue figure of handbook 4.2 case 1. */
class FlashRulesTest {

    private static Out flashing(final double rateHz) {
        return Out.strobe("flash").fact("flash-rate", rateHz, Dimension.FREQUENCY);
    }

    private static Sketch counted(final Out strobe) {
        return Sketch.rig().with(strobe).flashLimit(3, Map.of(), "flash");
    }

    @Test
    void aStrobeSaysHowItFlashes() {
        counted(Out.strobe("flash")).finds(new StrobeFlashes(), """
                        ERROR flashes-undeclared at output.flash
                        "flash" does not say how it flashes
                        why: a bought strobe flashes by itself while it is powered, so its pulses are not its \
                        flashes (S14)
                        fix: add one-flash-per-pulse = true, or flash-rate with its own rate, such as "2 Hz"
                        """);
        counted(Out.strobe("flash").fact("one-flash-per-pulse", true)).isFineFor(new StrobeFlashes());
    }

    @Test
    void moreThanThreeASecondIsAFinding() {
        Sketch.rig().with(flashing(3.01)).flashLimit(4, Map.of(), "flash").finds(new StrobeFlashes(), """
                        WARNING flashes-fast at flash-limit.lightning/flashes
                        "lightning" allows 4 flashes in a second
                        why: WCAG 2.3.1 allows 3 general flashes in any second; a yard at night is all screen, so \
                        only the rate decides (handbook 4.1)
                        fix: write flashes = 3
                        WARNING flashes-fast at output.flash/flash-rate
                        "flash" flashes 3.01 times a second
                        why: WCAG 2.3.1 allows 3 general flashes in any second; a yard at night is all screen, so \
                        only the rate decides (handbook 4.1)
                        fix: set it to at most 3 a second
                        """);
        counted(flashing(3)).isFineFor(new StrobeFlashes());
    }

    @Test
    void moreThanFourASecondIsAnError() {
        Sketch.rig().with(flashing(4.01)).flashLimit(5, Map.of(), "flash").finds(new StrobeFlashes(), """
                        ERROR flashes-too-fast at flash-limit.lightning/flashes
                        "lightning" allows 5 flashes in a second
                        why: venues are held to 4 flashes a second (handbook 4.2, UK Health and Safety Executive), \
                        WCAG 2.3.1 to 3
                        fix: write flashes = 3
                        ERROR flashes-too-fast at output.flash/flash-rate
                        "flash" flashes 4.01 times a second
                        why: venues are held to 4 flashes a second (handbook 4.2, UK Health and Safety Executive), \
                        WCAG 2.3.1 to 3
                        fix: set it to at most 3 a second
                        """);
        Sketch.rig().with(flashing(4)).flashLimit(4, Map.of(), "flash").finds(new StrobeFlashes(), """
                        WARNING flashes-fast at flash-limit.lightning/flashes
                        "lightning" allows 4 flashes in a second
                        why: WCAG 2.3.1 allows 3 general flashes in any second; a yard at night is all screen, so \
                        only the rate decides (handbook 4.1)
                        fix: write flashes = 3
                        WARNING flashes-fast at output.flash/flash-rate
                        "flash" flashes 4 times a second
                        why: WCAG 2.3.1 allows 3 general flashes in any second; a yard at night is all screen, so \
                        only the rate decides (handbook 4.1)
                        fix: set it to at most 3 a second
                        """);
    }

    @Test
    void aStrobeThatFlashesByItselfKeepsItsLimitByItself() {
        Sketch.rig()
                .with(flashing(2))
                .flashLimit(3, Map.of("north", 1, "south", 2), "flash")
                .finds(new StrobeFlashes(), """
                        ERROR flashes-over-limit at output.flash/flash-rate
                        "flash" flashes 2 times a second, and "lightning" lets it flash 1
                        why: while it is powered nothing can hold its flashes back (S14)
                        fix: set the strobe to at most 1 a second
                        """);
        Sketch.rig()
                .with(flashing(1))
                .flashLimit(3, Map.of("north", 1, "south", 2), "flash")
                .isFineFor(new StrobeFlashes());
    }

    @Test
    void everyStrobeIsCounted() {
        Sketch.rig().with(flashing(1)).finds(new StrobeFlashes(), """
                        ERROR strobe-uncounted at output.flash
                        no flash limit counts "flash"
                        why: strobes that are seen together add up, and more than 3 flashes in a second can bring on \
                        a seizure (WCAG 2.3.1)
                        fix: add a [flash-limit.NAME] with outputs = ["flash"] and flashes = 3
                        """);
    }

    private static Sketch blinking(final long periodMs) {
        return Sketch.rig()
                .with(Out.lamp("glow"))
                .flashLimit(3, Map.of(), "glow")
                .with(Play.on("path").steps(Play.blink("glow", 5_000, periodMs)));
    }

    @Test
    void aLampBlinksNoFasterThanThreeASecond() {
        blinking(333).finds(new BlinkFlashes(), """
                        WARNING blinks-fast at cue.greet/steps[0].blink
                        "greet" blinks "glow" every 333 ms
                        why: WCAG 2.3.1 allows 3 general flashes in any second; a yard at night is all screen, so \
                        only the rate decides (handbook 4.1)
                        fix: make blink at least 340 ms
                        """);
        blinking(334).isFineFor(new BlinkFlashes());
    }

    @Test
    void aLampThatBlinksMoreThanFourASecondIsAnError() {
        blinking(249).finds(new BlinkFlashes(), """
                        ERROR blinks-too-fast at cue.greet/steps[0].blink
                        "greet" blinks "glow" every 249 ms
                        why: venues are held to 4 flashes a second (handbook 4.2, UK Health and Safety Executive), \
                        WCAG 2.3.1 to 3
                        fix: make blink at least 340 ms
                        """);
        blinking(250).finds(new BlinkFlashes(), """
                        WARNING blinks-fast at cue.greet/steps[0].blink
                        "greet" blinks "glow" every 250 ms
                        why: WCAG 2.3.1 allows 3 general flashes in any second; a yard at night is all screen, so \
                        only the rate decides (handbook 4.1)
                        fix: make blink at least 340 ms
                        """);
    }

    @Test
    void aLampThatBlinksOnceASecondIsCounted() {
        Sketch.rig()
                .with(Out.lamp("glow"))
                .with(Play.on("path").steps(Play.blink("glow", 5_000, 1_000)))
                .finds(new BlinkFlashes(), """
                        WARNING blink-uncounted at cue.greet/steps[0].blink
                        "greet" blinks "glow" every 1 s, and no flash limit counts it
                        why: lamps and strobes that are seen together add up (S14)
                        fix: name "glow" in a flash limit, or make blink longer than 1 s
                        """);
        Sketch.rig()
                .with(Out.lamp("glow"))
                .with(Play.on("path").steps(Play.blink("glow", 5_000, 1_001)))
                .isFineFor(new BlinkFlashes());
    }

    @Test
    void aSounderThatBlinksFlashesNot() {
        Sketch.rig()
                .with(Out.of(Family.SOUNDER, "horn"))
                .with(Play.on("path").steps(Play.blink("horn", 5_000, 100)))
                .isFineFor(new BlinkFlashes());
    }
}
