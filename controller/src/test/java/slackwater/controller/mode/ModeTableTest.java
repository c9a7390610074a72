package slackwater.controller.mode;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import slackwater.controller.command.Request.Wants;
import slackwater.model.Mode;
import slackwater.model.kind.Family;

/** Every cell of the table of kinds and modes, and the wishes of the rig itself that follow it (S15). */
class ModeTableTest {
    /** o may be energised, w only while its zone is warming, - never. */
    private static final String TABLE = """
            family      STOPPED FAULTED LOCKED_OUT BENCH WARNING ARMED RESTING
            valve       -       -       -          o     -       o     -
            air_supply  -       -       -          -     -       o     -
            pump        -       -       -          o     -       o     -
            heater      -       -       -          -     o       o     w
            strobe      -       -       -          o     -       o     -
            lamp        -       -       -          o     o       o     -
            fan         -       -       -          o     o       o     o
            mister      -       -       -          o     -       o     -
            release     -       -       -          o     -       o     -
            sounder     -       -       -          o     o       o     -
            contact     -       -       -          o     -       o     -
            """;

    static Stream<Arguments> cells() {
        final List<String[]> rows =
                TABLE.lines().map(line -> line.trim().split(" +")).toList();
        final List<Arguments> cells = new ArrayList<>();
        for (final String[] row : rows.subList(1, rows.size())) {
            for (int column = 1; column < row.length; column++) {
                cells.add(Arguments.of(
                        Family.valueOf(row[0].toUpperCase(Locale.ROOT)),
                        Mode.valueOf(rows.get(0)[column]),
                        row[column]));
            }
        }
        return cells.stream();
    }

    @ParameterizedTest
    @MethodSource("cells")
    void everyCellIsAsTheTableSays(final Family family, final Mode mode, final String cell) {
        assertThat(ModeTable.allows(family, mode, false)).isEqualTo(cell.equals("o"));
        assertThat(ModeTable.allows(family, mode, true)).isEqualTo(!cell.equals("-"));
    }

    @Test
    void theTableHasACellForEveryFamilyAndMode() {
        assertThat(cells()).hasSize(Family.values().length * Mode.values().length);
    }

    @Test
    void airIsSuppliedOnlyWhileArmed() {
        final TestYard yard = TestRigs.armed();
        assertThat(yard.isEnergised("air")).isTrue();

        yard.press("off", 100);
        assertThat(yard.isEnergised("air")).isFalse();

        yard.ask(Wants.BENCH, "front").scan(100);
        assertThat(yard.isEnergised("air")).isFalse();

        yard.press("off", 100).ask(Wants.ARM, "front").scan(4_990);
        assertThat(yard.isEnergised("air")).isFalse();
        yard.scan();
        assertThat(yard.isEnergised("air")).isTrue();

        yard.scanner().commandDesk().stop();
        yard.scan();
        assertThat(yard.isEnergised("air")).isFalse();
    }

    @Test
    void aHeaterWarmsAtRestOnlyByItsOwnPermission() {
        final TestYard yard = TestRigs.ready().scan(100);
        assertThat(yard.isEnergised("heater")).isFalse();

        yard.ask(Wants.WARM, "front");
        assertThat(yard.isEnergised("heater")).isTrue();
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.news()).contains("warm front by Maren taken");

