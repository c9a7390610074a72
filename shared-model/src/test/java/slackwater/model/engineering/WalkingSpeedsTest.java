package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 5.4, from the papers that stand beside each value. */
class WalkingSpeedsTest {
    private static final Map<String, Double> MEAN_M_PER_S = new LinkedHashMap<>();
    private static final Map<String, Double> DEVIATION_M_PER_S = new LinkedHashMap<>();

    static {
        MEAN_M_PER_S.put("5.4.1", WalkingSpeeds.ADULT_FASTEST_MEAN_M_PER_S);
        MEAN_M_PER_S.put("5.4.2", WalkingSpeeds.ADULT_SLOWEST_MEAN_M_PER_S);
        MEAN_M_PER_S.put("5.4.3", WalkingSpeeds.OVER_65_MEAN_M_PER_S);
        MEAN_M_PER_S.put("5.4.4", WalkingSpeeds.OVER_65_15TH_M_PER_S);
        MEAN_M_PER_S.put("5.4.5", WalkingSpeeds.YOUNGER_15TH_M_PER_S);
        MEAN_M_PER_S.put("5.4.6", WalkingSpeeds.OLDER_15TH_M_PER_S);
        MEAN_M_PER_S.put("5.4.7", WalkingSpeeds.SIGNAL_DESIGN_M_PER_S);
        MEAN_M_PER_S.put("5.4.8", WalkingSpeeds.AGED_7_MEAN_M_PER_S);
        MEAN_M_PER_S.put("5.4.9", WalkingSpeeds.AGED_8_MEAN_M_PER_S);
        MEAN_M_PER_S.put("5.4.10", WalkingSpeeds.AGED_11_MEAN_M_PER_S);
        MEAN_M_PER_S.put("5.4.11", WalkingSpeeds.KINDERGARTEN_LINE_M_PER_S);
        MEAN_M_PER_S.put("5.4.12", WalkingSpeeds.SIXTH_GRADE_LINE_M_PER_S);
        DEVIATION_M_PER_S.put("5.4.8", WalkingSpeeds.AGED_7_DEVIATION_M_PER_S);
        DEVIATION_M_PER_S.put("5.4.9", WalkingSpeeds.AGED_8_DEVIATION_M_PER_S);
        DEVIATION_M_PER_S.put("5.4.10", WalkingSpeeds.AGED_11_DEVIATION_M_PER_S);
    }

    private static Stream<CheckValue> cases() {
        return CheckWords.of("5.4", MEAN_M_PER_S.keySet());
    }

    /** They are copied, not computed, and so to the digit: narrower than the handbook's tolerances. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theSpeedIsThePublishedOne(final CheckValue value) {
        assertThat(CheckWords.of(MEAN_M_PER_S, value)).as(value.toString()).isEqualTo(value.number());
        if (value.tolerance().startsWith("sd ")) {
            assertThat("sd " + CheckWords.of(DEVIATION_M_PER_S, value))
                    .as(value.toString())
                    .isEqualTo(value.tolerance());
        }
    }

    /** A foot is 0.3048 m exactly; the handbook's figures in feet agree with those in metres to 0.005 m/s. */
    @ParameterizedTest
    @CsvSource({
        "5.4.3, 3.81, 1",
        "5.4.4, 3.02, 1",
        "5.4.5, 3.77, 1",
        "5.4.6, 3.03, 1",
        "5.4.7, 4.0, 1",
        "5.4.11, 50, 13.5",
        "5.4.12, 50, 10.6"
    })
    void feetAndMetresAgree(final String id, final double feet, final double seconds) {
        final CheckValue value = CheckWords.of("5.4", MEAN_M_PER_S.keySet())
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();

        assertThat(Math.abs(feet * 0.3048 / seconds - CheckWords.of(MEAN_M_PER_S, value)))
                .isLessThan(value.allowed());
    }
}
