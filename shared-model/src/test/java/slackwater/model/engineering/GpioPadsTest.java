package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import slackwater.model.board.Boards;

/** Handbook 3.8 (the vendor's pages on pins and pads). */
class GpioPadsTest {
    private static final GpioPads FAMILY = GpioPads.BCM2835_FAMILY;
    private static final GpioPads FOURTH = GpioPads.BCM2711;
    private static final Map<String, Supplier<String>> TEXTS = new LinkedHashMap<>();

    static {
        TEXTS.put(
                "3.8.1",
                () -> IntStream.range(0, 8)
                        .mapToObj(setting -> CheckText.number(Math.rint(FAMILY.driveStrengthA(setting) * 1e6) / 1e3))
                        .collect(Collectors.joining(",")));
        TEXTS.put("3.8.2", () -> CheckText.number(FAMILY.safePadA() * 1e3));
        TEXTS.put("3.8.3", () -> CheckText.number(GpioPads.SUPPLY_A_PER_PIN * 1e3));
        TEXTS.put("3.8.4", () -> CheckText.number(Math.rint(GpioBudget.availableA() * 1e6) / 1e3));
        TEXTS.put(
                "3.8.5",
                () -> levels(FAMILY.input().lowAtMostV(), FAMILY.input().highAtLeastV()));
        TEXTS.put(
                "3.8.6",
                () -> levels(FOURTH.input().lowAtMostV(), FOURTH.input().highAtLeastV()));
        TEXTS.put(
                "3.8.7", () -> CheckText.range(FAMILY.pullOhm(), 1e3) + " / " + CheckText.range(FOURTH.pullOhm(), 1e3));
        TEXTS.put(
                "3.8.8",
                () -> "%s max / %.1f min"
                        .formatted(
                                CheckText.number(FAMILY.output().lowAtMostV()),
                                FAMILY.output().highAtLeastV()));
        TEXTS.put("3.8.9", () -> volts(FAMILY.pulledUpV(10e3)));
        TEXTS.put("3.8.10", () -> volts(FAMILY.pulledUpV(100e3)));
    }

    private static String levels(final double lowV, final double highV) {
        return String.format(Locale.ROOT, "%.1f max / %.1f min", lowV, highV);
    }

    private static String volts(final UsualRange range) {
        return String.format(Locale.ROOT, "%.2f..%.2f", range.least(), range.most());
    }

