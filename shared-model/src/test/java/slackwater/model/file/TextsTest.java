package slackwater.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.model.Limits.Starts;
import slackwater.model.Schedule.TimeOfDay;
import slackwater.model.quantity.Parsed;

class TextsTest {
    @Test
    void startsAreACountAndATime() {
        assertThat(Texts.starts("6 in 1 min")).isEqualTo(new Parsed.Value<>(new Starts(6, Duration.ofMinutes(1))));
        assertThat(Texts.starts("1 in 1 ms")).isEqualTo(new Parsed.Value<>(new Starts(1, Duration.ofMillis(1))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 in 1 min", "6 in 0 s", "6 in 1", "6", "-1 in 1 min", "6 per 1 min", "100000 in 1 s", ""})
    void whatIsNotStartsIsRefused(final String text) {
        assertThat(Texts.starts(text)).isInstanceOf(Parsed.Mistake.class);
    }

    @Test
    void anInrushIsACurrentAndATime() {
        assertThat(Texts.inrush("0.8 A for 30 ms"))
                .isEqualTo(new Parsed.Value<>(new Texts.Inrush(0.8, Duration.ofMillis(30))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.8 A", "0.8 for 30 ms", "0.8 A for 30", "0.8 V for 30 ms", "for 30 ms", "0.8 A for "})
    void whatIsNotAnInrushIsRefused(final String text) {
        assertThat(Texts.inrush(text)).isInstanceOf(Parsed.Mistake.class);
    }

    @Test
    void aTimeOfDayIsByTheClockOrByTheSun() {
        assertThat(Texts.timeOfDay("18:30")).isEqualTo(clock(18, 30));
        assertThat(Texts.timeOfDay("00:00")).isEqualTo(clock(0, 0));
        assertThat(Texts.timeOfDay("23:59")).isEqualTo(clock(23, 59));
        assertThat(Texts.timeOfDay("dusk")).isEqualTo(new Parsed.Value<TimeOfDay>(new TimeOfDay.Dusk(Duration.ZERO)));
        assertThat(Texts.timeOfDay("dusk + 15 min"))
                .isEqualTo(new Parsed.Value<TimeOfDay>(new TimeOfDay.Dusk(Duration.ofMinutes(15))));
        assertThat(Texts.timeOfDay("sunset - 10 min"))
                .isEqualTo(new Parsed.Value<TimeOfDay>(new TimeOfDay.Sunset(Duration.ofMinutes(-10))));
        assertThat(Texts.timeOfDay("dusk + 12 h")).isInstanceOf(Parsed.Value.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "24:00",
                "23:60",
                "9:30",
                "18.30",
                "dawn",
                "dusk+15 min",
                "dusk + 15",
                "dusk + 12.1 h",
                "dusk + -1 s"
            })
    void whatIsNotATimeOfDayIsRefused(final String text) {
        assertThat(Texts.timeOfDay(text)).isInstanceOf(Parsed.Mistake.class);
    }

    @Test
    void aMistakeInAPartPointsAtThatPart() {
        assertThat(Texts.timeOfDay("dusk + 15 kg"))
                .isInstanceOfSatisfying(
                        Parsed.Mistake.class,
                        mistake -> assertThat(mistake.offset()).isEqualTo("dusk + 15 ".length()));
    }

    @Test
    void aMistakeInTheTimeOfStartsPointsAtIt() {
        assertThat(Texts.starts("6 in 1 kg"))
                .isInstanceOfSatisfying(
                        Parsed.Mistake.class,
                        mistake -> assertThat(mistake.offset()).isEqualTo("6 in 1 ".length()));
    }

    private static Parsed<TimeOfDay> clock(final int hour, final int minute) {
        return new Parsed.Value<>(new TimeOfDay.Clock(LocalTime.of(hour, minute)));
    }
}
