package slackwater.simulator.sabotage;

import java.util.List;
import slackwater.simulator.referee.RuleWords;
import slackwater.simulator.sabotage.Workshop.Edit;

/** Every way of breaking the controller that is tried. */
final class Sabotages {
    /** Scenes that a schedule opens. */
    static final List<String> BY_SCHEDULE = List.of("closed", "stopped while open", "clock set back");

    private static final Edit PLAYS_UNARMED = new Edit(
            "mode/ModeStage",
            "image.mayGreet[zone] = mode == Mode.ARMED && latches.hasAirSettled(run, zone);",
            "image.mayGreet[zone] = true;");

    static final List<Sabotage> ALL = List.of(
            one(
                    "a permissive that permits always",
                    RuleWords.PERMISSIVE,
                    "somebody in the reach",
                    "guard/PermissiveGuard",
                    "return needs.areProven(image) ||",
                    "return !needs.areProven(image) || needs.areProven(image) ||"),
            one(
                    "a permissive one scan behind",
                    RuleWords.PERMISSIVE,
                    "somebody enters as it starts",
                    "input/InputStage",
                    "image.provenInactive[index] = provenInactive;",
                    "image.provenInactive[index] = wasProvenInactive;",
                    "final boolean held = ",
                    "final boolean wasProvenInactive = isProvenInactive.is(run);\n            final boolean held = "),
            one(
                    "finish taken as leave to start",
                    RuleWords.PERMISSIVE,
                    "somebody in the reach",
                    "guard/PermissiveGuard",
                    "(finishes && image.energised[output])",
                    "finishes"),
            one(
                    "rest taken as finish",
                    RuleWords.PERMISSIVE,
                    "the wind rises",
                    "guard/PermissiveGuard",
                    "(finishes && image.energised[output])",
                    "image.energised[output]"),
            one(
                    "an input believed at once",
                    RuleWords.PERMISSIVE,
                    "reach just left",
                    "input/InputStage",
                    "proven.start(run, active ? activeAfterNs : inactiveAfterNs);",
                    "proven.start(run, active ? activeAfterNs : 0);"),
            one(
                    "a sensor believed before it is warm",
                    RuleWords.PERMISSIVE,
                    "sensor not warm",
                    "input/InputStage",
                    "warm.start(run, warmUpNs);",
                    "warm.start(run, 0);"),
            one(
                    "an exclusion that forgets its clear time",
                    RuleWords.EXCLUSION,
                    "lid, then jet",
                    "guard/ExclusionGuard",
                    " || clears[i].isRunning(run);",
                    ";"),
            one(
                    "an exclusion with half its clear time",
                    RuleWords.EXCLUSION,
                    "lid, then jet",
                    "guard/ExclusionGuard",
                    "clears[i].start(run, clearAfterNs[i]);",
                    "clears[i].start(run, clearAfterNs[i] / 2);"),
            one(
                    "an exclusion that counts wishes",
                    RuleWords.EXCLUSION,
                    "lid, then jet",
                    "guard/ExclusionGuard",
                    "image.energised[member] || image.next[member] ||",
                    "image.demand[member] ||"),
            one(
                    "nothing shed",
                    RuleWords.SHED,
                    "air gets thin",
                    "guard/ShedGuard",
                    "return image.energised[output] || !isShed(run, output);",
                    "return true;"),
            one(
                    "only the first shed in time",
                    RuleWords.SHED,
                    "air gets thin",
                    "guard/ShedGuard",
                    ".multipliedBy(shed.outputs().indexOf(name))",
                    ".multipliedBy(2L * shed.outputs().indexOf(name))"),
            one(
                    "a load without a limit",
                    RuleWords.LOAD_LIMIT,
                    "two fans",
                    "guard/LoadGuard",
                    "sum(run, image, output) <= shareAmps",
                    "sum(run, image, output) < Double.POSITIVE_INFINITY"),
            one(
                    "the inrush of what has just started forgotten",
                    RuleWords.LOAD_LIMIT,
                    "two fans",
                    "guard/LoadGuard",
                    "inrush[i].isRunning(run) ? inrushAmps[i] : amps[i]",
                    "amps[i]"),
            one(
                    "the inrush of what starts forgotten",
                    RuleWords.LOAD_LIMIT,
                    "two fans",
                    "guard/LoadGuard",
                    "sum += inrushAmps[i];",
                    "sum += amps[i];"),
            one(
                    "flashes counted over half a second",
                    RuleWords.FLASH_LIMIT,
                    "flashes",
                    "guard/FlashGuard",
                    "Duration.ofSeconds(1)",
                    "Duration.ofMillis(500)"),
            one(
                    "a strobe's own rate forgotten",
                    RuleWords.FLASH_LIMIT,
                    "flicker",
                    "guard/FlashGuard",
                    "(int) StrictMath.ceil(member.facts().siOr(\"flash-rate\", 0))",
                    "0"),
            one(
                    "no shortest off",
                    RuleWords.SHORTEST_OFF,
                    "lid again at once",
                    "driver/OutputDriver",
                    "due.start(run, shortestOffNs);",
                    "due.start(run, 0);"),
            one(
                    "a longest on of two scans more",
                    RuleWords.LONGEST_ON,
                    "lid held",
                    "driver/OutputDriver",
                    "due.start(run, longestOnNs);",
                    "due.start(run, longestOnNs + 20_000_000L);"),
            one(
                    "one start too many",
                    RuleWords.STARTS,
                    "lid again and again",
                    "driver/OutputDriver",
                    "most.most(), most.within()",
                    "most.most() + 1, most.within()"),
            one(
                    "a release that is never spent",
                    RuleWords.SPENT,
                    "gull twice",
                    "guard/ReleaseGuard",
                    "isSpent.set(run, true);",
                    "isSpent.set(run, false);"),
            one(
                    "a bought prop pulsed while it runs",
                    RuleWords.STILL_RUNNING,
                    "crab twice",
                    "driver/OutputDriver",
                    "Math.max(limits.shortestOff().toNanos(), runsOn.toNanos())",
                    "limits.shortestOff().toNanos()"),
            one(
                    "a stop loop that nobody looks at",
                    RuleWords.STOP,
                    "stopped in mid-stroke",
                    "mode/ModeStage",
                    "if (image.sawInactive[loop])",
                    "if (loop < 0)"),
            one(
                    "a stop that does not latch",
                    RuleWords.STOP,
                    "stopped and armed without a reset",
                    "latch/Latches",
                    "stop.set(run, true);",
                    "stop.set(run, false);"),
            one(
                    "a reset that starts",
                    RuleWords.STOP,
                    "stopped and reset, but not armed",
                    "latch/Latches",
                    "latched(run, image, \"stop\", why);\n        }\n        restAllWishes(run);",
                    "latched(run, image, \"stop\", why);\n        }"),
            one(
                    "a reset button that was never seen open",
                    RuleWords.STOP,
                    "a reset button that sticks",
                    "mode/ResetButtons",
                    "image.provenActive[input] && wasSeenOpen[i].is(run)",
                    "image.provenActive[input]"),
            one(
                    "a lockout that is not taken",
                    RuleWords.LOCKOUT,
                    "locked out",
                    "mode/Desk",
                    "if (commands.takeLockoutNews())",
                    "if (commands.takeLockoutNews() && places.outputs().isEmpty())"),
            one(
                    "arming without a warning",
                    RuleWords.BEFORE_ARM,
                    "asked during the warning",
                    "mode/Zones",
                    "latches.warn(run, zone, warningNs);",
                    "latches.warn(run, zone, 0);"),
            one(
                    "a warning that goes on with somebody in the reach",
                    RuleWords.BEFORE_ARM,
                    "somebody enters during the warning",
                    "mode/Zones",
                    "if (rules.isReachEntered(image, zone))",
                    "if (zone < 0)"),
            one(
                    "a strobe allowed in the warning",
                    RuleWords.BEFORE_ARM,
                    "asked during the warning",
                    "mode/ModeTable",
                    "case HEATER, LAMP, SOUNDER, FAN -> true;\n            case VALVE, AIR_SUPPLY, PUMP, STROBE, MISTER",
                    "case HEATER, LAMP, SOUNDER, FAN, STROBE -> true;\n            case VALVE, AIR_SUPPLY, PUMP, MISTER"),
            new Sabotage(
                    "cues that play unarmed, and a table that allows them",
                    RuleWords.STOP,
                    "before anybody arms",
                    List.of(
                            PLAYS_UNARMED,
                            new Edit(
                                    "mode/ModeTable",
                                    "case RESTING -> family == Family.FAN ||",
                                    "case RESTING -> family == Family.VALVE || family == Family.FAN ||"))),
            one(
                    "a stand-down button that nobody looks at",
                    RuleWords.BEFORE_ARM,
                    "stood down",
                    "mode/ModeStage",
                    "if (image.sawActive[button])",
                    "if (button < 0)"),
            one(
                    "a key that cannot be turned off",
                    RuleWords.BEFORE_ARM,
                    "key turned off",
                    "mode/ModeStage",
                    "if (image.fell[key])",
                    "if (key < 0)"),
            one(
                    "a trip that does not latch",
                    RuleWords.TRIP,
                    "water came back",
                    "mode/Trips",
                    "trip.isLatched.set(run, true);\n                trip.since.mark(run);",
                    "trip.since.mark(run);"),
            one(
                    "a schedule that does not close",
                    RuleWords.BEFORE_ARM,
                    "closed",
                    "mode/ScheduleStage",
                    "asks = Asks.CLOSE;",
                    "asks = Asks.NOTHING;"),
            one(
                    "a schedule that arms whenever it is open",
                    RuleWords.STOP,
                    "stopped while open",
                    "mode/ScheduleStage",
                    "if (before < opensMs.of(run) && now >= opensMs.of(run))",
                    "if (now >= opensMs.of(run))",
                    "openedDay.of(run) <= day.of(run)",
                    "day.of(run) >= 0"),
            one(
                    "a schedule that opens twice on a day",
                    RuleWords.BEFORE_ARM,
                    "clock set back",
                    "mode/ScheduleStage",
                    "openedDay.of(run) <= day.of(run)",
                    "day.of(run) >= 0"),
            one(
                    "outputs energised at rest level",
                    RuleWords.BEFORE_ARM,
                    "before anybody arms",
                    "scan/Scan",
                    "outputs.get(i).restLevel().isHigh()",
                    "!outputs.get(i).restLevel().isHigh()"),
            one(
                    "a gap in the hold-up pulses that nobody notices",
                    RuleWords.SUPPLY_LOST,
                    "hung computer",
                    "watchdog/HoldUpPulses",
                    "run.atNs() - lastEdge.atNs(run) >= dropOutNs",
                    "run.atNs() < 0"),
            one(
                    "an exception swallowed",
                    RuleWords.LONGEST_ON,
                    "cue that throws",
                    "scan/Scan",
                    "failToRest(broken);",
                    "image.note(new Event.Limited(run.atNs(), \"scan\", broken.toString()));"),
            one(
                    "starts written before rests",
                    RuleWords.LOAD_LIMIT,
                    "between writes",
                    "pins/PinWriter",
                    "            if (!image.next[output]) {\n                gate.rest",
                    """
                                if (image.next[output] && !image.energised[output]) {
                                    gate.energise(output);
                                    note(run, image, output, true, changes);
                                }
                            }
                            for (int output = 0; output < settles.length; output++) {
                                if (!image.next[output]) {
                                    gate.rest\
                    """));

    private Sabotages() {}

    private static Sabotage one(
            final String what,
            final String rule,
            final String scene,
            final String file,
            final String search,
            final String replacement) {
        return new Sabotage(what, rule, scene, List.of(new Edit(file, search, replacement)));
    }

    private static Sabotage one(
            final String what, final String rule, final String scene, final String file, final String... pairs) {
        return new Sabotage(
                what, rule, scene, List.of(new Edit(file, pairs[0], pairs[1]), new Edit(file, pairs[2], pairs[3])));
    }
}
