package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Handbook 1.8: common practice, no source; case 4 from a trade journal. */
class ValveTimesTest {

    @ParameterizedTest(name = "1.8.{0}: {1} to {2} ms")
    @CsvSource({"1, 5, 15", "2, 12, 30", "3, 20, 50"})
    void theUsualTimesSpanTheHandbooksRange(final int number, final double leastMs, final double mostMs) {
        final UsualRange usual = switch (number) {
            case 1 -> ValveTimes.DIRECT_S;
            case 2 -> ValveTimes.PILOT_ON_S;
            default -> ValveTimes.PILOT_OFF_S;
        };
        final CheckValue value = CheckValue.section("1.8").get(number - 1);
        assertThat(value.expected()).isEqualTo(String.format(Locale.ROOT, "%.0f..%.0f", leastMs, mostMs));
        assertThat(usual).isEqualTo(new UsualRange(leastMs / 1_000, mostMs / 1_000));
        value.agreesWith(usual.middle() * 1_000);
    }

    /** NFPA T3.21.8-1990 and CETOP RP111P. */
    @Test
    void case1Dot8Dot4NamesBothThresholds() {
        assertThat(ValveTimes.NFPA_SHARE).isEqualTo(0.9);
        assertThat(ValveTimes.CETOP_SHARE).isEqualTo(0.5);
        assertThat(CheckValue.section("1.8").get(3).expected()).isEqualTo("90 % / 50 %");
    }

    @Test
    void bothEndsBelongToARange() {
        final UsualRange range = new UsualRange(5, 15);
        assertThat(range.holds(5)).isTrue();
        assertThat(range.holds(15)).isTrue();
        assertThat(range.holds(4.999)).isFalse();
        assertThat(range.holds(15.001)).isFalse();
        assertThat(range.middle()).isEqualTo(10);
    }

    @Test
    void aRangeTurnedRoundIsRefused() {
        assertThatThrownBy(() -> new UsualRange(2, 1)).hasMessage("most=1.0 is not at least 2.0");
        assertThatThrownBy(() -> new UsualRange(Double.NaN, 1)).hasMessage("least=NaN is not 0 or more");
    }
}
