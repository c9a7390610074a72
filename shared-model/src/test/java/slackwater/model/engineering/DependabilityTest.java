package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slackwater.model.engineering.Dependability.Endurance;
import slackwater.model.engineering.Dependability.Level;
import slackwater.model.engineering.Dependability.Part;

/** Handbook 6.6 (ISO 13849-1 in its editions of 2006 and 2015; B10d of Table C.1 from memory). */
class DependabilityTest {
    private static final double FACTORY_PER_YEAR = Dependability.operationsPerYear(220, 16, 5);
    private static final double YARD_PER_YEAR = Dependability.operationsPerYear(30, 5, 120);
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();
    private static final Map<String, Level> LEVELS = new LinkedHashMap<>();

    static {
        COMPUTED.put("6.6.8", () -> FACTORY_PER_YEAR);
        COMPUTED.put("6.6.9", () -> Dependability.t10dYears(60e6, FACTORY_PER_YEAR));
        COMPUTED.put("6.6.10", () -> Dependability.mttfdYears(60e6, FACTORY_PER_YEAR));
        COMPUTED.put("6.6.11", () -> YARD_PER_YEAR);
        COMPUTED.put("6.6.12", () -> Dependability.mttfdYears(Dependability.PNEUMATIC_B10D, YARD_PER_YEAR));
        COMPUTED.put("6.6.13", () -> Dependability.mttfdYears(Dependability.STOP_BUTTON_B10D, 60));
        COMPUTED.put("6.6.14", () -> Dependability.channelYears(List.of(new Part(50, 0), new Part(100, 0))));
        COMPUTED.put("6.6.15", () -> Dependability.symmetrisedYears(3, 100));
        COMPUTED.put("6.6.16", () -> Dependability.singleChannelPerHour(30));
        COMPUTED.put("6.6.17", () -> Dependability.singleChannelPerHour(100));
        COMPUTED.put("6.6.18", DependabilityTest::averagePercent);
        COMPUTED.put("6.6.19", () -> Dependability.COMMON_CAUSE_POINTS);
        LEVELS.put("6.6.1", Level.A);
        LEVELS.put("6.6.2", Level.B);
        LEVELS.put("6.6.3", Level.C);
        LEVELS.put("6.6.4", Level.D);
        LEVELS.put("6.6.5", Level.E);
    }

    private static double averagePercent() {
        return 100 * Dependability.averageCoverage(List.of(new Part(50, 0.99), new Part(100, 0.60)));
    }

