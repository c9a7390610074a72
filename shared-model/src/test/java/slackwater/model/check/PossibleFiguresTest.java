package slackwater.model.check;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import slackwater.model.kind.Family;
import slackwater.model.quantity.Dimension;

/** Figures that nothing real can have. */
class PossibleFiguresTest {
    private static final Rule RULE = new PossibleFigures();

    @Test
    void aBoreOfNothingIsRefused() {
        Sketch.rig().with(lid().fact("bore", 0.0, Dimension.LENGTH)).finds(RULE, """
                ERROR impossible-figure at output.lid/bore
                "lid" has 0 for "bore"
                why: nothing that size moves, flows or heats
                fix: write what its plate or a ruler says, or leave bore out
                """);
        Sketch.rig().with(lid().fact("bore", 0.001, Dimension.LENGTH)).isFineFor(RULE);
    }

    @Test
    void aRodAsThickAsItsBoreIsRefused() {
        Sketch.rig()
                .with(lid().fact("bore", 0.012, Dimension.LENGTH).fact("rod", 0.012, Dimension.LENGTH))
                .finds(RULE, """
                ERROR impossible-figure at output.lid/rod
                the rod of "lid" is not thinner than its bore
                why: no air could act on the rod side
                fix: write what its plate or a ruler says, or leave rod out
                """);
        Sketch.rig()
                .with(lid().fact("bore", 0.012, Dimension.LENGTH).fact("rod", 0.011, Dimension.LENGTH))
                .isFineFor(RULE);
    }

    @Test
    void aCriticalRatioOfOneIsRefused() {
        Sketch.rig().with(lid().fact("critical-ratio", 1.0, Dimension.RATIO)).finds(RULE, """
                ERROR impossible-figure at output.lid/critical-ratio
                "critical-ratio" of "lid" is not below 100 %
                why: air flows choked at any pressure then (handbook 1.3, ISO 6358: usually 20 to 50 %)
                fix: write what its plate or a ruler says, or leave critical-ratio out
                """);
        Sketch.rig().with(lid().fact("critical-ratio", 0.99, Dimension.RATIO)).isFineFor(RULE);
    }

    @Test
    void moreGlycolThanFluidIsRefused() {
        final Out pump = Out.of(Family.PUMP, "fog").fact("glycol", 1.01, Dimension.RATIO);
        Sketch.rig().with(pump).finds(RULE, """
                ERROR impossible-figure at output.fog/glycol
                "glycol" of "fog" is above 100 %
                why: it is a share of the fluid
                fix: write what its plate or a ruler says, or leave glycol out
                """);
        Sketch.rig()
                .with(Out.of(Family.PUMP, "fog").fact("glycol", 1.0, Dimension.RATIO))
                .isFineFor(RULE);
    }

    /** 50 kg * 897 J/(kg K) * 235 K = 10 540 kJ; 400 W for a minute give 24 kJ. */
    @Test
    void fourHundredWattsDoNotWarmFiftyKilogramsInAMinute() {
        Sketch.rig().with(heater(Duration.ofMinutes(1))).finds(RULE, """
                ERROR impossible-figure at output.heat/warms-in
                400 W cannot warm the block of "heat" in 1 min
                why: 50 kg of aluminium take 10540 kJ, the heater gives 24 kJ (specific heat from memory)
                fix: weigh the block, or measure how long it takes; at this power at least 26350 s
                """);
    }

    @Test
    void justEnoughTimeToWarmIsFine() {
        Sketch.rig().with(heater(Duration.ofSeconds(26_350))).isFineFor(RULE);
    }

    private static Out heater(final Duration warmsIn) {
        return Out.of(Family.HEATER, "heat")
                .fact("power", 400.0, Dimension.POWER)
                .fact("block", 50.0, Dimension.MASS)
                .fact("warms-in", warmsIn);
    }

    private static Out lid() {
        return Out.valve("lid");
    }
}