        yard.press("off", 100);
        assertThat(yard.isEnergised("heater")).isFalse();
    }

    @Test
    void aLatchEndsTheWarmingAndAResetDoesNotBringItBack() {
        final TestYard yard = TestRigs.ready().ask(Wants.WARM, "front");

        yard.scanner().commandDesk().stop();
        yard.scan();
        assertThat(yard.isEnergised("heater")).isFalse();
        yard.ask(Wants.WARM, "front");
        assertThat(yard.news()).contains("warm front by Maren refused: something is latched");

        yard.press("reset", 100);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.isEnergised("heater")).isFalse();
    }

    @Test
    void warmingEndsWithTheEveningThatItWasFor() {
        final TestYard yard = TestRigs.ready().ask(Wants.WARM, "front");

        yard.ask(Wants.ARM, "front").scan(5_000);
        assertThat(yard.isEnergised("heater")).isTrue();

        yard.press("off", 100);
        assertThat(yard.isEnergised("heater")).isFalse();
    }

    @Test
    void theBenchTakesTheHeatAway() {
        final TestYard yard = TestRigs.ready().ask(Wants.WARM, "front").ask(Wants.BENCH, "front");
        assertThat(yard.isEnergised("heater")).isFalse();

        yard.press("off", 100);
        assertThat(yard.isEnergised("heater")).isFalse();
    }

    @Test
    void aHeaterLockedOutDoesNotWarmAndAfterItsReleaseAwaitsAnArm() {
        final TestYard yard = TestRigs.ready().ask(Wants.WARM, "front");
        yard.scanner().commandDesk().lockOutOutput("heater", "Ole");
        yard.scan();
        assertThat(yard.isEnergised("heater")).isFalse();

        yard.send(Wants.UNLOCK_OUTPUT, "heater", "Ole", TestYard.secretOf("Ole"))
                .scan(100);

        assertThat(yard.isEnergised("heater")).isFalse();
        assertThat(yard.outputMode("heater")).isEqualTo(Mode.RESTING);
    }

    @Test
    void lampAndSounderNamedForItGiveTheWarningAndOnlyThen() {
        final TestYard yard = TestRigs.ready().ask(Wants.ARM, "front");
        assertThat(yard.isEnergised("glow")).isTrue();
        assertThat(yard.isEnergised("horn")).isTrue();
        assertThat(yard.isEnergised("lantern")).isFalse();

        yard.scan(4_990);
        assertThat(yard.isEnergised("horn")).isTrue();

        yard.scan();
        assertThat(yard.mode("front")).isEqualTo(Mode.ARMED);
        assertThat(yard.isEnergised("glow")).isFalse();
        assertThat(yard.isEnergised("horn")).isFalse();
    }

    /** Armed, greeted, and the fan's demand over: it runs on. */
    private static TestYard runningOn() {
        final TestYard yard = TestRigs.armed().set("path", true).scan(2_100);
        assertThat(yard.isEnergised("fan")).isTrue();
        assertThat(yard.isEnergised("lid")).isFalse();
        return yard;
    }

    @Test
    void aFanRunsOnForItsTimeAndNoLonger() {
        final TestYard yard = TestRigs.armed().set("path", true).scan();
        yard.scan(2_000 + 8_000 - 10);
        assertThat(yard.isEnergised("fan")).isTrue();

        yard.scan();
        assertThat(yard.isEnergised("fan")).isFalse();
    }

    @Test
    void aFanRunsOnAtRest() {
        final TestYard yard = runningOn().press("off", 100);

        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.isEnergised("fan")).isTrue();
    }

    @Test
    void aFanDoesNotRunOnInStopAndDoesNotResume() {
        final TestYard yard = runningOn();
        yard.scanner().commandDesk().stop();
        assertThat(yard.scan().isEnergised("fan")).isFalse();

        assertThat(yard.press("reset", 100).isEnergised("fan")).isFalse();
    }

    @Test
    void aFanDoesNotRunOnInAFaultAndDoesNotResume() {
        final TestYard yard = runningOn();
        yard.plan().latches().faultZone(yard.scanner().run(), yard.scanner().image(), 0, "a test says so");
        assertThat(yard.scan().isEnergised("fan")).isFalse();

        assertThat(yard.press("reset", 100).isEnergised("fan")).isFalse();
    }

    @Test
    void aFanDoesNotRunOnInALockoutAndDoesNotResume() {
        final TestYard yard = runningOn();
        yard.scanner().commandDesk().lockOutZone("front", "Ole");
        assertThat(yard.scan().isEnergised("fan")).isFalse();

        yard.send(Wants.UNLOCK_ZONE, "front", "Ole", TestYard.secretOf("Ole")).scan(100);
        assertThat(yard.mode("front")).isEqualTo(Mode.RESTING);
        assertThat(yard.isEnergised("fan")).isFalse();
    }

    @Test
    void aFanDoesNotRunOnOnTheBench() {
        final TestYard yard = runningOn().press("off", 100).ask(Wants.BENCH, "front");
        assertThat(yard.mode("front")).isEqualTo(Mode.BENCH);
        assertThat(yard.isEnergised("fan")).isFalse();

        assertThat(yard.press("off", 100).isEnergised("fan")).isFalse();
    }

    @Test
    void aStandDownThatSomebodySendsEndsTheWarmingToo() {
        final TestYard yard = TestRigs.ready().ask(Wants.WARM, "front");
        assertThat(yard.isEnergised("heater")).isTrue();

        yard.scanner().commandDesk().standDown("front");

        assertThat(yard.scan().isEnergised("heater")).isFalse();
    }

    /** Nobody reads about a refusal of what nobody asked for. */
    @Test
    void aHeaterThatMayNotWarmAsksForNothingAtRestNorOnTheBench() {
        final TestYard yard = TestYard.of(TestRigs.TWO_ZONES).scan(100);
        assertThat(yard.news()).noneMatch(text -> text.startsWith("heater may not"));

        final TestYard bench = TestRigs.ready().ask(Wants.WARM, "front").ask(Wants.BENCH, "front");
        bench.scan(100);
        assertThat(bench.news()).contains("heater at rest").noneMatch(text -> text.startsWith("heater may not"));
    }
}
