package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 4.1 and 4.4 (WCAG 2.x success criterion 2.3.1 and its glossary). */
class GeneralFlashTest {
    private static final Pattern STATES = Pattern.compile("dark ([0-9.]+) bright ([0-9.]+)");
    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("4.1.1", () -> FlashCount.MOST_IN_A_SECOND);
        COMPUTED.put("4.1.2", () -> GeneralFlash.LEAST_STEP);
        COMPUTED.put("4.1.3", () -> GeneralFlash.DARKER_BELOW);
        COMPUTED.put("4.1.4", () -> GeneralFlash.AREA_SR);
        COMPUTED.put("4.1.5", () -> GeneralFlash.FIELD_SHARE * GeneralFlash.fieldSr(10));
        COMPUTED.put("4.1.6", () -> GeneralFlash.SATURATED_RED_SHARE);
        COMPUTED.put("4.1.7", () -> GeneralFlash.areaM2(3));
        COMPUTED.put("4.1.8", () -> GeneralFlash.areaM2(10));
        COMPUTED.put("4.1.9", () -> GeneralFlash.relativeLuminance(128, 128, 128));
        COMPUTED.put("4.1.10", () -> GeneralFlash.relativeLuminance(255, 0, 0));
    }

    private static Stream<CheckValue> cases() {
        return CheckValue.computed("4.1", COMPUTED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFormulaGivesTheHandbooksFigure(final CheckValue value) {
        value.agreesWith(CheckWords.of(COMPUTED, value).getAsDouble());
    }

    private static Stream<CheckValue> pairs() {
        return CheckValue.section("4.4").stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pairs")
    void aPairOfChangesIsAFlashWhereTheHandbookSaysSo(final CheckValue value) {
        final Matcher states = STATES.matcher(value.inputs());
        assertThat(states.matches()).as(value.toString()).isTrue();
        final double dark = Double.parseDouble(states.group(1));
        final double bright = Double.parseDouble(states.group(2));
        final boolean expected = value.expected().startsWith("flash");
        assertThat(expected || value.expected().startsWith("no flash")).isTrue();

        assertThat(GeneralFlash.isFlash(dark, bright)).as(value.toString()).isEqualTo(expected);
        assertThat(GeneralFlash.isFlash(bright, dark)).as(value.toString()).isEqualTo(expected);
    }

    @Test
    void aStepOfATenthIsOneWhateverADoubleMakesOfIt() {
        assertThat(GeneralFlash.isFlash(0.5, 0.6)).isTrue();
        assertThat(GeneralFlash.isFlash(0.5, 0.599)).isFalse();
    }

    /** Handbook 4.2 case 4 (ITU-R BT.1702, from memory): 20 cd/m2 or more with the darker image below 160 cd/m2. */
    @Test
    void caseFourOfSection42HasBothLimitsOfBroadcasting() {
        assertThat(GeneralFlash.isBroadcastFlash(100, 120)).isTrue();
        assertThat(GeneralFlash.isBroadcastFlash(100, 119.9)).isFalse();
        assertThat(GeneralFlash.isBroadcastFlash(200, 159.9)).isTrue();
        assertThat(GeneralFlash.isBroadcastFlash(200, 160)).isFalse();
    }

    @Test
    void whiteIsOneAndBlackIsNoneAndTheShadesBetweenAreInOrder() {
        assertThat(GeneralFlash.relativeLuminance(255, 255, 255)).isEqualTo(1.0);
        assertThat(GeneralFlash.relativeLuminance(0, 0, 0)).isZero();
        for (int shade = 1; shade <= 255; shade++) {
            assertThat(GeneralFlash.relativeLuminance(shade, shade, shade))
                    .isGreaterThan(GeneralFlash.relativeLuminance(shade - 1, shade - 1, shade - 1));
        }
    }

    /** Orange (255, 128, 0) has 1 / 1.216 = 82 % red once linear; (255, 138, 0) has 79.6 %. */
    @Test
    void redIsSaturatedFromFourFifthsOn() {
        assertThat(GeneralFlash.isSaturatedRed(255, 0, 0)).isTrue();
        assertThat(GeneralFlash.isSaturatedRed(255, 128, 0)).isTrue();
        assertThat(GeneralFlash.isSaturatedRed(255, 138, 0)).isFalse();
        assertThat(GeneralFlash.isSaturatedRed(255, 0, 138)).isFalse();
        assertThat(GeneralFlash.isSaturatedRed(255, 255, 255)).isFalse();
        assertThat(GeneralFlash.isSaturatedRed(0, 0, 0)).isFalse();
    }

    @Test
    void theWholeSphereIsFourPi() {
        assertThat(GeneralFlash.fieldSr(360)).isEqualTo(4 * Math.PI);
    }

    @Test
    void figuresOutsideTheirRangeAreNamed() {
        assertThatThrownBy(() -> GeneralFlash.isFlash(-0.1, 0.5))
                .hasMessage("oneLuminance=-0.1 is not within 0.0 to 1.0");
        assertThatThrownBy(() -> GeneralFlash.isFlash(0.5, 1.1))
                .hasMessage("otherLuminance=1.1 is not within 0.0 to 1.0");
        assertThatThrownBy(() -> GeneralFlash.relativeLuminance(256, 0, 0))
                .hasMessage("red=256.0 is not within 0.0 to 255.0");
        assertThatThrownBy(() -> GeneralFlash.relativeLuminance(0, -1, 0))
                .hasMessage("green=-1.0 is not within 0.0 to 255.0");
        assertThatThrownBy(() -> GeneralFlash.fieldSr(361)).hasMessage("acrossDeg=361.0 is not within 0.0 to 360.0");
        assertThatThrownBy(() -> GeneralFlash.fieldSr(0)).hasMessage("acrossDeg=0.0 is not above 0");
        assertThatThrownBy(() -> GeneralFlash.areaM2(Double.NaN)).hasMessage("distanceM=NaN is not above 0");
        assertThatThrownBy(() -> GeneralFlash.isBroadcastFlash(-1, 5)).hasMessage("oneCdPerM2=-1.0 is not 0 or more");
    }
}
