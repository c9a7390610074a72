package slackwater.simulator.evening;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.model.kind.InputFamily;
import slackwater.simulator.bench.Setup;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.referee.Act;
import slackwater.simulator.referee.Figures;
import slackwater.simulator.report.Evening;
import slackwater.simulator.report.Lanes;
import slackwater.simulator.report.Recording;
import slackwater.simulator.report.StartedAt;
import slackwater.simulator.report.VcdNames;

/** Runs one evening from opening to close and says what it amounted to. */
public final class EveningRun {
    /** Progress is told so many times in an evening. */
    private static final int PARTS = 40;

    private final EveningPlan plan;
    private final VirtualBench bench;
    private final EveningRecorder recorder;

    /** Is told how far the evening has come, from 0 to 1. */
    public interface Progress {
        void reached(double share);
    }

    /** What an evening gave. */
    public record Result(Evening evening, Lanes lanes) {}

    public EveningRun(final EveningPlan plan) {
        this.plan = plan;
        bench = new VirtualBench(Setup.of(plan.rig(), plan.show())
                .withSeed(plan.seed())
                .withCrowd(plan.crowd())
                .withCodes(plan.codes())
                .startingAt(plan.startEpochMs())
                .skippingQuiet(plan.skipsQuiet()));
        recorder = new EveningRecorder(plan.rig(), plan.show(), plan.crowd(), bench);
        bench.listen(recorder);
        plan.opening()
                .ifPresent(window -> bench.at(after(window.opensMs()), yard -> yard.tell(new Act.ScheduleOpens()))
                        .at(after(window.closesMs()), yard -> yard.tell(new Act.ScheduleCloses())));
        plan.recorded().ifPresentOrElse(this::play, () -> new Keeper(plan.rig(), plan.show()).open(bench));
    }

    private Duration after(final long epochMs) {
        return Duration.ofMillis(Math.max(0, epochMs - plan.startEpochMs()));
    }

    /** Runs it. Wall time is the caller's to measure: the simulator reads no clock. */
    public Result run(final Progress progress, final java.util.function.LongSupplier wallNs) {
        return run(progress, wallNs, plan.lasts().dividedBy(PARTS), yard -> {});
    }

    /**
     * Runs it, and lets somebody look at the bench every so often, who may also do what a person in the yard could.
     *
     * @param every a whole number of scans; the evening's end is looked at too
     */
    public Result run(
            final Progress progress,
            final java.util.function.LongSupplier wallNs,
            final Duration every,
            final java.util.function.Consumer<VirtualBench> look) {
        final long beganNs = wallNs.getAsLong();
        final long untilNs = plan.lasts().toNanos();
        final long everyNs = Math.max(every.toNanos(), plan.rig().scan().toNanos());
        int parts = 0;
        for (long atNs = everyNs; atNs <= untilNs; atNs += everyNs) {
            if (bench.nowNs() < atNs) { // whoever looks may have gone on
                bench.runTo(atNs);
                look.accept(bench);
            }
            final int part = (int) (PARTS * (double) atNs / untilNs);
            if (part > parts) {
                parts = part;
                progress.reached((double) part / PARTS);
            }
        }
        bench.runTo(untilNs);
        final long tookNs = wallNs.getAsLong() - beganNs;
        return new Result(evening(untilNs, tookNs), recorder.lanes(untilNs));
    }

    public VirtualBench bench() {
        return bench;
    }

    /** Inputs from a recording, in place of hands and sensors; what it does not name stays the yard's. */
    private void play(final Recording recording) {
        for (final Recording.Change change : recording.changes()) {
            named(change.line())
                    .ifPresent(input -> bench.at(Duration.ofNanos(change.atNs()), yard -> {
                        if (input.family() == InputFamily.STOP_LOOP) {
                            yard.pressStop(!change.isHigh());
                        } else {
                            yard.set(input.name(), change.isHigh());
                        }
                    }));
        }
    }

    private Optional<Input> named(final Recording.Line line) {
        return plan.rig().inputs().stream()
                .filter(input -> VcdNames.isSame(input.name(), line.name()))
                .findFirst();
    }

    private Evening evening(final long untilNs, final long tookNs) {
        final Figures figures = bench.referee().figures();
        return new Evening(
                new Evening.Run(
                        plan.rig().name(),
                        plan.show().name(),
                        plan.seed(),
                        startedAt(),
                        untilNs,
                        tookNs,
                        untilNs
                                / plan.rig().scan().toNanos()
                                * plan.rig().controllers().size()),
                new Evening.Visits(
                        plan.crowd().size(),
                        plan.crowd().visitors().stream()
                                .mapToInt(visitor -> visitor.group())
                                .distinct()
                                .count(),
                        recorder.greeted(),
                        figures.nearMisses(),
                        recorder.startledByMistake()),
                new Foresight(plan.rig(), plan.crowd()).of(plan.show()),
                new Evening.Tallies(
                        recorder.cuesStarted(),
                        recorder.startsLost(),
                        recorder.refusals(),
                        recorder.actuations(),
                        longestOn(figures),
                        recorder.restShare(untilNs)),
                bench.violations().stream()
                        .map(found -> new Evening.Violation(found.rule(), found.output(), found.atNs(), found.detail()))
                        .toList(),
                bench.digest());
    }

    private StartedAt startedAt() {
        return plan.rig()
                .place()
                .map(place -> StartedAt.of(Instant.ofEpochMilli(plan.startEpochMs()), place.zone()))
                .orElse(StartedAt.UNKNOWN);
    }

    private List<Evening.LongestOn> longestOn(final Figures figures) {
        return figures.outputs().stream()
                .map(found -> new Evening.LongestOn(found.name(), found.longestOnNs(), limitNs(found.name())))
                .toList();
    }

    private long limitNs(final String output) {
        return plan.rig()
                .output(output)
                .map(Output::limits)
                .flatMap(limits -> limits.longestOn())
                .map(Duration::toNanos)
                .orElse(0L);
    }
}
