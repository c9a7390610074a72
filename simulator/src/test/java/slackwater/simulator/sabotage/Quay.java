package slackwater.simulator.sabotage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.file.Reading;
import slackwater.model.file.RigFolder;

/** A rig with one of everything that has a limit, and a button to ask for each. */
public final class Quay {
    private static final String RIG = """
            name = "Quay"
            [place]
            latitude = 54.1
            longitude = -3.2
            time-zone = "UTC"
            [controller.quay]
            board = "pi-4"
            hold-up = { pin = 12, drop-out = "400 ms", seen-pin = 4 }
            [arming]
            warning = "5 s"
            warns-with = ["lamp", "flare"]
            [input.stop-loop]
            kind = "stop-loop"
            active = "low"
            [input.reset]
            kind = "button"
            use = "reset"
            [input.arm-key]
            kind = "key"
            use = "arm"
            [input.stand-down]
            kind = "button"
            use = "stand-down"
            [input.hung]
            kind = "button"
            use = "hung"
            of = "gull"
            [input.reach]
            kind = "beam"
            reach-of = ["lid"]
            [input.calm]
            kind = "beam"
            warm-up = "20 s"
            [input.water]
            kind = "level"
            of = "mist"
            """
            + "[input.thin-air]\nkind = \"key\"\n" + button("bell") + button("lid") + button("lid-held") + button("jet")
            + button("jet-held") + button("flash")
            + button("flash-too") + button("fan") + button("fan-too") + button("fans") + button("mist")
            + button("gull") + button("crab") + button("flicker") + button("trouble")
            + """
            [output.lid]
            kind = "valve"
            active = "low"
            on-power-loss = "spring-returns"
            longest-on = "2 s"
            shortest-off = "1 s"
            starts = "3 in 20 s"
            [output.jet]
            kind = "valve"
            on-power-loss = "spring-returns"
            longest-on = "5 s"
            [output.flash]
            kind = "strobe"
            longest-on = "0.2 s"
            one-flash-per-pulse = true
            [output.flash-too]
            kind = "strobe"
            longest-on = "0.2 s"
            one-flash-per-pulse = true
            [output.flare]
            kind = "strobe"
            longest-on = "20 s"
            one-flash-per-pulse = true
            [output.flicker]
            kind = "strobe"
            longest-on = "2 s"
            flash-rate = "3 Hz"
            [output.fan]
            kind = "fan"
            current = "1 A"
            inrush = "3 A for 200 ms"
            [output.fan-big]
            kind = "fan"
            current = "2 A"
            [output.fan-too]
            kind = "fan"
            current = "1 A"
            inrush = "3 A for 200 ms"
            [output.lamp]
            kind = "lamp"
            current = "0.5 A"
            [output.mist]
            kind = "mister"
            longest-on = "5 s"
            [output.gull]
            kind = "release"
            on-power-loss = "stays"
            longest-on = "0.5 s"
            [output.crab]
            kind = "contact"
            on-power-loss = "stays"
            longest-on = "0.5 s"
            run-time = "6 s"
            [output.bell]
            kind = "sounder"
            longest-on = "1 s"
            feedback = "load"
            [permissive.reach-clear]
            outputs = ["lid"]
            needs = ["not reach"]
            begun = "finish"
            [permissive.calm]
            outputs = ["jet"]
            needs = ["not calm"]
            begun = "rest"
            [trip.dry]
            outputs = ["mist"]
            when = ["not water"]
            begun = "rest"
            [exclusion.one-hose]
            outputs = ["lid", "jet"]
            clear-after = "0.5 s"
            [shed.thin]
            outputs = ["bell", "fan-big"]
            needs = ["not thin-air"]
            next-after = "2 s"
            [load-limit.supply]
            outputs = ["fan", "fan-big", "fan-too"]
            limit = "4 A"
            [flash-limit.eyes]
            outputs = ["flash", "flash-too", "flicker"]
            flashes = 2
            """;

    private static final String CUES = cue("lid", "lid", "1 s") + cue("lid-held", "lid", "6 s")
            + cue("jet", "jet", "0.5 s") + cue("jet-held", "jet", "4 s") + cue("flash", "flash", "0.1 s")
            + cue("flash-too", "flash-too", "0.1 s") + cue("fan", "fan", "3 s") + cue("fan-too", "fan-too", "3 s")
            + cue("mist", "mist", "1 s") + cue("gull", "gull", "0.3 s") + cue("crab", "crab", "0.3 s")
            + cue("flicker", "flicker", "1.5 s") + cue("bell", "bell", "0.5 s")
            + """
            [cue.fans]
            starts = "ask-fans"
            steps = [ { energise = "fan-big", for = "1 s" }, { energise = "fan-too", for = "1 s" } ]
            [cue.trouble]
            starts = "ask-trouble"
            code = "trouble"
            """;

    private static final String SCHEDULE = """
            [schedule]
            opens = "18:00"
            closes = "18:01"
            """;

    private Quay() {}

    /** A rig with one of its shows. */
    public record Set(Rig rig, Show show) {}

    /** Armed by the key. */
    public static Set byKey() {
        return read(CUES);
    }

    /** Open from 18:00 to 18:01 UTC on every day. */
    public static Set bySchedule() {
        return read(SCHEDULE + CUES);
    }

    private static Set read(final String show) {
        try {
            final Path folder = Files.createTempDirectory("quay");
            final Path shows = Files.createDirectory(folder.resolve("shows"));
            final Path rigFile = Files.writeString(folder.resolve("rig.toml"), RIG, StandardCharsets.UTF_8);
            final Path showFile = Files.writeString(shows.resolve("quay.toml"), show, StandardCharsets.UTF_8);
            final Reading reading = RigFolder.read(folder, Optional.empty(), Quay.class.getClassLoader());
            for (final Path path : java.util.List.of(showFile, rigFile, shows, folder)) {
                Files.delete(path);
            }
            if (reading.rig().isEmpty() || reading.show().isEmpty()) {
                throw new IllegalStateException(String.valueOf(reading.findings()));
            }
            return new Set(reading.rig().get(), reading.show().get());
        } catch (final IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String button(final String name) {
        return "[input.ask-" + name + "]\nkind = \"button\"\n";
    }

    private static String cue(final String name, final String output, final String lasts) {
        return "[cue." + name + "]\nstarts = \"ask-" + name + "\"\nsteps = [ { energise = \"" + output + "\", for = \""
                + lasts + "\" } ]\n";
    }
}
