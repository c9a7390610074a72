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

/** Handbook 2.5 (physics with constants from memory; the usual disc is common practice). */
class LowLayerTest {
    private static final double CM3_PER_H = 1e-6 / 3_600;
    private static final double M3_PER_H = 1.0 / 3_600;
    private static final double CFM = 0.3048 * 0.3048 * 0.3048 / 60;
    private static final double G = 1e-3;
    private static final double DISC_M3_PER_S = 350 * CM3_PER_H;
    private static final MoistAir DRY = MoistAir.of(20, 0);
    private static final MoistAir EVENING = MoistAir.of(15, 0.6);
    private static final double PLENTY_KG_PER_M3 = 0.020;
    private static final double TEN_DISCS_KG_PER_M3 = Droplets.loadKgPerM3(10 * DISC_M3_PER_S, 170 * M3_PER_H);
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("2.5.1", DRY::densityKgPerM3);
        COMPUTED.put("2.5.2", () -> MoistAir.of(5, 0).densityKgPerM3());
        COMPUTED.put("2.5.3", () -> 100 * LowLayer.of(DRY, 5, 0).chilling());
        COMPUTED.put("2.5.4", () -> 100 * LowLayer.dropletExcess(1 * G, DRY));
        COMPUTED.put("2.5.5", () -> Droplets.settlingMPerS(5e-6) * 1e3);
        COMPUTED.put("2.5.6", () -> Droplets.settlingMPerS(20e-6) * 1e3);
        COMPUTED.put("2.5.7", () -> Droplets.medianDiameterM(UsualMister.DISC_HZ) * 1e6);
        COMPUTED.put("2.5.10", () -> LowLayer.frontMPerS(0.2, 0.0539));
        COMPUTED.put("2.5.11", () -> Droplets.coolingW(DISC_M3_PER_S));
        COMPUTED.put("2.5.12", () -> new Chilling(DRY, 100 * CFM).sensibleW(5));
        COMPUTED.put("2.5.13", () -> Chilling.iceKgPerS(new Chilling(DRY, 100 * CFM).sensibleW(5)) * 3_600);
        COMPUTED.put("2.5.14", () -> TEN_DISCS_KG_PER_M3 / G);
        COMPUTED.put("2.5.15", EVENING::wetBulbC);
        COMPUTED.put(
                "2.5.16", () -> 100 * LowLayer.of(EVENING, 15, PLENTY_KG_PER_M3).evaporation());
        COMPUTED.put("2.5.17", () -> 100 * LowLayer.dropletExcess(TEN_DISCS_KG_PER_M3, EVENING));
    }

    static Stream<CheckValue> cases() {
        return CheckValue.computed("2.5", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(
                Objects.requireNonNull(COMPUTED.get(value.id()), value.id()).getAsDouble());
    }

    @Test
    void case_2_5_8_aDiscMakesMistOf250To450Cm3AnHour() {
        assertThat(CheckText.range(UsualMister.DISC_M3_PER_S, CM3_PER_H)).isEqualTo("250..450");
    }

    @Test
    void case_2_5_9_aDiscLies10To40MmUnderWater() {
        assertThat(CheckText.range(UsualMister.WATER_COVER_M, 1e-3)).isEqualTo("10..40");
    }

    @Test
    void theExcessIsTheSumOfItsThreeCauses() {
        final LowLayer layer = LowLayer.of(EVENING, 10, TEN_DISCS_KG_PER_M3);
        assertThat(layer.chilling()).isPositive();
        assertThat(layer.evaporation()).isPositive();
        assertThat(layer.droplets()).isPositive();
        assertThat(layer.excess()).isEqualTo(layer.chilling() + layer.evaporation() + layer.droplets(), within(1e-15));
    }

    /** Ten discs in 170 m3/h: 2.0 g/m3 evaporate and cool, 18.6 g/m3 stay droplets; together 2.9 %. */
    @Test
    void waterThatEvaporatesIsNotCountedAsDropletsToo() {
        final LowLayer layer = LowLayer.of(EVENING, 15, TEN_DISCS_KG_PER_M3);
        assertThat(EVENING.waterToWetBulbKgPerM3() / G).isEqualTo(2.05, within(0.05));
        assertThat(layer.droplets() * 100).isEqualTo(1.52, within(0.02));
        assertThat(layer.evaporation() * 100).isEqualTo(1.35, within(0.05));
        assertThat(layer.chilling()).isZero();
    }

    /** One disc of 350 cm3/h in 170 m3/h, 2.06 g/m3, evaporates whole: 1.34 % and nearly the wet bulb. */
    @Test
    void oneDiscEvaporatesWholeInAnEveningsAir() {
        final LowLayer layer = LowLayer.of(EVENING, 15, Droplets.loadKgPerM3(DISC_M3_PER_S, 170 * M3_PER_H));
        assertThat(layer.evaporation() * 100).isEqualTo(1.34, within(0.01));
        assertThat(layer.droplets()).isZero();
    }

    /** Half the water cools half as much; more than the wet bulb takes cools no further. */
    @Test
    void evaporationIsLimitedByTheWaterThatIsThere() {
        final double toWetBulb = EVENING.waterToWetBulbKgPerM3();
        final double whole = LowLayer.of(EVENING, 15, toWetBulb).evaporation();
        assertThat(LowLayer.of(EVENING, 15, toWetBulb / 2).evaporation()).isEqualTo(whole / 2, within(whole * 0.02));
        assertThat(LowLayer.of(EVENING, 15, toWetBulb * 2).evaporation()).isEqualTo(whole, within(1e-9));
        assertThat(LowLayer.of(EVENING, 15, toWetBulb * 0.99).evaporation()).isLessThan(whole);
        assertThat(LowLayer.of(EVENING, 15, toWetBulb * 0.99).droplets()).isZero();
        assertThat(LowLayer.of(EVENING, 15, 0).excess()).isZero();
    }

    @Test
    void nothingEvaporatesInSaturatedAir() {
        final LowLayer layer = LowLayer.of(MoistAir.of(15, 1), 15, PLENTY_KG_PER_M3);
        assertThat(layer.evaporation()).isEqualTo(0, within(1e-9));
        assertThat(layer.droplets())
                .isEqualTo(LowLayer.dropletExcess(PLENTY_KG_PER_M3, MoistAir.of(15, 1)), within(1e-9));
    }

    @Test
    void airAtItsWetBulbIsSaturatedAndEvaporatesNoFurther() {
        final MoistAir cooled = EVENING.withEvaporated(1);
        assertThat(cooled.temperatureC()).isEqualTo(EVENING.wetBulbC(), within(1e-6));
        assertThat(cooled.humidity()).isEqualTo(1, within(1e-6));
        assertThat(EVENING.withEvaporated(0)).isEqualTo(EVENING);
    }

    @Test
    void airBelowItsDewPointIsSaturated() {
        final double dewPointC = EVENING.dewPointC();
        assertThat(dewPointC).isEqualTo(7.3, within(0.1));
        assertThat(EVENING.chilledTo(dewPointC + 0.1).humidity()).isLessThan(1);
        assertThat(EVENING.chilledTo(dewPointC - 0.1).humidity()).isEqualTo(1);
        assertThat(DRY.dewPointC()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(MoistAir.of(15, 1).dewPointC()).isEqualTo(15, within(1e-9));
    }

    @Test
    void theWetBulbLiesBetweenDewPointAndAir() {
        assertThat(EVENING.wetBulbC()).isBetween(EVENING.dewPointC(), 15.0);
        assertThat(MoistAir.of(15, 1).wetBulbC()).isEqualTo(15, within(1e-6));
        assertThat(MoistAir.of(-40, 0).withEvaporated(1).temperatureC()).isEqualTo(-40);
    }

    /** A front of 0.325 m/s withstands a breeze just below it, not one that equals it. */
    @Test
    void aBreezeAsFastAsTheFrontWins() {
        final LowLayer layer = LowLayer.of(DRY, 5, 0);
        final double frontMPerS = layer.frontMPerS(0.2);
        assertThat(frontMPerS).isEqualTo(0.3252, within(1e-4));
        assertThat(layer.staysLow(0.2, frontMPerS - 1e-6)).isTrue();
        assertThat(layer.staysLow(0.2, frontMPerS)).isFalse();
        assertThat(LowLayer.of(DRY, 20, 0).staysLow(0.2, 0)).isFalse();
        assertThat(LowLayer.excessAgainst(0.2, frontMPerS)).isEqualTo(layer.excess(), within(1e-12));
        assertThat(LowLayer.excessAgainst(0.2, 0.5)).isEqualTo(0.1275, within(1e-4));
    }

    /** From 20 degC and 60 % to 5 degC 3.94 g/m3 condense (8.71 less 5.40 g/kg): half as much heat again. */
    @Test
    void condensingWaterAddsToTheHeatOnlyBelowTheDewPoint() {
        final Chilling moist = new Chilling(MoistAir.of(20, 0.6), 100 * CFM);
        final double dewPointC = moist.air().dewPointC();
        assertThat(moist.condensationW(dewPointC + 0.1)).isEqualTo(0, within(1e-9));
        assertThat(moist.condensationW(dewPointC - 0.1)).isPositive();
        assertThat(moist.heatW(5)).isEqualTo(moist.sensibleW(5) + moist.condensationW(5), within(1e-9));
        assertThat(moist.condensationW(5)).isEqualTo(455, within(1.0));
        assertThat(new Chilling(DRY, 100 * CFM).condensationW(5)).isZero();
        assertThat(moist.heatW(20)).isEqualTo(0, within(1e-9));
    }

    /** 858 W over 571 kJ/kg and the gas from -78.5 to 5 degC (from memory): half the mass of water ice. */
    @Test
    void dryIceTakesAlmostTwiceTheHeatOfIce() {
        assertThat(Chilling.dryIceKgPerS(858, 5) * 3_600).isEqualTo(4.83, within(0.02));
        assertThat(Chilling.dryIceKgPerS(571e3, -78.5)).isEqualTo(1, within(1e-12));
        assertThat(Chilling.iceKgPerS(334e3)).isEqualTo(1, within(1e-12));
        assertThat(Chilling.iceKgPerS(0)).isZero();
    }

    @Test
    void stokesLawEndsAtEightyMicrometres() {
        assertThat(Droplets.settlingMPerS(80e-6)).isEqualTo(0.1926, within(1e-3));
        assertThatThrownBy(() -> Droplets.settlingMPerS(80.1e-6))
                .hasMessage("diameterM=8.01E-5 is not within 0.0 to 8.0E-5");
    }

    @Test
    void figuresThatNoAirHasAreNamed() {
        assertThatThrownBy(() -> MoistAir.of(15, 60)).hasMessage("humidity=60.0 is not within 0.0 to 1.0");
        assertThatThrownBy(() -> MoistAir.of(51, 0.5)).hasMessage("temperatureC=51.0 is not within -40.0 to 50.0");
        assertThatThrownBy(() -> new MoistAir(15, 0.5, 1.013))
                .hasMessage("pressurePa=1.013 is not within 50000.0 to 110000.0");
        assertThatThrownBy(() -> EVENING.chilledTo(16)).hasMessage("toC=16.0 is not within -40.0 to 15.0");
        assertThatThrownBy(() -> EVENING.withEvaporated(-1)).hasMessage("waterKgPerM3=-1.0 is not 0 or more");
        assertThatThrownBy(() -> LowLayer.of(EVENING, 15, -1)).hasMessage("dropletsKgPerM3=-1.0 is not 0 or more");
        assertThatThrownBy(() -> LowLayer.frontMPerS(0.2, 1.1)).hasMessage("excess=1.1 is not within 0.0 to 1.0");
        assertThatThrownBy(() -> LowLayer.frontMPerS(0, 0.1)).hasMessage("heightM=0.0 is not above 0");
        assertThatThrownBy(() -> Droplets.loadKgPerM3(1, 0)).hasMessage("airM3PerS=0.0 is not above 0");
        assertThatThrownBy(() -> Droplets.medianDiameterM(50))
                .hasMessage("discHz=50.0 is not within 10000.0 to 3000000.0");
        assertThatThrownBy(() -> new Chilling(DRY, -1)).hasMessage("flowM3PerS=-1.0 is not 0 or more");
        assertThatThrownBy(() -> Chilling.dryIceKgPerS(1, -79)).hasMessage("toC=-79.0 is not within -78.5 to 50.0");
    }
}
