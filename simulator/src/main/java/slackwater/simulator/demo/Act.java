package slackwater.simulator.demo;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import slackwater.model.Air;
import slackwater.model.Circuit;
import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.evening.EveningPlan;
import slackwater.simulator.evening.EveningRun;
import slackwater.simulator.report.Evening;
import slackwater.simulator.yard.Yard;

/**
 * One evening of the demo, watched ten times a second. An hour after the opening, at the first moment at which the lid's valve has had power for long enough to be up,
 * the lid's computer freezes for a quarter of a minute; a minute later a person resets and arms again.
 */
public final class Act {
    /** The computer hangs for so long. */
    public static final Duration FREEZE = Duration.ofSeconds(15);

    private static final Duration FREEZES_AFTER_OPENING = Duration.ofHours(1);

    /** By then a lid that has air is up. */
    private static final Duration RISES_IN = Duration.ofMillis(700);

    private static final Duration RESET_AFTER = Duration.ofMinutes(1);
    private static final Duration LOOK = Duration.ofMillis(100);
    private static final Duration FINE = Duration.ofMillis(10);
    private static final int TANK_EVERY_LOOKS = 100;

    /** A prop that lands harder than a low-energy door drops (handbook 1.11 case 11). */
    private static final double DROPS_FROM_J = 1.69;

    private final EveningPlan plan;
    private final int lid;
    private final Optional<String> circuit;
    private final List<Double> tankBar = new ArrayList<>();
    private final List<long[]> lidUpNs = new ArrayList<>();
    private final long opensNs;
    private OptionalLong airGoneNs = OptionalLong.empty();
    private OptionalLong trippedNs = OptionalLong.empty();
    private OptionalLong frozenNs = OptionalLong.empty();
    private double trippedA;
    private double lowestBar = Double.POSITIVE_INFINITY;
    private double heldS;
    private double hardestJ;
    private int drops;
    private int strokes;
    private boolean wasUp;
    private boolean hasRisen;
    private long looks;

    /**
     * What was seen.
     *
     * @param airGoneNs when the tank first stood below the regulator
     * @param trippedNs when a breaker tripped
     * @param trippedA the current a moment before
     * @param frozenNs when the computer froze
     * @param heldS how long the lid's valve had power from then on
     * @param strokes how often the lid really moved out
     * @param drops how often the lid landed harder than a low-energy door
     * @param hardestJ the hardest landing or strike
     * @param lowestBar lowest gauge pressure in the tank
     * @param tankBar the tank every ten seconds
     * @param lidUpNs from when to when the lid's valve had power
     */
    public record Seen(
            Evening evening,
            EveningPlan plan,
            long opensNs,
            OptionalLong airGoneNs,
            OptionalLong trippedNs,
            double trippedA,
            OptionalLong frozenNs,
            double heldS,
            int strokes,
            int drops,
            double hardestJ,
            double lowestBar,
            List<Double> tankBar,
            List<Up> lidUpNs) {
        public Seen {
            tankBar = List.copyOf(tankBar);
            lidUpNs = List.copyOf(lidUpNs);
        }
    }

    /** A time for which the lid's valve had power. */
    public record Up(long fromNs, long untilNs) {}

    private Act(final EveningPlan plan, final String lid) {
        this.plan = plan;
        this.lid = plan.rig()
                .output(lid)
                .map(plan.rig().outputs()::indexOf)
                .orElseThrow(() -> new IllegalArgumentException("the rig has no output=" + lid));
        circuit =
                plan.rig().surroundings().circuits().stream().map(Circuit::name).findFirst();
        opensNs = EveningPlan.opensAfter(plan.rig(), plan.show(), plan.startEpochMs())
                .toNanos();
    }

    /** Runs an evening with the mishap. */
    public static Seen run(final EveningPlan plan, final String lid, final EveningRun.Progress progress) {
        final Act act = new Act(plan, lid);
        final Evening evening =
                new EveningRun(plan).run(progress, () -> 0L, LOOK, act::look).evening();
        return act.seen(evening);
    }

    private Seen seen(final Evening evening) {
        return new Seen(
                evening,
                plan,
                opensNs,
                airGoneNs,
                trippedNs,
                trippedA,
                frozenNs,
                heldS,
                strokes,
                drops,
                hardestJ,
                lowestBar,
                tankBar,
                lidUpNs.stream().map(each -> new Up(each[0], each[1])).toList());
    }

