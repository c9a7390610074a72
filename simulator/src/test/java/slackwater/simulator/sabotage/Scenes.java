package slackwater.simulator.sabotage;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import slackwater.controller.cue.Asking;
import slackwater.controller.cue.CueCode;
import slackwater.controller.cue.Playing;
import slackwater.controller.image.Places;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.model.Cue;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.simulator.bench.Setup;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.referee.Act;
import slackwater.simulator.referee.Violation;

/** Short plays on the quay in which everything keeps its limits, and which a fault in the controller would spoil. */
public final class Scenes {
    private static final Duration SCAN = Duration.ofMillis(10);
    /** 17:59:30 UTC on the first day of 1970. */
    private static final long BEFORE_OPENING_MS = (17 * 60 + 59) * 60_000L + 30_000L;

    private Scenes() {}

    /** What the referee finds in one of the scenes. */
    public static List<Violation> play(final String scene, final Rig rig, final Show show) {
        if (scene.equals("between writes")) {
            return Between.oneFanAfterAnother(rig, show);
        }
        final List<Violation> found = new ArrayList<>();
        for (final VirtualBench bench : benches(scene, rig, show)) {
            found.addAll(bench.violations());
        }
        return found;
    }

    /** How often an output started in one of the scenes. */
    public static int starts(final String scene, final Rig rig, final Show show, final String output) {
        return benches(scene, rig, show).stream()
                .flatMap(bench -> bench.referee().figures().outputs().stream())
                .filter(figures -> figures.name().equals(output))
                .mapToInt(figures -> figures.starts())
                .sum();
    }

    /** A bench for the quay. */
    public static Setup setup(final Rig rig, final Show show) {
        return Setup.of(rig, show).startingAt(BEFORE_OPENING_MS).withCodes(List.of(new Trouble()));
    }

    private static List<VirtualBench> benches(final String scene, final Rig rig, final Show show) {
        final VirtualBench bench = new VirtualBench(setup(rig, show));
        return switch (scene) {
            case "somebody in the reach" -> List.of(reach(armed(bench)));
            case "somebody enters as it starts" -> entering(armed(bench));
            case "the wind rises" -> List.of(wind(later(bench)));
            case "sensor not warm" -> List.of(ask(armed(bench), "jet"));
            case "reach just left" -> List.of(justLeft(armed(bench)));
            case "lid, then jet" -> afterLid(later(bench));
            case "two fans" -> fans(armed(bench));
            case "flashes" -> List.of(flashes(armed(bench)));
            case "lid again at once" -> List.of(lids(armed(bench), 2, 1_500));
            case "lid again and again" -> List.of(lids(armed(bench), 5, 2_500));
            case "lid held" -> List.of(pass(ask(armed(bench), "lid-held"), 8_000));
            case "gull twice" -> List.of(twice(armed(bench), "gull"));
            case "crab twice" -> List.of(twice(armed(bench), "crab"));
            case "air gets thin" -> thin(armed(bench));
            case "flicker" -> List.of(pass(ask(armed(bench), "flicker"), 3_000));
            case "before anybody arms" -> List.of(pass(ask(tried(bench), "lid"), 2_000));
            case "stopped in mid-stroke" -> List.of(stopped(armed(bench)));
            case "stopped and armed without a reset" -> List.of(unreset(armed(bench)));
            case "stopped and reset, but not armed" -> List.of(resetOnly(armed(bench)));
            case "a reset button that sticks" -> List.of(stickingReset(bench));
            case "locked out" -> List.of(lockedOut(armed(bench)));
            case "asked during the warning" -> List.of(warned(tried(bench)));
            case "somebody enters during the warning" -> List.of(cancelled(tried(bench)));
            case "stood down" -> List.of(stoodDown(armed(bench)));
            case "key turned off" -> List.of(keyOff(armed(bench)));
            case "water came back" -> List.of(dry(armed(bench)));
            case "closed" -> List.of(closed(opened(bench)));
            case "stopped while open" -> List.of(resetOnly(opened(bench)));
            case "clock set back" -> List.of(setBack(opened(bench)));
            case "hung computer" -> List.of(hung(armed(bench)));
            case "cue that throws" -> List.of(thrown(armed(bench)));
            default -> throw new IllegalArgumentException("scene=" + scene);
        };
    }

