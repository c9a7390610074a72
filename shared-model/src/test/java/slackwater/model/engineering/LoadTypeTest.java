package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 3.4 (a relay module's manual, and a relay maker's page on load types). */
class LoadTypeTest {
    private static final Map<String, Supplier<String>> TEXTS = new LinkedHashMap<>();

    static {
        TEXTS.put("3.4.1", () -> CheckText.number(LoadType.RESISTIVE.highestInrushA(1)));
        TEXTS.put("3.4.2", () -> CheckText.range(LoadType.SOLENOID.inrushMultiple()));
        TEXTS.put("3.4.3", () -> CheckText.range(LoadType.MOTOR.inrushMultiple()));
        TEXTS.put("3.4.4", () -> CheckText.range(LoadType.FILAMENT_LAMP.inrushMultiple()));
        TEXTS.put("3.4.5", () -> CheckText.range(LoadType.SODIUM_LAMP.inrushMultiple()));
        TEXTS.put("3.4.6", () -> "about " + CheckText.number(LoadType.MERCURY_LAMP.highestInrushA(1)));
        TEXTS.put("3.4.7", () -> CheckText.range(LoadType.CAPACITIVE.inrushMultiple()));
        TEXTS.put("3.4.8", () -> CheckText.range(LoadType.TRANSFORMER.inrushMultiple()));
        TEXTS.put("3.4.9", () -> factor(LoadType.FILAMENT_LAMP) + " / " + factor(LoadType.MOTOR));
        TEXTS.put("3.4.10", () -> CheckText.number(120 * new RelayContact(10).largestSteadyA(LoadType.FILAMENT_LAMP)));
        TEXTS.put(
                "3.4.11",
                () -> "power factor " + CheckText.number(RelayContact.INDUCTIVE_TEST_POWER_FACTOR) + " AC, L/R "
                        + CheckText.number(RelayContact.INDUCTIVE_TEST_TIME_CONSTANT_S * 1e3) + " ms DC");
    }

    private static String factor(final LoadType type) {
        return CheckText.number(type.oneFactor().orElseThrow());
    }

    static Stream<CheckValue> cases() {
        return CheckText.stated("3.4", TEXTS);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFigureIsTheHandbooks(final CheckValue value) {
        assertThat(Objects.requireNonNull(TEXTS.get(value.id()), value.id()).get())
                .isEqualTo(value.expected());
    }

    /** Lamps and motors by the one factor, the others so that their highest inrush stays within 10 A. */
    @ParameterizedTest(name = "{0}: at most {1} A on a contact of 10 A")
    @CsvSource({
        "RESISTIVE, 10",
        "SOLENOID, 0.5",
        "MOTOR, 1.666666",
        "FILAMENT_LAMP, 1",
        "SODIUM_LAMP, 3.333333",
        "MERCURY_LAMP, 3.333333",
        "CAPACITIVE, 0.25",
        "TRANSFORMER, 0.666666"
    })
    void aContactCarriesALoadUpToItsLimit(final LoadType type, final double largestA) {
        final RelayContact contact = new RelayContact(10);
        assertThat(contact.carries(type, largestA)).isTrue();
        assertThat(contact.carries(type, largestA + 0.00001)).isFalse();
    }

    @Test
    void onlyLampsAndMotorsHaveAPublishedFactor() {
        assertThat(Stream.of(LoadType.values()).filter(type -> type.oneFactor().isPresent()))
                .containsExactly(LoadType.MOTOR, LoadType.FILAMENT_LAMP);
    }

    @Test
    void figuresThatNoContactHasAreNamed() {
        assertThatThrownBy(() -> new RelayContact(0)).hasMessage("resistiveA=0.0 is not above 0");
        assertThatThrownBy(() -> new RelayContact(10).carries(LoadType.MOTOR, -1))
                .hasMessage("steadyA=-1.0 is not 0 or more");
        assertThatThrownBy(() -> LoadType.MOTOR.highestInrushA(Double.NaN)).hasMessage("steadyA=NaN is not 0 or more");
    }
}
