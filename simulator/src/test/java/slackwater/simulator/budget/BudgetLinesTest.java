package slackwater.simulator.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slackwater.simulator.budget.Yards.RIG;
import static slackwater.simulator.budget.Yards.SHOW;
import static slackwater.simulator.budget.Yards.asks;
import static slackwater.simulator.budget.Yards.has;
import static slackwater.simulator.budget.Yards.line;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every part of a budget but air, each figure reckoned by hand or from the handbook's case that is named. */
class BudgetLinesTest {
    private static final String SHED = """
            [circuit.shed]
            voltage = "120 V"
            breaker = "16 A"
            [supply.twelve]
            voltage = "12 V"
            gives = "2 A"
            fed-by = "shed"
            efficiency = "80 %"
            """;

    @TempDir
    private Path folder;

    /** 804.25 mm2 x 4 bar = 321.7 N; spring and seals take a tenth of it each. */
    @Test
    void aCylinderPushesAgainstItsSpringAndItsSeals() {
        final Line line = line(budget(RIG), "lid: force to move it");
        assertThat(has(line)).isCloseTo(321.7, within(0.1));
        assertThat(asks(line)).isCloseTo(64.34, within(0.05));
        assertThat(line.verdict()).isEqualTo(Verdict.FITS);
    }

    @Test
    void aStatedStrokeIsSetByItsThrottleAndOneThatIsTooWeakIsShort() {
        final Line set = line(budget(RIG), "lid: stroke takes");
        assertThat(asks(set)).isCloseTo(0.4, within(0.004));
        assertThat(set.verdict()).isEqualTo(Verdict.FITS);
        // 60 kg weigh 588 N
        final Budget heavy = budget(RIG.replace("moving-mass = \"3 kg\"", "moving-mass = \"60 kg\"\nlifts = true"));
        assertThat(line(heavy, "lid: stroke takes").verdict()).isEqualTo(Verdict.SHORT);
        assertThat(line(heavy, "lid: force to move it").verdict()).isEqualTo(Verdict.SHORT);
    }

    /** The trade's corner case: 3 kg x 9.80665 x 0.30 m = 8.826 J, and 1.35 kg land with 3.97 J of the 4 J. */
    @Test
    void aLidThatFallsFreelyIsJudgedByItsHeight() {
        final String free = RIG.replace("bore = \"32 mm\"\n", "").replace("strokes-in = \"0.4 s\"\n", "");
        final Line lid = line(budget(free), "lid: falls with at most");
        assertThat(asks(lid)).isCloseTo(8.826, within(0.001));
        assertThat(lid.verdict()).isEqualTo(Verdict.LOOK);
        assertThat(line(budget(free.replace("\"3 kg\"", "\"1.35 kg\"")), "lid: falls with at most")
                        .verdict())
                .isEqualTo(Verdict.FITS);
    }

    /** The same stroke at 4 bar with 32 mm and at 2.5 bar with 25 mm: 321.7 N against 122.7 N. */
    @Test
    void aSmallerBoreAtALowerPressurePushesLess() {
        final String small =
                RIG.replace("\"32 mm\"", "\"25 mm\"").replace("working = \"4 bar\"", "working = \"2.5 bar\"");
        assertThat(has(line(budget(small), "lid: force to move it"))).isCloseTo(122.7, within(0.1));
    }