    /** Stop, reset and reach have been tried; nobody has armed. At 7 s. */
    public static VirtualBench tried(final VirtualBench bench) {
        bench.set("water", true).set("reach", false).set("calm", false);
        pass(bench, 1_000).pressStop(true);
        pass(bench, 1_000).pressStop(false);
        press(pass(bench, 1_000), "reset");
        pass(bench, 1_000).set("reach", true);
        pass(bench, 1_000).set("reach", false);
        return pass(bench, 2_000);
    }

    /** Armed by the key, the warning over. */
    public static VirtualBench armed(final VirtualBench bench) {
        tried(bench).set("arm-key", true);
        return pass(bench, 6_000);
    }

    /** Armed, and every sensor is warm. */
    private static VirtualBench later(final VirtualBench bench) {
        return pass(armed(bench), 20_000);
    }

    /** Armed by the schedule at 18:00, which is 30 s from the start; the warning over. */
    private static VirtualBench opened(final VirtualBench bench) {
        tried(bench)
                .at(Duration.ofSeconds(30), yard -> yard.tell(new Act.ScheduleOpens()))
                .at(Duration.ofSeconds(90), yard -> yard.tell(new Act.ScheduleCloses()));
        return bench.runTo(Duration.ofSeconds(36).toNanos());
    }

    private static VirtualBench reach(final VirtualBench bench) {
        pass(bench.set("reach", true), 500);
        pass(ask(bench, "lid"), 2_000).set("reach", false);
        return pass(bench, 2_000);
    }

    /** From one scan before the lid starts to some after it. */
    private static List<VirtualBench> entering(final VirtualBench bench) {
        final List<VirtualBench> all = new ArrayList<>();
        for (int scans = 0; scans < 8; scans++) {
            final VirtualBench one = bench.fork().set("ask-lid", true);
            one.advance(SCAN.multipliedBy(scans)).set("reach", true);
            all.add(pass(one, 3_000));
        }
        return all;
    }

    private static VirtualBench wind(final VirtualBench bench) {
        pass(ask(bench, "jet-held"), 500).set("calm", true);
        pass(bench, 500).set("calm", false);
        return pass(bench, 6_000);
    }

    private static VirtualBench justLeft(final VirtualBench bench) {
        bench.set("ask-lid", true).set("reach", true).advance(SCAN.multipliedBy(2));
        return pass(bench.set("reach", false), 2_000);
    }

    /** The jet starts from before the lid's end to after it is clear. */
    private static List<VirtualBench> afterLid(final VirtualBench bench) {
        final List<VirtualBench> all = new ArrayList<>();
        for (final int afterMs : new int[] {980, 990, 1_000, 1_010, 1_020, 1_200, 1_490, 1_500, 1_510}) {
            final VirtualBench one = bench.fork().set("ask-lid", true);
            all.add(pass(pass(one, afterMs).set("ask-jet", true), 2_000));
        }
        return all;
    }

    private static List<VirtualBench> fans(final VirtualBench bench) {
        final List<VirtualBench> all = new ArrayList<>();
        for (final int afterMs : new int[] {0, 10, 100, 190, 200}) {
            final VirtualBench one = bench.fork().set("ask-fan", true);
            all.add(pass(pass(one, afterMs).set("ask-fan-too", true), 4_000));
        }
        return all;
    }

    /** Asks for the less important ones from one scan before they are shed to some after it. */
    private static List<VirtualBench> thin(final VirtualBench bench) {
        final List<VirtualBench> all = new ArrayList<>();
        for (final int afterMs : new int[] {0, 1_900, 1_950, 2_000, 2_100, 3_000}) {
            final VirtualBench one = pass(bench.fork().set("thin-air", true), afterMs);
            all.add(pass(ask(ask(one, "bell"), "fans"), 3_000));
        }
        return all;
    }

    private static VirtualBench flashes(final VirtualBench bench) {
        for (int flash = 0; flash < 6; flash++) {
            press(bench, flash % 2 == 0 ? "ask-flash" : "ask-flash-too");
            pass(bench, 200);
        }
        return pass(bench, 1_000);
    }

    private static VirtualBench lids(final VirtualBench bench, final int times, final int everyMs) {
        for (int time = 0; time < times; time++) {
            pass(ask(bench, "lid"), everyMs - 100);
        }
        return pass(bench, 2_000);
    }

    private static VirtualBench twice(final VirtualBench bench, final String what) {
        return pass(ask(pass(ask(bench, what), 2_000), what), 2_000);
    }

    private static VirtualBench stopped(final VirtualBench bench) {
        pass(ask(bench, "lid"), 300).pressStop(true);
        return pass(bench, 2_000);
    }