    private static Stream<CheckValue> cases() {
        return CheckValue.computed("6.6", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(CheckWords.of(COMPUTED, value).getAsDouble());
    }

    private static Stream<CheckValue> levels() {
        return CheckWords.of("6.6", LEVELS.keySet());
    }

    /** The text reads "3e-6 <= PFHd < 1e-5". */
    @ParameterizedTest(name = "{0}")
    @MethodSource("levels")
    void aRangeHoldsItsLowerEndAndNotItsUpperOne(final CheckValue value) {
        final String[] ends = value.expected().split(" <= PFHd < ", -1);
        final double from = Double.parseDouble(ends[0]);
        final double below = Double.parseDouble(ends[1]);
        final Level level = CheckWords.of(LEVELS, value);

        assertThat(level.fromPerHour()).isEqualTo(from);
        assertThat(level.belowPerHour()).isEqualTo(below);
        assertThat(Dependability.levelOf(from)).contains(level);
        assertThat(Dependability.levelOf(Math.nextDown(from))).isNotEqualTo(Dependability.levelOf(from));
        assertThat(Dependability.levelOf(Math.nextDown(below))).contains(level);
        assertThat(Dependability.levelOf(below)).isNotEqualTo(Dependability.levelOf(from));
    }

    @Test
    void failuresOutsideAllRangesHaveNoLevel() {
        assertThat(Dependability.levelOf(1e-4)).isEmpty();
        assertThat(Dependability.levelOf(9.9e-9)).isEmpty();
        assertThat(Dependability.levelOf(0)).isEmpty();
    }

    /** The notes of cases 16 and 17. */
    @Test
    void aSingleChannelOfThirtyYearsIsInRangeBAndOneOfAHundredInRangeC() {
        assertThat(Dependability.levelOf(Dependability.singleChannelPerHour(30)))
                .contains(Level.B);
        assertThat(Dependability.levelOf(Dependability.singleChannelPerHour(100)))
                .contains(Level.C);
    }

    private static CheckValue only(final String id) {
        return CheckValue.section("6.6").stream()
                .filter(value -> value.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Stream<CheckValue> enduranceCase() {
        return Stream.of(only("6.6.7"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("enduranceCase")
    void theNamesOfTheMeanTimesBeginWhereTheHandbookSays(final CheckValue value) {
        CheckWords.agrees(
                value,
                () -> years(Endurance.LOW) + "..<" + years(Endurance.MEDIUM) + ", " + years(Endurance.MEDIUM) + "..<"
                        + years(Endurance.HIGH) + ", " + years(Endurance.HIGH) + ".."
                        + CheckWords.plain(Dependability.CHANNEL_CAP_YEARS));
        assertThat(Dependability.enduranceOf(2.99)).isEmpty();
        assertThat(Dependability.enduranceOf(3)).contains(Endurance.LOW);
        assertThat(Dependability.enduranceOf(9.99)).contains(Endurance.LOW);
        assertThat(Dependability.enduranceOf(10)).contains(Endurance.MEDIUM);
        assertThat(Dependability.enduranceOf(29.99)).contains(Endurance.MEDIUM);
        assertThat(Dependability.enduranceOf(30)).contains(Endurance.HIGH);
        assertThat(Dependability.enduranceOf(100)).contains(Endurance.HIGH);
    }

    private static String years(final Endurance endurance) {
        return CheckWords.plain(endurance.fromYears());
    }

    private static Stream<CheckValue> coverageCase() {
        return Stream.of(only("6.6.6"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("coverageCase")
    void theNamesOfTheCoverageBeginWhereTheHandbookSays(final CheckValue value) {
        CheckWords.agrees(
                value,
                () -> "<" + percent(DiagnosticCoverage.LOW) + ", " + percent(DiagnosticCoverage.LOW) + "..<"
                        + percent(DiagnosticCoverage.MEDIUM) + ", " + percent(DiagnosticCoverage.MEDIUM) + "..<"
                        + percent(DiagnosticCoverage.HIGH) + ", >=" + percent(DiagnosticCoverage.HIGH));
        assertThat(DiagnosticCoverage.of(0)).isEqualTo(DiagnosticCoverage.NONE);
        assertThat(DiagnosticCoverage.of(0.5999)).isEqualTo(DiagnosticCoverage.NONE);
        assertThat(DiagnosticCoverage.of(0.60)).isEqualTo(DiagnosticCoverage.LOW);
        assertThat(DiagnosticCoverage.of(0.8999)).isEqualTo(DiagnosticCoverage.LOW);
        assertThat(DiagnosticCoverage.of(0.90)).isEqualTo(DiagnosticCoverage.MEDIUM);
        assertThat(DiagnosticCoverage.of(0.9899)).isEqualTo(DiagnosticCoverage.MEDIUM);
        assertThat(DiagnosticCoverage.of(0.99)).isEqualTo(DiagnosticCoverage.HIGH);
    }

    private static String percent(final DiagnosticCoverage coverage) {
        return CheckWords.plain(100 * coverage.fromShare());
    }

    /** The note of case 12: 100 years a channel, 2500 in category 4. */
    @Test
    void aChannelIsGivenAHundredYearsAtMost() {
        assertThat(Dependability.cappedYears(44_444)).isEqualTo(100);
        assertThat(Dependability.cappedYears(99.9)).isEqualTo(99.9);
        assertThat(Dependability.CATEGORY_4_CAP_YEARS).isEqualTo(2_500);
    }

    @Test
    void twoEqualChannelsAreAsGoodAsEach() {
        assertThat(Dependability.symmetrisedYears(40, 40)).isEqualTo(40);
    }

    @Test
    void figuresOutsideTheirRangeAreNamed() {
        assertThatThrownBy(() -> Dependability.operationsPerYear(367, 16, 5))
                .hasMessage("daysPerYear=367.0 is not within 0.0 to 366.0");
        assertThatThrownBy(() -> Dependability.operationsPerYear(0, 16, 5))
                .hasMessage("daysPerYear=0.0 is not above 0");
        assertThatThrownBy(() -> Dependability.operationsPerYear(220, 24.1, 5))
                .hasMessage("hoursPerDay=24.1 is not within 0.0 to 24.0");
        assertThatThrownBy(() -> Dependability.operationsPerYear(220, 16, 0)).hasMessage("cycleS=0.0 is not above 0");
        assertThatThrownBy(() -> Dependability.t10dYears(0, 1)).hasMessage("b10d=0.0 is not above 0");
        assertThatThrownBy(() -> Dependability.channelYears(List.of()))
                .hasMessage("a channel without parts has no mean time to a failure");
        assertThatThrownBy(() -> new Part(50, 1.01)).hasMessage("coverage=1.01 is not within 0.0 to 1.0");
        assertThatThrownBy(() -> new Part(0, 0.5)).hasMessage("mttfdYears=0.0 is not above 0");
        assertThatThrownBy(() -> Dependability.symmetrisedYears(3, -1)).hasMessage("otherYears=-1.0 is not above 0");
        assertThatThrownBy(() -> Dependability.levelOf(Double.NaN)).hasMessage("failuresPerHour=NaN is not 0 or more");
        assertThatThrownBy(() -> DiagnosticCoverage.of(1.01)).hasMessage("share=1.01 is not within 0.0 to 1.0");
    }
}
