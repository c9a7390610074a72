package slackwater.model.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.model.Air;
import slackwater.model.Circuit;
import slackwater.model.Feed;
import slackwater.model.Limits;
import slackwater.model.Rig;
import slackwater.model.Supply;
import slackwater.model.Weather;
import slackwater.model.engineering.LoadType;
import slackwater.model.finding.Finding;

/** What stands around a rig, read from the tables that only simulator and budget use. */
class SurroundingsTest {
    private static final String AROUND = """

            [weather]
            temperature = "8 degC"
            humidity = "80 %"
            wind = "1.5 m/s"
            wind-from = "180 deg"

            [circuit.shed]
            voltage = "230 V"
            breaker = "16 A"
            ground-fault = "30 mA"
            others = "1.2 A"

            [supply.twelve]
            voltage = "12 V"
            gives = "10 A"
            fed-by = "shed"
            efficiency = "85 %"

            [air]
            tank = "24 l"
            cut-in = "6 bar"
            cut-out = "8 bar"
            delivers = "90 l/min"
            working = "2.5 bar"
            flow = "600 l/min"
            leak = "1 l/min"
            starts = "10 in 1 h"
            duty = "60 %"
            current = "6 A"
            inrush = "30 A for 500 ms"
            fed-by = "shed"

            [output.horn]
            kind = "sounder"
            longest-on = "1 s"
            unguarded = "a test"
            current = "0.6 A"
            fed-by = "twelve"
            cable = "12 m of 0.75 mm2"
            switch = { kind = "relay", rated = "10 A", pin-current = "5 mA", operates-in = "10 ms", releases-in = "5 ms" }
            load = "motor"
            """;

    @TempDir
    private Path folder;

    @Test
    void everyTableIsRead() {
        final Rig rig = read(AROUND).rig().orElseThrow();
        assertThat(rig.surroundings().weather()).contains(new Weather(8, 0.8, 1.5, 180));
        assertThat(rig.surroundings().circuits())
                .containsExactly(new Circuit("shed", 230, 16, OptionalDouble.of(0.03), 1.2));
        assertThat(rig.surroundings().supplies())
                .containsExactly(new Supply("twelve", 12, 10, Optional.of("shed"), OptionalDouble.of(0.85)));
        final Air.Plate plate = rig.surroundings().air().orElseThrow().plate();
        assertThat(plate.flowM3PerS()).hasValue(0.01);
        assertThat(plate.leakM3PerS().orElseThrow()).isEqualTo(0.001 / 60);
        assertThat(plate.starts()).contains(new Limits.Starts(10, Duration.ofHours(1)));
        assertThat(plate.duty()).hasValue(0.6);
        assertThat(plate.load().inrushAmps()).isEqualTo(30);
        assertThat(plate.load().feed().from()).contains("shed");
        final Feed feed = rig.output("horn").orElseThrow().load().feed();
        assertThat(feed.from()).contains("twelve");
        assertThat(feed.cable()).contains(new Feed.Cable(12, 0.75e-6));
        assertThat(feed.type()).contains(LoadType.MOTOR);
        assertThat(feed.through())
                .contains(new Feed.SwitchedBy(
                        Feed.Device.RELAY, 10, 0.005, Duration.ofMillis(10), Duration.ofMillis(5), Duration.ZERO));
    }

    @Test
    void weatherLeftOutIsAsUsual() {
        final Rig rig = read("\n[weather]\nwind = \"3 m/s\"\n").rig().orElseThrow();
        assertThat(rig.surroundings().weather())
                .contains(new Weather(
                        Weather.USUAL.temperatureC(), Weather.USUAL.humidity(), 3, Weather.USUAL.windFromDeg()));
    }

    @Test
    void wrongFiguresAreFoundWhereTheyStand() {
        final String wrong = AROUND.replace("humidity = \"80 %\"", "humidity = \"101 %\"")
                .replace("breaker = \"16 A\"", "breaker = \"0 A\"")
                .replace("duty = \"60 %\"", "duty = \"0 %\"")
                .replace("12 m of 0.75 mm2", "12 m of 0.75 mm")
                .replace("fed-by = \"twelve\"", "fed-by = \"twelv\"")
                .replace("kind = \"relay\"", "kind = \"rely\"");
        assertThat(codes(read(wrong)))
                .containsExactly(
                        "out-of-range",
                        "out-of-range",
                        "out-of-range",
                        "unknown-supply",
                        "bad-quantity",
                        "unknown-word");
    }

    @Test
    void aSupplyIsFedByACircuitAndNotBySupply() {
        assertThat(codes(read(AROUND.replace(
                        "gives = \"10 A\"\nfed-by = \"shed\"", "gives = \"10 A\"\nfed-by = \"twelve\""))))
                .containsExactly("unknown-circuit");
    }

    private Reading read(final String more) {
        final String small = Folders.resource("small/rig.toml");
        final String air = small.substring(small.indexOf("[air]"), small.indexOf("[controller.porch]"));
        final String rig = (more.contains("[air]") ? small.replace(air, "") : small) + more;
        Folders.with(folder, rig, Folders.resource("small/shows/first.toml"));
        final Reading reading = Folders.read(folder);
        return reading;
    }

    private static List<String> codes(final Reading reading) {
        return reading.findings().stream().map(Finding::code).toList();
    }
}
