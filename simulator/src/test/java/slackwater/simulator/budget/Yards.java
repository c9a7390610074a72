package slackwater.simulator.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import slackwater.model.file.Reading;
import slackwater.model.file.RigFolder;

/** Small rigs as text, and their budgets. */
final class Yards {
    /** One valve with a 25 mm cylinder of 250 mm, a motion sensor before it, a small compressor. */
    static final String RIG = """
            [way]
            points = [["0 m", "0 m"], ["20 m", "0 m"]]
            width = "1.5 m"
            groups-per-hour = 60
            [air]
            tank = "24 l"
            cut-in = "6 bar"
            cut-out = "8 bar"
            delivers = "6 l/min"
            working = "4 bar"
            [controller.shed]
            board = "pi-4"
            [input.path]
            kind = "motion"
            at = ["5 m", "2 m"]
            facing = "270 deg"
            angle = "60 deg"
            range = "4 m"
            [output.lid]
            kind = "valve"
            on-power-loss = "spring-returns"
            longest-on = "2 s"
            unguarded = "a test"
            at = ["10 m", "2 m"]
            bore = "32 mm"
            travel = "0.3 m"
            moving-mass = "3 kg"
            strokes-in = "0.4 s"
            opens-in = "20 ms"
            """;

    static final String SHOW = """
            [cue.greet]
            starts = "path"
            hold-off = "20 s"
            steps = [
              { at = "0.5 s", energise = "lid", for = "1.5 s" },
            ]
            """;

    private Yards() {}

    static Budget budget(final Path folder, final String rig, final String show) {
        final Reading reading = read(folder, rig, show);
        assertThat(reading.rig()).as("findings: %s", reading.findings()).isPresent();
        return Budget.of(reading.rig().orElseThrow(), reading.show().orElseThrow());
    }

    static Reading read(final Path folder, final String rig, final String show) {
        try {
            Files.createDirectories(folder.resolve("shows"));
            Files.writeString(folder.resolve("rig.toml"), rig);
            Files.writeString(folder.resolve("shows").resolve("first.toml"), show);
        } catch (final IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return RigFolder.read(folder, Optional.empty(), Yards.class.getClassLoader());
    }

    /** The only line that is about this. */
    static Line line(final Budget budget, final String about) {
        final var found = budget.lines().stream()
                .filter(line -> line.about().equals(about))
                .toList();
        assertThat(found)
                .as(
                        "lines about \"%s\" among %s",
                        about, budget.lines().stream().map(Line::about).toList())
                .hasSize(1);
        return found.get(0);
    }

    /** What it asks, in its own unit. */
    static double asks(final Line line) {
        return line.asks().orElseThrow().number();
    }

    /** What it has, in its own unit. */
    static double has(final Line line) {
        return line.has().orElseThrow().number();
    }
}
