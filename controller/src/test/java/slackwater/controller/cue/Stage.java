package slackwater.controller.cue;

import slackwater.controller.plan.LogicBench;

/** A yard of three sensors and lamps a to d, for cues. */
final class Stage {
    static final String TABLES = """
            [input.p]
            kind = "motion"
            [input.q]
            kind = "motion"
            [input.r]
            kind = "motion"
            [output.a]
            kind = "lamp"
            [output.b]
            kind = "lamp"
            [output.c]
            kind = "lamp"
            [output.d]
            kind = "lamp"
            """;

    private Stage() {}

    /** Every sensor is proven inactive. */
    static LogicBench of(final String show) {
        return LogicBench.of(TABLES, show).inactive("p").inactive("q").inactive("r");
    }

    /** One cue with these keys that lights lamp a for a second. */
    static LogicBench greeting(final String keys) {
        return of("[cue.greet]\n" + keys + "\nsteps = [ { energise = \"a\", for = \"1 s\" } ]\n");
    }

    /** One cue with these steps, started by p. */
    static LogicBench steps(final String steps) {
        return of("[cue.greet]\nstarts = \"p\"\nsteps = [\n" + steps + "\n]\n");
    }
}
