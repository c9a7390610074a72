package slackwater.controller.mode;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slackwater.controller.command.Request.Wants;
import slackwater.model.Mode;

/** What a zone does when its network is gone (S24). */
class LostNetworkTest {

    private static TestYard armed(final String backZone) {
        final String rig = TestRigs.TWO_ZONES.replace("[zone.back]", "[zone.back]\n" + backZone);
        final TestYard yard = TestRigs.ready(TestYard.of(rig, TestRigs.GREETING));
        yard.ask(Wants.ARM, "front").ask(Wants.ARM, "back").scan(9_000);
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);
        assertThat(yard.mode("back")).isEqualTo(Mode.ARMED);
        yard.news();
        return yard;
    }

    private static TestYard alone(final TestYard yard) {
        yard.scanner().commandDesk().linkLost();
        assertThat(yard.scanner().commandDesk().hasNews()).isTrue();
        return yard.scan();
    }

    @Test
    void onlyAZoneThatGoesOnAloneAndHasAHardWiredStopStaysArmed() {
        final TestYard yard = alone(armed("when-alone = \"go-on\"\nhard-wired-stop = true"));

        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.mode("back")).isEqualTo(Mode.ARMED);
        assertThat(yard.news()).contains("stand down front taken").doesNotContain("stand down back taken");
    }

    @Test
    void aHardWiredStopAloneKeepsNothingArmed() {
        final TestYard yard = alone(armed("hard-wired-stop = true"));

        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.mode("back")).isEqualTo(Mode.RESTING);
        assertThat(yard.news()).contains("stand down front taken", "stand down back taken");
    }

    @Test
    void aPersonAtTheKeyMayArmAgainWhileTheNetworkIsGone() {
        final TestYard yard = alone(armed(""));

        yard.set("arm-key", true).scan(9_000);

        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);
    }

    @Test
    void theNetworkIsLostOnceAndNotInEveryScan() {
        final TestYard yard = alone(armed(""));
        yard.news();

        yard.scan(100);

        assertThat(yard.scanner().commandDesk().hasNews()).isFalse();
        assertThat(yard.news()).noneMatch(text -> text.startsWith("stand down"));
    }
}
