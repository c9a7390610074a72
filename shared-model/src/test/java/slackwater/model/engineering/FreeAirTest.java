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
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Handbook 0.1, ISO 8778. Molar mass, gas constants and vapour pressure are from memory there. */
class FreeAirTest {
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("0.1.1", () -> FreeAir.gasConstantJPerKgK(0.0289647));
        COMPUTED.put("0.1.2", () -> FreeAir.REFERENCE_KG_PER_M3);
        COMPUTED.put("0.1.3", () -> FreeAir.moistKgPerM3(100_000, 293.15, 0.65 * 2_339));
        COMPUTED.put("0.1.4", () -> AirReference.NORMAL.toM3(1, AirReference.ANR));
        COMPUTED.put("0.1.5", () -> FreeAir.absolutePa(600_000) / 100_000);
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("0.1", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    @Test
    void gaugeAndAbsoluteAreEachOthersInverse() {
        assertThat(FreeAir.gaugePa(FreeAir.absolutePa(250_000))).isEqualTo(250_000, within(1e-6));
        assertThat(FreeAir.absolutePa(-101_325)).isZero();
    }

    @Test
    void theThreeLitresConvertBackToThemselves() {
        for (final AirReference from : AirReference.values()) {
            for (final AirReference to : AirReference.values()) {
                assertThat(to.toM3(from.toM3(0.4, to), from))
                        .as("%s to %s", from, to)
                        .isEqualTo(0.4, within(1e-12));
            }
        }
        assertThat(AirReference.FREE_AIR.toM3(1, AirReference.ANR)).isEqualTo(1.01325, within(1e-12));
    }

    /** The same arithmetic as case 4: a space at a litre's own state holds itself. */
    @Test
    void aSpaceAtTheReferenceHoldsItsOwnVolume() {
        assertThat(AirReference.NORMAL.ofSpaceM3(0.024, 101_325, 273.15)).isEqualTo(0.024, within(1e-15));
        assertThat(AirReference.ANR.ofSpaceM3(0.024, 800_000, 293.15)).isEqualTo(0.192, within(1e-12));
    }

    @Test
    void theReferenceDensityGoesWithItsOwnGasConstant() {
        assertThat(FreeAir.REFERENCE_GAS_CONSTANT_J_PER_KG_K).isEqualTo(288, within(0.2));
        assertThat(FreeAir.anrM3PerS(-1.185)).isEqualTo(-1, within(1e-12));
    }

    /** Handbook 1.6 case 7: 24 l at 8 bar absolute hold 0.22816 kg. */
    @Test
    void massIsTheIdealGases() {
        assertThat(FreeAir.massKg(0.024, 800_000, 293.15)).isEqualTo(0.22816, within(1e-5));
    }

    @Test
    void dryAirIsHeavierThanMoist() {
        assertThat(FreeAir.moistKgPerM3(100_000, 293.15, 0))
                .isGreaterThan(FreeAir.moistKgPerM3(100_000, 293.15, 2_339));
    }

    @Test
    void moreThanAVacuumIsRefused() {
        assertThatThrownBy(() -> FreeAir.absolutePa(-101_326))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("gaugePa=-101326.0 is not a vacuum or more");
        assertThatThrownBy(() -> FreeAir.gaugePa(-1)).hasMessage("pressurePaAbs=-1.0 is not 0 or more");
        assertThatThrownBy(() -> FreeAir.moistKgPerM3(1_000, 293, 1_001))
                .hasMessage("vapourPa=1001.0 is not within 0.0 to 1000.0");
        assertThatThrownBy(() -> FreeAir.gasConstantJPerKgK(0)).hasMessage("molarKgPerMol=0.0 is not above 0");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
    void whatIsNoNumberIsRefused(final double nonsense) {
        assertThatThrownBy(() -> FreeAir.gaugePa(nonsense)).hasMessageContaining("=" + nonsense + " is not");
        assertThatThrownBy(() -> FreeAir.massKg(1, 1, nonsense)).hasMessageContaining("=" + nonsense + " is not");
        assertThatThrownBy(() -> AirReference.ANR.toM3(nonsense, AirReference.NORMAL))
                .hasMessageContaining("=" + nonsense + " is not");
    }
}
