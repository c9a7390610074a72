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

/** Handbook 2.1 (NIST Chemistry WebBook; water, triethylene glycol and glycerol from memory). */
class LiquidTest {
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("2.1.1", () -> Liquid.WATER.vaporisationJPerKg() / 1e3);
        COMPUTED.put("2.1.2", () -> Liquid.WATER.specificHeatJPerKgK() / 1e3);
        COMPUTED.put("2.1.3", Liquid.PROPYLENE_GLYCOL::boilsC);
        COMPUTED.put("2.1.4", () -> Liquid.PROPYLENE_GLYCOL.specificHeatJPerKgK() / 1e3);
        COMPUTED.put("2.1.5", () -> Liquid.PROPYLENE_GLYCOL.vaporisationJPerKg() / 1e3);
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("2.1", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    /** 285 to 288 degC, 2.2 kJ/(kg K), about 410 kJ/kg. */
    @Test
    void case_2_1_6_triethyleneGlycolIsTheHandbooks() {
        assertThat(Liquid.TRIETHYLENE_GLYCOL.boilsC()).isBetween(285.0, 288.0);
        assertThat(Liquid.TRIETHYLENE_GLYCOL.specificHeatJPerKgK()).isEqualTo(2_200);
        assertThat(Liquid.TRIETHYLENE_GLYCOL.vaporisationJPerKg()).isEqualTo(410e3);
    }

    /** 290 degC, 2.4 kJ/(kg K), about 975 kJ/kg. */
    @Test
    void case_2_1_7_glycerolIsTheHandbooks() {
        assertThat(Liquid.GLYCEROL).isEqualTo(new Liquid(290, 2_400, 975e3));
    }

    @Test
    void aLiquidAtItsBoilingPointNeedsOnlyTheHeatOfVaporisation() {
        assertThat(Liquid.WATER.heatJPerKg(100)).isEqualTo(2_257e3, within(1e-6));
        assertThat(Liquid.WATER.heatJPerKg(99)).isEqualTo(2_261.19e3, within(1e-6));
        assertThatThrownBy(() -> Liquid.WATER.heatJPerKg(100.1)).hasMessage("fromC=100.1 is not within -50.0 to 100.0");
    }

    @Test
    void figuresThatNoLiquidHasAreNamed() {
        assertThatThrownBy(() -> new Liquid(-300, 4_190, 2_257e3))
                .hasMessage("boilsC=-300.0 is not within -273.15 to 2000.0");
        assertThatThrownBy(() -> new Liquid(100, 0, 2_257e3)).hasMessage("specificHeatJPerKgK=0.0 is not above 0");
        assertThatThrownBy(() -> new Liquid(100, 4_190, Double.NaN))
                .hasMessage("vaporisationJPerKg=NaN is not above 0");
        assertThatThrownBy(() -> new Liquid(100, Double.POSITIVE_INFINITY, 1))
                .hasMessage("specificHeatJPerKgK=Infinity is not above 0");
    }
}