    private void look(final VirtualBench bench) {
        final Yard yard = bench.yard();
        final double bar = yard.tankPa() / 1e5;
        if (looks++ % TANK_EVERY_LOOKS == 0) {
            tankBar.add(bar);
        }
        if (bench.nowNs() >= opensNs) {
            lowestBar = Math.min(lowestBar, bar);
            final double workingPa =
                    plan.rig().surroundings().air().map(Air::workingPa).orElse(0.0);
            if (airGoneNs.isEmpty() && yard.tankPa() < workingPa) {
                airGoneNs = OptionalLong.of(bench.nowNs());
            }
        }
        breaker(bench);
        if (yard.isMoving(lid)) {
            followMove(bench);
        }
        final boolean isUp = yard.isPowered(lid);
        if (isUp) {
            if (!wasUp) {
                lidUpNs.add(new long[] {bench.nowNs(), bench.nowNs()});
            }
            lidUpNs.get(lidUpNs.size() - 1)[1] = bench.nowNs();
            freezeOnce(bench);
        }
        wasUp = isUp;
        hasRisen &= isUp;
    }

    private void breaker(final VirtualBench bench) {
        if (circuit.isEmpty() || trippedNs.isPresent()) {
            return;
        }
        if (bench.yard().isTripped(circuit.get())) {
            trippedNs = OptionalLong.of(bench.nowNs());
        } else {
            trippedA = bench.yard().currentA(circuit.get());
        }
    }

    /** Follows a stroke or a return to its end, for the energy with which it lands. */
    private void followMove(final VirtualBench bench) {
        if (bench.yard().isPowered(lid) && !hasRisen) {
            hasRisen = true; // a stroke that sticks and goes on is one
            strokes++;
        }
        while (bench.yard().isMoving(lid)
                && bench.nowNs() + FINE.toNanos() <= plan.lasts().toNanos()) {
            bench.advance(FINE);
        }
        final double landedJ = bench.yard().landedJ(lid);
        hardestJ = Math.max(hardestJ, landedJ);
        drops += landedJ > DROPS_FROM_J ? 1 : 0;
    }

    private void freezeOnce(final VirtualBench bench) {
        final long poweredNs = bench.nowNs() - lidUpNs.get(lidUpNs.size() - 1)[0];
        if (frozenNs.isPresent()
                || poweredNs < RISES_IN.toNanos()
                || bench.nowNs() < opensNs + FREEZES_AFTER_OPENING.toNanos()) {
            return;
        }
        final String controller = plan.rig().outputs().get(lid).controller();
        final long nowNs = bench.nowNs();
        frozenNs = OptionalLong.of(nowNs);
        bench.freeze(controller, true);
        bench.at(Duration.ofNanos(nowNs).plus(FREEZE), each -> each.freeze(controller, false));
        rearm(bench, Duration.ofNanos(nowNs).plus(FREEZE).plus(RESET_AFTER));
        while (bench.yard().isPowered(lid)) {
            bench.advance(FINE);
        }
        heldS = (bench.nowNs() - nowNs) / 1e9;
        lidUpNs.get(lidUpNs.size() - 1)[1] = bench.nowNs();
    }

    /** Reset pressed and let go, every arming key off and on again. */
    private void rearm(final VirtualBench bench, final Duration from) {
        for (final Input input : plan.rig().inputs()) {
            if (input.use() == Input.Use.RESET) {
                bench.at(from, yard -> yard.set(input.name(), true));
                bench.at(
                        from.plusSeconds(1),
                        yard -> yard.set(input.name(), false).leave(input.name()));
            } else if (input.use() == Input.Use.ARM) {
                bench.at(from.plusSeconds(3), yard -> yard.set(input.name(), false));
                bench.at(from.plusSeconds(5), yard -> yard.set(input.name(), true));
            }
        }
    }

    /** How much farther ahead of the lid a sensor would have to look; below 0 where it looks farther than it must. */
    static OptionalDouble lateM(final Output lid, final slackwater.simulator.budget.Budget budget) {
        return budget.lines().stream()
                .filter(line -> line.about().endsWith("how far ahead of " + lid.name() + " its sensor looks"))
                .filter(line -> line.asks().isPresent() && line.has().isPresent())
                .mapToDouble(line -> line.asks().get().si() - line.has().get().si())
                .findFirst();
    }
}
