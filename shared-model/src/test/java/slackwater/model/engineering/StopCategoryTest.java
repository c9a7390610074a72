package slackwater.model.engineering;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slackwater.model.engineering.StopCategory.PowerOff;

/**
 * Handbook 6.5 cases 1 to 4 (IEC 60204-1 from memory; ISO 13850). Case 5, that a reset starts nothing, is a matter of the
 * controller's modes, and tested there.
 */
class StopCategoryTest {
    private static final Map<PowerOff, String> WORDS = Map.of(
            PowerOff.AT_ONCE, "immediate removal of power to the actuators (uncontrolled stop)",
            PowerOff.WHEN_STOPPED, "controlled stop with power available, power removed when stopped",
            PowerOff.NEVER, "controlled stop, power stays on");
    private static final Map<String, Supplier<String>> SAID = new LinkedHashMap<>();

    static {
        SAID.put("6.5.1", () -> WORDS.get(StopCategory.CATEGORY_0.powerOff()));
        SAID.put("6.5.2", () -> WORDS.get(StopCategory.CATEGORY_1.powerOff()));
        SAID.put("6.5.3", () -> WORDS.get(StopCategory.CATEGORY_2.powerOff()));
        SAID.put(
                "6.5.4",
                () -> Arrays.stream(StopCategory.values())
                        .filter(StopCategory::isForEmergencies)
                        .map(category -> category.name().substring("CATEGORY_".length()))
                        .collect(Collectors.joining(" or ")));
    }

    private static Stream<CheckValue> cases() {
        return CheckWords.of("6.5", SAID.keySet());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theCategoriesAreTheHandbooks(final CheckValue value) {
        CheckWords.agrees(value, CheckWords.of(SAID, value));
    }
}
