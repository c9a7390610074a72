package slackwater.model.engineering;

import static slackwater.model.engineering.CheckWords.plain;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 5.1 (pages on an HC-SR501 module). */
class UsualMotionSensorTest {
    private static final Map<String, Supplier<String>> SAID = new LinkedHashMap<>();

    static {
        SAID.put(
                "5.1.1",
                () -> plain(UsualMotionSensor.PULSE_LEAST_S) + ".." + plain(UsualMotionSensor.PULSE_MOST_S) + " s");
        SAID.put("5.1.2", () -> plain(UsualMotionSensor.BLOCK_S) + " s nominal, about 3 s in another manual");
        SAID.put("5.1.3", () -> "up to " + plain(UsualMotionSensor.RANGE_M) + " m");
        SAID.put(
                "5.1.4",
                () -> plain(UsualMotionSensor.ANGLE_LEAST_DEG) + ".." + plain(UsualMotionSensor.ANGLE_MOST_DEG)
                        + " deg");
        SAID.put("5.1.5", () -> "about " + plain(UsualMotionSensor.WARM_UP_S) + " s");
        SAID.put("5.1.6", () -> plain(UsualMotionSensor.HIGH_V) + " V high, 0 V low");
        SAID.put(
                "5.1.7",
                () -> plain(UsualMotionSensor.SUPPLY_LEAST_V) + ".." + plain(UsualMotionSensor.SUPPLY_MOST_V)
                        + " V DC");
    }

    private static Stream<CheckValue> cases() {
        return CheckWords.of("5.1", SAID.keySet());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFiguresAreTheHandbooks(final CheckValue value) {
        CheckWords.agrees(value, CheckWords.of(SAID, value));
    }
}
