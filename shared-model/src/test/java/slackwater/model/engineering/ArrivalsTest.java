package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 5.5 (Poisson arrivals and a system of one place that loses; from memory). */
class ArrivalsTest {
    private static final double MINUTE_S = 60;
    private static final double HOUR_S = 3_600;
    private static final Arrivals TWENTY = Arrivals.perHour(20);
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("5.5.1", () -> TWENTY.chanceOf(0, 3 * MINUTE_S));
        COMPUTED.put("5.5.2", () -> TWENTY.chanceOfAtLeast(2, 3 * MINUTE_S));
        COMPUTED.put("5.5.3", () -> TWENTY.meanGapS() / MINUTE_S);
        COMPUTED.put("5.5.4", () -> TWENTY.chanceOfGapBelow(30));
        COMPUTED.put("5.5.5", () -> TWENTY.lostShare(25));
        COMPUTED.put("5.5.6", () -> TWENTY.answeredPerHour(25));
        COMPUTED.put("5.5.7", () -> TWENTY.deviation(HOUR_S));
    }

    private static Stream<CheckValue> cases() {
        return CheckValue.computed("5.5", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        final double computed = CheckWords.of(COMPUTED, value).getAsDouble();
        if (value.tolerance().equals("1e-6")) {
            // The handbook prints five digits, so that its own rounding is coarser than its tolerance: compared as
            // printed
            // here, and to 1e-6 below against the closed forms that its notes give.
            assertThat(String.format(Locale.ROOT, "%.5f", computed))
                    .as(value.toString())
                    .isEqualTo(value.expected());
            return;
        }
        value.agreesWith(computed);
    }

    /** Handbook 5.5 cases 1, 2 and 4, notes: exp(-1), 1 - 2/e, 1 - exp(-1/6). */
    @Test
    void theChancesAreTheClosedFormsToAMillionth() {
        assertThat(TWENTY.chanceOf(0, 3 * MINUTE_S)).isCloseTo(1 / Math.E, within(1e-6));
        assertThat(TWENTY.chanceOfAtLeast(2, 3 * MINUTE_S)).isCloseTo(1 - 2 / Math.E, within(1e-6));
        assertThat(TWENTY.chanceOfGapBelow(30)).isCloseTo(1 - StrictMath.exp(-1.0 / 6), within(1e-6));
    }

    @Test
    void theChancesOfAllNumbersAddUpToOne() {
        double sum = 0;
        for (int groups = 0; groups <= 40; groups++) {
            sum += TWENTY.chanceOf(groups, 0.3 * HOUR_S);
        }
        assertThat(sum).isCloseTo(1, within(1e-9));
        assertThat(TWENTY.chanceOfAtLeast(0, HOUR_S)).isEqualTo(1);
    }

    @Test
    void aPropThatIsNeverBusyLosesNobody() {
        assertThat(TWENTY.lostShare(0)).isZero();
        assertThat(TWENTY.answeredPerHour(0)).isCloseTo(20, within(1e-12));
    }

    @Test
    void theLongestBusyTimeLosesExactlyTheShareThatWasAllowed() {
        assertThat(TWENTY.lostShare(TWENTY.mostBusyS(0.1))).isCloseTo(0.1, within(1e-12));
        assertThat(TWENTY.mostBusyS(0.1)).isCloseTo(20, within(1e-9));
        assertThat(TWENTY.mostBusyS(0)).isZero();
    }

    @Test
    void figuresOutsideTheirRangeAreNamed() {
        assertThatThrownBy(() -> new Arrivals(0)).hasMessage("groupsPerS=0.0 is not above 0");
        assertThatThrownBy(() -> TWENTY.chanceOf(-1, 1)).hasMessage("groups=-1.0 is not 0 or more");
        assertThatThrownBy(() -> TWENTY.lostShare(-1)).hasMessage("withinS=-1.0 is not 0 or more");
        assertThatThrownBy(() -> TWENTY.mostBusyS(1)).hasMessage("lostShare=1.0 is not 0 or more and below 1");
        assertThatThrownBy(() -> TWENTY.mostBusyS(-0.1)).hasMessage("lostShare=-0.1 is not 0 or more and below 1");
    }
}
