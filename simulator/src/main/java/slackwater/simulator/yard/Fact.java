package slackwater.simulator.yard;

import java.time.Duration;
import slackwater.model.Facts;

/** The keys of kinds that the plants read, in one place, with the times among them in seconds. */
final class Fact {
    static final String AIR = "air";
    static final String AIR_PER_STROKE = "air-per-stroke";
    static final String BLOCK = "block";
    static final String BORE = "bore";
    static final String CLOSES_IN = "closes-in";
    static final String CRITICAL_RATIO = "critical-ratio";
    static final String DISCS = "discs";
    static final String EXHAUST = "exhaust";
    static final String FALSE_AN_HOUR = "false-an-hour";
    static final String FLASH_RATE = "flash-rate";
    static final String FLOW = "flow";
    static final String FRICTION = "friction";
    static final String GLYCOL = "glycol";
    static final String HEATED_BY = "heated-by";
    static final String HOLDS = "holds";
    static final String HOSE = "hose";
    static final String HOSE_BORE = "hose-bore";
    static final String LIFTS = "lifts";
    static final String LINE = "line";
    static final String MOVING_MASS = "moving-mass";
    static final String NOZZLE = "nozzle";
    static final String OF = "of";
    static final String ONE_PULSE = "one-pulse";
    static final String OPENS_IN = "opens-in";
    static final String POWER = "power";
    static final String PRESSURE = "pressure";
    static final String PULSE = "pulse";
    static final String RESPONDS_IN = "responds-in";
    static final String RETURNS_IN = "returns-in";
    static final String ROD = "rod";
    static final String RUN_TIME = "run-time";
    static final String SET_POINT = "set-point";
    static final String SPRING = "spring";
    static final String STROKES_IN = "strokes-in";
    static final String THERMOSTAT = "thermostat";
    static final String THROTTLE = "throttle";
    static final String TRAVEL = "travel";
    static final String USES = "uses";
    static final String WARMS_IN = "warms-in";

    private Fact() {}

    static double secondsOr(final Facts facts, final String key, final double assumedS) {
        return facts.duration(key).map(Fact::seconds).orElse(assumedS);
    }

    static double seconds(final Duration time) {
        return time.toNanos() / State.NS_PER_S;
    }

    static long nanos(final double seconds) {
        return StrictMath.round(seconds * State.NS_PER_S);
    }
}
