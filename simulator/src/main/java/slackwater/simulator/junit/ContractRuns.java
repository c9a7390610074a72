package slackwater.simulator.junit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import slackwater.controller.cue.CueCode;
import slackwater.controller.run.RunState;
import slackwater.model.Cue;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.event.Event;
import slackwater.model.event.Spans;
import slackwater.simulator.bench.BenchListener;
import slackwater.simulator.bench.Setup;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.evening.EveningPlan;
import slackwater.simulator.evening.Keeper;

/** The same visitors before the same rig, several times over: forked, repeated, and with quiet scans passed over or not. */
final class ContractRuns {
    private static final Duration SHOWN = Duration.ofMinutes(10);
    private static final int FORKS = 60;
    private static final long PRESENT_LEAST_MS = 700;
    private static final long PRESENT_MOST_MS = 4_000;
    private static final long AWAY_LEAST_MS = 1_000;
    private static final long AWAY_MOST_MS = 45_000;

    private final Rig rig;
    private final Show show;
    private final List<CueCode> codes;
    private final long seed;
    private final long startMs;
    private final Duration opens;

    ContractRuns(final Rig rig, final Show show, final List<CueCode> codes, final long seed) {
        this.rig = rig;
        this.show = show;
        this.codes = codes;
        this.seed = seed;
        startMs = EveningPlan.startOf(rig, show);
        opens = EveningPlan.opensAfter(rig, show, startMs);
    }

    /** Where a run stands at a moment: what its pins have done, and all that every controller remembers. */
    private record Standing(long atNs, String digest, List<RunState> runs) {
        static Standing of(final VirtualBench bench) {
            return new Standing(
                    bench.nowNs(),
                    bench.digest(),
                    bench.rig().controllers().stream()
                            .map(controller ->
                                    bench.scan(controller.name()).run().copy())
                            .toList());
        }

        boolean isSameAs(final Standing other) {
            boolean isSame = digest.equals(other.digest);
            for (int i = 0; i < runs.size(); i++) {
                isSame &= runs.get(i).isSameAs(other.runs.get(i));
            }
            return isSame;
        }
    }

    /** Notes what a run has really shown, and scans that broke. */
    private static final class Shown implements BenchListener {
        private final Set<String> energised = new HashSet<>();
        private final Set<String> started = new HashSet<>();
        private final Set<String> broken = new LinkedHashSet<>();

        @Override
        public void event(final int controller, final Event event) {
            if (event instanceof Event.Switched switched && switched.isEnergised()) {
                energised.add(switched.output());
            } else if (event instanceof Event.CueStarted cue) {
                started.add(cue.cue());
            } else if (event instanceof Event.Latched latched && latched.why().startsWith("a scan failed")) {
                broken.add(Spans.moment(latched.atNs()) + ": " + latched.why());
            }
        }
    }

    /**
     * Every breach in words.
     *
     * @param who the words of what is tried, to begin each line with
     * @param outputs those of which each must have been energised, or nothing was tried
     * @param cues those of which each must have started, or nothing was tried
     */
    List<String> breaches(final String who, final List<String> outputs, final List<String> cues) {
        final List<String> breaches = new ArrayList<>();
        final long[] moments = moments();
        final Shown shown = new Shown();
        final List<Standing> alone = standings(bench(true).listen(shown), moments);
        shown.broken.forEach(each -> breaches.add(who + ": " + each));
        outputs.stream()
                .filter(output -> !shown.energised.contains(output))
                .forEach(output -> breaches.add(who + ": \"" + output + "\" was never energised, so it was not tried"));
        cues.stream()
                .filter(cue -> !shown.started.contains(cue))
                .forEach(cue -> breaches.add(who + ": cue \"" + cue + "\" never started, so it was not tried"));
        final List<Standing> again = standings(bench(true), moments);
        difference(alone, again)
                .ifPresent(at -> breaches.add(who + ": the same run twice goes two ways, seen at " + at));
        forked(alone, moments).ifPresent(how -> breaches.add(who + ": " + how));
        final List<Standing> everyScan = standings(bench(false), moments);
        digestDifference(alone, everyScan)
                .ifPresent(
                        at -> breaches.add(who + ": passing over quiet scans changes what the pins do, seen at " + at));
        return breaches;
    }

    private List<Standing> standings(final VirtualBench bench, final long[] moments) {
        final List<Standing> standings = new ArrayList<>();
        for (final long moment : moments) {
            standings.add(Standing.of(bench.runTo(moment)));
        }
        return standings;
    }

    /** A fork goes first, then the run that it came from: each must come to where the run that nobody forked came. */
    private Optional<String> forked(final List<Standing> alone, final long[] moments) {
        final VirtualBench bench = bench(true);
        for (int i = 0; i < moments.length; i++) {
            final long forkedAtNs = bench.nowNs();
            final VirtualBench fork = bench.fork();
            final Standing forks = Standing.of(fork.runTo(moments[i]));
            final Standing own = Standing.of(bench.runTo(moments[i]));
            final String when =
                    ", forked at " + Spans.moment(forkedAtNs) + " and looked at by " + Spans.moment(moments[i]);
            if (!forks.isSameAs(alone.get(i))) {
                return Optional.of("a fork goes another way than the run that it came from" + when);
            }
            if (!own.isSameAs(alone.get(i))) {
                return Optional.of("a run goes another way because it was forked" + when);
            }
        }
        return Optional.empty();
    }

    private static Optional<String> difference(final List<Standing> one, final List<Standing> other) {
        for (int i = 0; i < one.size(); i++) {
            if (!one.get(i).isSameAs(other.get(i))) {
                return Optional.of(Spans.moment(one.get(i).atNs()));
            }
        }
        return Optional.empty();
    }

    private static Optional<String> digestDifference(final List<Standing> one, final List<Standing> other) {
        for (int i = 0; i < one.size(); i++) {
            if (!one.get(i).digest().equals(other.get(i).digest())) {
                return Optional.of(Spans.moment(one.get(i).atNs()));
            }
        }
        return Optional.empty();
    }

    private long[] moments() {
        final long endNs = opens.plus(SHOWN).toNanos();
        final long periodNs = rig.scan().toNanos();
        return new SplittableRandom(seed)
                .longs(FORKS, opens.toNanos(), endNs)
                .map(moment -> moment / periodNs * periodNs)
                .sorted()
                .distinct()
                .toArray();
    }

    private VirtualBench bench(final boolean skipsQuiet) {
        final VirtualBench bench = new VirtualBench(Setup.of(rig, show)
                .withSeed(seed)
                .withCodes(codes)
                .startingAt(startMs)
                .skippingQuiet(skipsQuiet));
        new Keeper(rig, show).open(bench);
        final Set<String> starting = new LinkedHashSet<>();
        show.cues().stream().map(Cue::start).forEach(start -> starting.addAll(start.inputs()));
        final SplittableRandom chance = new SplittableRandom(~seed);
        starting.forEach(input -> visit(bench, input, chance.split()));
        return bench;
    }

    private void visit(final VirtualBench bench, final String input, final SplittableRandom chance) {
        Duration at = opens;
        while (at.compareTo(opens.plus(SHOWN)) < 0) {
            at = at.plusMillis(chance.nextLong(AWAY_LEAST_MS, AWAY_MOST_MS));
            bench.at(at, yard -> yard.set(input, true));
            at = at.plusMillis(chance.nextLong(PRESENT_LEAST_MS, PRESENT_MOST_MS));
            bench.at(at, yard -> yard.set(input, false));
        }
    }
}