    static Stream<CheckValue> cases() {
        return CheckText.stated("3.8", TEXTS);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFigureIsTheHandbooks(final CheckValue value) {
        assertThat(Objects.requireNonNull(TEXTS.get(value.id()), value.id()).get())
                .isEqualTo(value.expected());
    }

    /** Cases 8, 9 and 10 go on: 10 kohm read low, 100 kohm high on the older chips and uncertain on the fourth. */
    @Test
    void aResistorAgainstThePullUpReadsAsTheHandbookSays() {
        assertThat(FAMILY.readsPulledUp(10e3)).isEqualTo(GpioPads.Reading.LOW);
        assertThat(FAMILY.readsPulledUp(100e3)).isEqualTo(GpioPads.Reading.HIGH);
        assertThat(FOURTH.readsPulledUp(100e3)).isEqualTo(GpioPads.Reading.UNCERTAIN);
        assertThat(volts(FOURTH.pulledUpV(100e3))).isEqualTo("1.91..2.48");
        assertThat(FOURTH.output()).isEqualTo(new GpioPads.Output(0.4, 2.6, 0.004));
        assertThat(FAMILY.output().atA()).isEqualTo(0.002);
    }

    /** Case 1 goes on: the fourth generation's values are half. */
    @Test
    void theDefaultDriveIsEightMilliamperesAndHalfOnTheFourthGeneration() {
        assertThat(FAMILY.driveStrengthA(3)).isEqualTo(0.008, within(1e-12));
        assertThat(FOURTH.driveStrengthA(3)).isEqualTo(0.004, within(1e-12));
        assertThat(FOURTH.driveStrengthA(7)).isEqualTo(FOURTH.safePadA(), within(1e-12));
        assertThatThrownBy(() -> FAMILY.driveStrengthA(8)).hasMessage("setting=8.0 is not within 0.0 to 7.0");
    }

    @ParameterizedTest(name = "{0} V: {1} on the older chips, {2} on the fourth generation")
    @CsvSource({
        "0, LOW, LOW",
        "0.8, LOW, LOW",
        "0.81, LOW, UNCERTAIN",
        "0.9, LOW, UNCERTAIN",
        "0.91, UNCERTAIN, UNCERTAIN",
        "1.59, UNCERTAIN, UNCERTAIN",
        "1.6, HIGH, UNCERTAIN",
        "1.99, HIGH, UNCERTAIN",
        "2.0, HIGH, HIGH",
        "3.3, HIGH, HIGH"
    })
    void aVoltageReadsAsGuaranteed(
            final double volts, final GpioPads.Reading onFamily, final GpioPads.Reading onFourth) {
        assertThat(FAMILY.reading(volts)).isEqualTo(onFamily);
        assertThat(FOURTH.reading(volts)).isEqualTo(onFourth);
    }

    @Test
    void fiveVoltsAreNoInput() {
        assertThatThrownBy(() -> FAMILY.reading(5)).hasMessage("volts=5.0 is not within 0.0 to 3.3");
        assertThatThrownBy(() -> FAMILY.reading(-0.1)).hasMessage("volts=-0.1 is not within 0.0 to 3.3");
        assertThatThrownBy(() -> GpioPads.dividedV(0, 10)).hasMessage("toSupplyOhm=0.0 is not above 0");
        assertThatThrownBy(() -> GpioPads.supplyA(-1)).hasMessage("pins=-1.0 is not 0 or more");
        assertThat(GpioPads.dividedV(10e3, 0)).isZero();
    }

    /** pi-5 has its pads on another chip, whose limits the handbook does not name. */
    @Test
    void eachBoardHasItsChipsPadsAndAnUnknownOneNone() {
        assertThat(Boards.words()).containsExactly("pi-3", "pi-4", "pi-5", "pi-zero-2-w");
        assertThat(GpioPads.ofBoard("pi-3")).contains(FAMILY);
        assertThat(GpioPads.ofBoard("pi-zero-2-w")).contains(FAMILY);
        assertThat(GpioPads.ofBoard("pi-4")).contains(FOURTH);
        assertThat(GpioPads.ofBoard("pi-5")).isEmpty();
        assertThat(GpioPads.ofBoard("pi-6")).isEmpty();
    }

    @Test
    void aPinMayDrawWhatItsPadStandsAndNoMore() {
        assertThat(new GpioBudget(FAMILY, List.of(0.002, 0.016)).fits()).isTrue();
        assertThat(new GpioBudget(FAMILY, List.of(0.002, 0.0161)).overloadedPins())
                .containsExactly(1);
        assertThat(new GpioBudget(FAMILY, List.of(0.002, 0.0161)).fits()).isFalse();
        assertThat(new GpioBudget(FOURTH, List.of(0.0081)).fits()).isFalse();
        assertThat(new GpioBudget(FOURTH, List.of(0.008)).fits()).isTrue();
    }

    /** 17 pins of 3 mA are the supply's 51 mA; each pin for itself would be fine. */
    @Test
    void allPinsTogetherMayDrawWhatTheSupplyGives() {
        final GpioBudget full = new GpioBudget(FAMILY, List.of(0.016, 0.016, 0.016, 0.003));
        assertThat(full.totalA()).isEqualTo(0.051, within(1e-12));
        assertThat(full.fits()).isTrue();
        assertThat(new GpioBudget(FAMILY, List.of(0.016, 0.016, 0.016, 0.0031)).fits())
                .isFalse();
        assertThat(new GpioBudget(FAMILY, List.of(0.016, 0.016, 0.016, 0.0031)).overloadedPins())
                .isEmpty();
        assertThat(new GpioBudget(FAMILY, List.of()).fits()).isTrue();
        assertThatThrownBy(() -> new GpioBudget(FAMILY, List.of(-0.001))).hasMessage("pinA=-0.001 is not 0 or more");
    }
}