    private static VirtualBench unreset(final VirtualBench bench) {
        stopped(bench).pressStop(false);
        pass(bench, 1_000).set("arm-key", false);
        pass(bench, 1_000).set("arm-key", true);
        return pass(ask(pass(bench, 7_000), "lid"), 2_000);
    }

    private static VirtualBench resetOnly(final VirtualBench bench) {
        stopped(bench).pressStop(false);
        press(pass(bench, 1_000), "reset");
        return pass(ask(pass(bench, 7_000), "lid"), 2_000);
    }

    private static VirtualBench stickingReset(final VirtualBench bench) {
        bench.set("reset", true).set("water", true).set("reach", true).set("calm", false);
        pass(bench, 1_000).pressStop(true);
        pass(bench, 1_000).set("reach", false).pressStop(false);
        pass(bench, 1_000).set("reset", false);
        pass(bench, 1_000).set("arm-key", true);
        return pass(ask(pass(bench, 7_000), "lid"), 2_000);
    }

    private static VirtualBench lockedOut(final VirtualBench bench) {
        bench.commands("quay").lockOutOutput("lid", "Ole");
        pass(bench.tell(new Act.Lockout("lid", "Ole")), 1_000);
        return pass(ask(bench, "lid"), 2_000);
    }

    private static VirtualBench warned(final VirtualBench bench) {
        pass(bench.set("arm-key", true), 2_000);
        return pass(ask(bench, "lid"), 8_000);
    }

    private static VirtualBench cancelled(final VirtualBench bench) {
        pass(bench.set("arm-key", true), 2_000).set("reach", true);
        pass(bench, 1_000).set("reach", false);
        return pass(ask(pass(bench, 5_000), "lid"), 2_000);
    }

    private static VirtualBench stoodDown(final VirtualBench bench) {
        press(bench, "stand-down");
        return pass(ask(pass(bench, 1_000), "lid"), 2_000);
    }

    private static VirtualBench keyOff(final VirtualBench bench) {
        pass(bench.set("arm-key", false), 1_000);
        return pass(ask(bench, "lid"), 2_000);
    }

    /** Dry, wet again, stood down and armed anew, but never reset. */
    private static VirtualBench dry(final VirtualBench bench) {
        pass(bench.set("water", false), 5_000).set("water", true);
        pass(bench, 5_000).set("arm-key", false);
        pass(bench, 1_000).set("arm-key", true);
        return pass(ask(pass(bench, 7_000), "mist"), 3_000);
    }

    private static VirtualBench closed(final VirtualBench bench) {
        return pass(ask(bench.runTo(Duration.ofSeconds(95).toNanos()), "lid"), 2_000);
    }

    /** Stood down by hand; then the clock goes back over the opening. */
    private static VirtualBench setBack(final VirtualBench bench) {
        press(bench, "stand-down");
        pass(bench.jumpWall(Duration.ofSeconds(-10), true), 20_000);
        return pass(ask(bench, "lid"), 2_000);
    }

    private static VirtualBench hung(final VirtualBench bench) {
        pass(ask(bench, "lid-held"), 300).freeze("quay", true);
        pass(bench, 600).freeze("quay", false);
        return pass(bench, 2_000);
    }

    private static VirtualBench thrown(final VirtualBench bench) {
        return pass(ask(pass(ask(bench, "lid"), 300), "trouble"), 5_000);
    }

    public static VirtualBench ask(final VirtualBench bench, final String what) {
        return press(bench, "ask-" + what);
    }

    private static VirtualBench press(final VirtualBench bench, final String button) {
        return pass(pass(bench.set(button, true), 100).set(button, false), 0);
    }

    private static VirtualBench pass(final VirtualBench bench, final int ms) {
        return bench.advance(Duration.ofMillis(ms));
    }

    /** A cue in code that fails in every scan in which it plays. */
    static final class Trouble implements CueCode {
        @Override
        public String word() {
            return "trouble";
        }

        @Override
        public Playing compile(final Cue cue, final Places places, final Layout layout, final Numbers draws) {
            return new Playing() {
                @Override
                public void begin(final RunState run, final long start) {}

                @Override
                public boolean goOn(final RunState run, final Asking asking) {
                    throw new IllegalStateException("trouble on purpose");
                }

                @Override
                public void end(final RunState run) {}

                @Override
                public int[] outputs() {
                    return new int[0];
                }
            };
        }
    }
}
