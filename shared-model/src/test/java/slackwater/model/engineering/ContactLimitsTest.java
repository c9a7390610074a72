package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 1.11: figures for healthy adult workers, not for children, and never a permission. */
class ContactLimitsTest {
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("1.11.1", () -> BodyPart.BACK_AND_SHOULDERS.pressedN());
        COMPUTED.put("1.11.2", () -> BodyPart.CHEST.pressedN());
        COMPUTED.put("1.11.3", () -> BodyPart.ABDOMEN.pressedN());
        COMPUTED.put("1.11.4", () -> BodyPart.PELVIS.pressedN());
        COMPUTED.put("1.11.5", () -> BodyPart.UPPER_ARM_AND_ELBOW.pressedN());
        COMPUTED.put("1.11.6", () -> BodyPart.FOREARM_AND_WRIST.pressedN());
        COMPUTED.put("1.11.7", () -> BodyPart.HAND_AND_FINGERS.pressedN());
        COMPUTED.put("1.11.8", () -> BodyPart.CHEST.struckJ());
        COMPUTED.put("1.11.9", () -> BodyPart.CHEST.struckMPerS(5, 40));
        COMPUTED.put("1.11.11", () -> ContactLimits.LOW_ENERGY_DOOR_J);
        COMPUTED.put("1.11.12", () -> ContactLimits.LOW_ENERGY_DOOR_N);
        COMPUTED.put("1.11.14", () -> CylinderMotion.speedMPerS(3, ContactLimits.LOW_ENERGY_DOOR_J));
        COMPUTED.put("1.11.15", () -> CylinderMotion.speedMPerS(3, ContactLimits.GUARD_J));
        COMPUTED.put("1.11.16", () -> 1_000 * ContactLimits.boreM(150, 6e5));
        COMPUTED.put("1.11.17", () -> ContactLimits.gaugePa(150, new Cylinder(0.032, 0.012, 0.1)) / 1e5);
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("1.11", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    /** EN 12453: 400 N for at most 0.75 s, then at most 150 N, below 25 N after 5 s. */
    @ParameterizedTest(name = "1.11.10 after {0} s: {1} N")
    @CsvSource({"0, 400", "0.75, 400", "0.751, 150", "5, 150", "5.001, 25"})
    void case1Dot11Dot10GivesADoorsForceOverTime(final double sinceContactS, final double expectedN) {
        assertThat(ContactLimits.doorN(sinceContactS)).isEqualTo(expectedN);
    }

    /** ISO 14120:2015, from memory: 75 N and 4 J, or 150 N and 10 J with a device that opens it again. */
    @Test
    void case1Dot11Dot13NamesAGuardsForceAndEnergy() {
        assertThat(ContactLimits.GUARD_N).isEqualTo(75);
        assertThat(ContactLimits.GUARD_J).isEqualTo(4);
        assertThat(ContactLimits.REOPENING_GUARD_N).isEqualTo(150);
        assertThat(ContactLimits.REOPENING_GUARD_J).isEqualTo(10);
    }

    /** The notes of cases 1 to 7; the stiffnesses of 4 to 7 are from memory. */
    @ParameterizedTest(name = "1.11 {0}: struck {1} N, {2} N/mm")
    @CsvSource({
        "BACK_AND_SHOULDERS, 420, 35",
        "CHEST, 280, 25",
        "ABDOMEN, 220, 10",
        "PELVIS, 360, 25",
        "UPPER_ARM_AND_ELBOW, 300, 30",
        "FOREARM_AND_WRIST, 320, 40",
        "HAND_AND_FINGERS, 280, 75"
    })
    void aBlowMayBeTwiceAPressAndMeetsTheNotedSpring(
            final BodyPart part, final double struckN, final double stiffnessNPerMm) {
        assertThat(part.struckN()).isEqualTo(struckN);
        assertThat(part.stiffnessNPerM()).isEqualTo(stiffnessNPerMm * 1_000);
    }

    @ParameterizedTest
    @EnumSource(BodyPart.class)
    void aHeavierArmMustComeMoreSlowly(final BodyPart part) {
        assertThat(part.struckMPerS(10, 40)).isLessThan(part.struckMPerS(5, 40)).isPositive();
    }

    /** The note of case 16: of the usual bores only 16 mm stays under 150 N at 6 bar. */
    @Test
    void onlyTheSmallestBoreStaysUnderADoorsForce() {
        final double largestM = ContactLimits.boreM(ContactLimits.DOOR_STATIC_N, 6e5);
        assertThat(new Cylinder(largestM, 0, 0.1).pushN(6e5)).isEqualTo(150, within(1e-9));
        assertThat(largestM).isBetween(0.016, 0.020);
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> ContactLimits.boreM(0, 6e5)).hasMessage("forceN=0.0 is not above 0");
        assertThatThrownBy(() -> ContactLimits.boreM(150, -1)).hasMessage("gaugePa=-1.0 is not above 0");
        assertThatThrownBy(() -> ContactLimits.doorN(-0.1)).hasMessage("sinceContactS=-0.1 is not 0 or more");
        assertThatThrownBy(() -> BodyPart.CHEST.struckMPerS(Double.NaN, 40)).hasMessage("movingKg=NaN is not above 0");
        assertThatThrownBy(() -> BodyPart.CHEST.struckMPerS(5, 0)).hasMessage("bodyKg=0.0 is not above 0");
    }
}
