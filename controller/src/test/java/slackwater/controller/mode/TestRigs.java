package slackwater.controller.mode;

/** Texts of rigs for the tests of modes. */
public final class TestRigs {
    /** Two zones on one controller: one with everything that moves, heats or blows, and one with a lamp and a jet. */
    public static final String TWO_ZONES =
            """
            [place]
            latitude = 51.5
            longitude = -0.1333
            time-zone = "Europe/London"

            [controller.shed]
            board = "pi-4"

            [zone.front]
            [zone.back]

            [arming]
            warning = "5 s"
            warns-with = ["glow", "horn"]
            air-settles = "3 s"

            [input.stop-loop]
            kind = "stop-loop"
            pins = { shed = 5 }
            active = "high"

            [input.reset]
            kind = "button"
            zone = "front"
            use = "reset"

            [input.arm-key]
            kind = "key"
            zone = "front"
            use = "arm"

            [input.off]
            kind = "button"
            zone = "front"
            use = "stand-down"

            [input.curtain]
            kind = "beam"
            zone = "front"
            reach-of = ["lid"]

            [input.path]
            kind = "beam"
            zone = "front"

            [input.water]
            kind = "level"
            zone = "front"

            [input.jam]
            kind = "ready"
            zone = "front"

            [output.air]
            kind = "air-supply"
            zone = "front"

            [output.lid]
            kind = "valve"
            zone = "front"
            on-power-loss = "spring-returns"
            longest-on = "4 s"

            [output.mist]
            kind = "mister"
            zone = "front"
            longest-on = "30 s"

            [output.heater]
            kind = "heater"
            zone = "front"
            cut-out = "thermal fuse"

            [output.fan]
            kind = "fan"
            zone = "front"
            after-run = "8 s"

            [output.glow]
            kind = "lamp"
            zone = "front"

            [output.horn]
            kind = "sounder"
            zone = "front"

            [output.jet]
            kind = "valve"
            zone = "back"
            on-power-loss = "spring-returns"
            longest-on = "1 s"

            [output.lantern]
            kind = "lamp"
            zone = "back"

            [trip.dry]
            outputs = ["mist"]
            when = ["not water"]
            begun = "rest"

            [trip.jammed]
            outputs = ["lid"]
            when = ["jam"]
            begun = "finish"
            """;

    /** Somebody on the path lifts the lid, and mist and fan go with it. */
    public static final String GREETING =
            """
            [cue.greet]
            zone = "front"
            starts = "path"
            steps = [
              { energise = "lid", for = "2 s" },
              { at = "0 s", energise = "mist", for = "2 s" },
              { at = "0 s", energise = "fan", for = "2 s" },
            ]
            """;

    private TestRigs() {}

    /** A yard of two zones where everything has been tried, the stop is reset and nothing is latched. */
    public static TestYard ready() {
        return ready(TestYard.of(TWO_ZONES, GREETING));
    }

    /** The person who opens the yard: tries the stop, walks through the curtain, resets. */
    public static TestYard ready(final TestYard yard) {
        yard.set("stop-loop", true).set("water", true).set("reset", false).scan(1_000);
        yard.set("stop-loop", false).scan(300).set("stop-loop", true).scan(300);
        yard.set("curtain", true).scan(300).set("curtain", false).scan(300);
        yard.press("reset", 100);
        yard.news();
        return yard;
    }

    /** The same, armed, with the air settled. */
    public static TestYard armed() {
        final TestYard yard = ready();
        yard.ask(slackwater.controller.command.Request.Wants.ARM, "front");
        yard.ask(slackwater.controller.command.Request.Wants.ARM, "back");
        yard.scan(9_000);
        yard.news();
        return yard;
    }
}
