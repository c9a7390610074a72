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
        counted(Out.strobe("flash")).finds(new StrobeFlashes(), "@101");
        counted(Out.strobe("flash").fact("one-flash-per-pulse", true)).isFineFor(new StrobeFlashes());
    }

    @Test
    void moreThanThreeASecondIsAFinding() {
        Sketch.rig().with(flashing(3.01)).flashLimit(4, Map.of(), "flash").finds(new StrobeFlashes(), "@102");
        counted(flashing(3)).isFineFor(new StrobeFlashes());
    }

    @Test
    void moreThanFourASecondIsAnError() {
        Sketch.rig().with(flashing(4.01)).flashLimit(5, Map.of(), "flash").finds(new StrobeFlashes(), "@103");
        Sketch.rig().with(flashing(4)).flashLimit(4, Map.of(), "flash").finds(new StrobeFlashes(), "@104");
    }

    @Test
    void aStrobeThatFlashesByItselfKeepsItsLimitByItself() {
        Sketch.rig()
                .with(flashing(2))
                .flashLimit(3, Map.of("north", 1, "south", 2), "flash")
                .finds(new StrobeFlashes(), "@105");
        Sketch.rig()
                .with(flashing(1))
                .flashLimit(3, Map.of("north", 1, "south", 2), "flash")
                .isFineFor(new StrobeFlashes());
    }

    @Test
    void everyStrobeIsCounted() {
        Sketch.rig().with(flashing(1)).finds(new StrobeFlashes(), "@106");
    }

    private static Sketch blinking(final long periodMs) {
        return Sketch.rig()
                .with(Out.lamp("glow"))
                .flashLimit(3, Map.of(), "glow")
                .with(Play.on("path").steps(Play.blink("glow", 5_000, periodMs)));
    }

    @Test
    void aLampBlinksNoFasterThanThreeASecond() {
        blinking(333).finds(new BlinkFlashes(), "@107");
        blinking(334).isFineFor(new BlinkFlashes());
    }

    @Test
    void aLampThatBlinksMoreThanFourASecondIsAnError() {
        blinking(249).finds(new BlinkFlashes(), "@108");
        blinking(250).finds(new BlinkFlashes(), "@109");
    }

    @Test
    void aLampThatBlinksOnceASecondIsCounted() {
        Sketch.rig()
                .with(Out.lamp("glow"))
                .with(Play.on("path").steps(Play.blink("glow", 5_000, 1_000)))
                .finds(new BlinkFlashes(), "@110");
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