    /** Handbook 3.1: 16 A carry 12.8 A for hours. */
    @Test
    void aCircuitCarriesEightyPerCentForHours() {
        final String heater = SHED + """
                [output.heat]
                kind = "heater"
                cut-out = "its own"
                unguarded = "a test"
                fed-by = "shed"
                current = "12.8 A"
                """;
        final String about = "shed, continuous load at 125 % and the rest";
        final Line full = line(budget(RIG + heater), about);
        assertThat(asks(full)).isCloseTo(16, within(1e-9));
        assertThat(full.verdict()).isEqualTo(Verdict.FITS);
        final Line over = line(budget(RIG + heater.replace("12.8", "12.9")), about);
        assertThat(over.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(over.advice().orElseThrow()).contains("a circuit of 20 A");
    }

    /** Handbook 3.3 case 15: 12 V, 1 A, 20 m of AWG 18 lose 6.98 %. */
    @Test
    void aLongThinCableLosesTooMuch() {
        final Line line = line(budget(RIG + SHED + lamp("1 A", "20 m of 18 AWG")), "voltage lost on the way to glow");
        assertThat(asks(line)).isCloseTo(6.98, within(0.01));
        assertThat(line.verdict()).isEqualTo(Verdict.LOOK);
        // 3 % of 12 V allow 8.59 m
        assertThat(line.advice().orElseThrow()).contains("no more than 8.59 m");
        assertThat(line(budget(RIG + SHED + lamp("1 A", "8.5 m of 18 AWG")), "voltage lost on the way to glow")
                        .verdict())
                .isEqualTo(Verdict.FITS);
    }

    /** Handbook 3.4 case 10: a contact of 10 A switches filament lamps of 1 A. */
    @Test
    void aFilamentLampNeedsTenTimesItsCurrent() {
        final String relay = "switch = { kind = \"relay\", rated = \"10 A\", pin-current = \"8 mA\" }\n";
        final Line fits = line(budget(RIG + SHED + lamp("1 A", "2 m of 18 AWG") + relay), "switch of glow");
        assertThat(has(fits)).isEqualTo(1);
        assertThat(fits.verdict()).isEqualTo(Verdict.FITS);
        assertThat(line(budget(RIG + SHED + lamp("1.01 A", "2 m of 18 AWG") + relay), "switch of glow")
                        .verdict())
                .isEqualTo(Verdict.SHORT);
    }

    @Test
    void aPinGivesNoMoreThanItsPadStands() {
        final String at = "switch = { kind = \"relay\", rated = \"10 A\", pin-current = \"8 mA\" }\n";
        assertThat(line(budget(RIG + SHED + lamp("1 A", "2 m of 18 AWG") + at), "pin of glow")
                        .verdict())
                .isEqualTo(Verdict.FITS);
        assertThat(line(budget(RIG + SHED + lamp("1 A", "2 m of 18 AWG") + at.replace("8 mA", "8.1 mA")), "pin of glow")
                        .verdict())
                .isEqualTo(Verdict.SHORT);
    }

    @Test
    void aSupplyThatGivesLessThanItsLoadsIsShort() {
        final String about = "twelve, all that may be on at once";
        assertThat(line(budget(RIG + SHED + lamp("2 A", "2 m of 18 AWG")), about)
                        .verdict())
                .isEqualTo(Verdict.FITS);
        final Line over = line(budget(RIG + SHED + lamp("2.1 A", "2 m of 18 AWG")), about);
        assertThat(over.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(over.advice().orElseThrow()).startsWith("a supply of 2.52 A");
    }

    @Test
    void aStrobeThatFlashesByItselfIsHeldToThreeASecond() {
        final String strobe = """
                [output.flash]
                kind = "strobe"
                longest-on = "1 s"
                unguarded = "a test"
                flash-rate = "3 Hz"
                """;
        assertThat(line(budget(RIG + strobe), "flash by itself, in a second").verdict())
                .isEqualTo(Verdict.FITS);
        assertThat(line(budget(RIG + strobe.replace("3 Hz", "3.1 Hz")), "flash by itself, in a second")
                        .verdict())
                .isEqualTo(Verdict.SHORT);
    }

    /** Seen from 5 - 2 tan 30 = 3.845 m on, the prop at 10 m; 0.5 s in the cue, 20 ms valve, 0.4 s stroke, 10 ms scan. */
    @Test
    void theVisitorIsWhereTheyHaveWalkedByTheReveal() {
        final Budget budget = budget(RIG);
        final double provesS = asks(line(budget, "greet: from the sensor to lid at its end")) - 0.93;
        assertThat(provesS).isBetween(0.0, 0.2);
        final Line ahead = line(budget, "greet: how far ahead of lid its sensor looks");
        assertThat(has(ahead)).isCloseTo(6.155, within(0.03));
        assertThat(asks(ahead)).isCloseTo(1.434 * (0.93 + provesS), within(0.001));
        assertThat(asks(line(budget, "greet: the visitor by then, short of the prop")))
                .isCloseTo(10 - 3.845 - 1.434 * (0.93 + provesS), within(0.03));
        final String slow = SHOW.replace("at = \"0.5 s\"", "at = \"4 s\"");
        final Line late = line(Yards.budget(folder, RIG, slow), "greet: how far ahead of lid its sensor looks");
        assertThat(late.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(late.advice().orElseThrow()).startsWith("move the sensor ");
    }

    /** Handbook 2.5 cases 11 and 14: one disc cools with 238 W, ten of them put 20.6 g into each m3 of 170 m3/h. */
    @Test
    void mistIsAsThickAndAsColdAsItsDiscsMakeIt() {
        final String mist = """
                [output.mist]
                kind = "mister"
                longest-on = "30 s"
                unguarded = "a test"
                discs = 1
                air = "170 m3/h"
                """;
        assertThat(asks(line(budget(RIG + mist), "cooling by mist if all of it evaporates")))
                .isCloseTo(238, within(1.0));
        assertThat(asks(line(
                        budget(RIG + mist.replace("discs = 1", "discs = 10")),
                        "droplets in the air that carries mist away")))
                .isCloseTo(20.6, within(0.2));
    }

    /** Handbook 2.5 cases 12 and 13: 100 cfm from 20 to 5 degC melt 9.24 kg of ice an hour; dry air, so that nothing condenses. */
    @Test
    void chillingTakesSoMuchIce() {
        final String fog = """
                [weather]
                temperature = "20 degC"
                humidity = "1 %"
                wind = "0.4 m/s"
                [output.fog]
                kind = "pump"
                longest-on = "5 s"
                unguarded = "a test"
                flow = "12 g/min"
                holds = "250 ml"
                chilled-by = "ice"
                chilled-to = "5 degC"
                air = "100 cfm"
                """;
        final Budget budget = budget(RIG + fog);
        assertThat(asks(line(budget, "ice that fog takes while its chiller runs")))
                .isCloseTo(9.24, within(0.1));
        // sqrt(9.80665 x 0.4 x 0.0539) = 0.46 m/s
        final Line speed = line(budget, "speed of the layer that fog makes");
        assertThat(has(speed)).isCloseTo(0.46, within(0.005));
        assertThat(speed.verdict()).isEqualTo(Verdict.FITS);
        assertThat(line(budget(RIG + fog.replace("0.4 m/s", "0.5 m/s")), "speed of the layer that fog makes")
                        .verdict())
                .isEqualTo(Verdict.LOOK);
    }

    /** 250 ml at 12 g/min, 5 s every 40 s: 450 s an hour; a heater of 700 W makes 18 g/min of it without loss (2.2 case 5). */
    @Test
    void aFogMakerThatKeepsUpFitsAndOneThatIsTooSmallDoesNot() {
        final String fog = """
                [output.heat]
                kind = "heater"
                cut-out = "its own"
                unguarded = "a test"
                power = "400 W"
                warms-in = "3 min"
                [output.fog]
                kind = "pump"
                longest-on = "5 s"
                unguarded = "a test"
                flow = "12 g/min"
                holds = "250 ml"
                heated-by = "heat"
                """;
        final String show = """
                [cue.puff]
                starts = "path"
                hold-off = "40 s"
                steps = [ { energise = "fog", for = "5 s" } ]
                """;
        final String about = "pumping without a pause between greetings, seconds an hour";
        final Line line = line(Yards.budget(folder, RIG + fog, show), about);
        assertThat(asks(line)).isCloseTo(450, within(1e-6));
        assertThat(line.verdict()).isEqualTo(Verdict.FITS);
        final String greedy = fog.replace("12 g/min", "120 g/min");
        assertThat(line(Yards.budget(folder, RIG + greedy, show), about).verdict())
                .isEqualTo(Verdict.SHORT);
    }

    /** Handbook 5.5 case 6 turned to this rig: 60 groups an hour, again after 20 s: 45 are greeted. */
    @Test
    void anEveningGreetsWhatALossSystemServes() {
        assertThat(has(line(budget(RIG), "groups that greet can greet, of those who come")))
                .isCloseTo(45, within(1e-6));
    }

    @Test
    void whatNobodySaidIsMarkedAsAssumed() {
        final Line line = line(budget(RIG), "lid: force to move it");
        assertThat(line.assumed())
                .contains("seals take 10 % of the theoretical force (common practice, handbook 1.9); friction says it");
        final Line told = line(budget(RIG + "friction = \"20 N\"\nflow = \"300 l/min\"\n"), "lid: force to move it");
        assertThat(told.assumed()).isEmpty();
    }

    private static String lamp(final String current, final String cable) {
        return """
                [output.glow]
                kind = "lamp"
                unguarded = "a test"
                fed-by = "twelve"
                current = "%s"
                cable = "%s"
                """.formatted(current, cable);
    }

    private Budget budget(final String rig) {
        return Yards.budget(folder, rig, SHOW);
    }
}
