package slackwater.simulator.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import slackwater.controller.app.RigLoader;
import slackwater.model.Point;
import slackwater.model.Rig;
import slackwater.model.Walkers;
import slackwater.simulator.evening.Assumed;
import slackwater.simulator.evening.EveningPlan;
import slackwater.simulator.report.Recording;
import slackwater.simulator.report.VcdException;
import slackwater.simulator.report.VcdReader;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.visitor.CrowdMaker;
import slackwater.simulator.visitor.WalkerFile;
import slackwater.simulator.visitor.WalkerFileMistake;

/** What can be said of an evening on the command line. */
final class EveningOptions {
    private static final long NS_PER_H = 3_600_000_000_000L;
    private static final double HOURS_MAX = 72;
    /** Measured walkers come when the yard is open: after the keeper's opening, sensors warm. */
    private static final Duration WALKERS_AFTER_OPENING = Duration.ofMinutes(1);
    /** Between one file of walkers and the next. */
    private static final Duration BETWEEN_FILES = Duration.ofSeconds(30);

    @Option(names = "--hours", paramLabel = "H", description = "How long, 0 to 72 hours. Usual: ${DEFAULT-VALUE}.")
    private double hours = 4;

    @Option(names = "--seed", paramLabel = "N", description = "Seed of every draw. Usual: ${DEFAULT-VALUE}.")
    private long seed = 1;

    @Option(
            names = "--walkers",
            paramLabel = "FILE",
            arity = "1..*",
            description = {
                "Measured positions of real people (id, frame, x, y in columns) in place of drawn visitors;",
                "[walkers] in the rig says rate, unit, turn and move-by, or the --walkers-... options do."
            })
    private List<Path> walkers = new ArrayList<>();

    @Option(names = "--walkers-rate", paramLabel = "HZ", description = "Frames a second, where the file does not say.")
    private Optional<Double> walkersRate = Optional.empty();

    @Option(names = "--walkers-unit", paramLabel = "M", description = "Metres in one unit of the file: 0.01 for cm.")
    private Optional<Double> walkersUnit = Optional.empty();

    @Option(names = "--walkers-turn", paramLabel = "DEG", description = "Turn counter-clockwise by so many degrees.")
    private Optional<Double> walkersTurn = Optional.empty();

    @Option(names = "--walkers-move", paramLabel = "M", split = ",", description = "Then move by x,y metres.")
    private List<Double> walkersMove = new ArrayList<>();

    @Option(
            names = "--inputs",
            paramLabel = "FILE",
            description = "A recorded VCD whose lines drive the inputs of the same name; 1 is active.")
    private Optional<Path> inputs = Optional.empty();

    @Option(names = "--no-skip", description = "Run every scan, quiet ones too; slower, and the same digest.")
    private boolean isNotSkipping;

    /** Something said wrongly: one line for a person. */
    static final class Mistake extends Exception {
        private static final long serialVersionUID = 1L;

        Mistake(final String message) {
            super(message);
        }
    }

    long seed() {
        return seed;
    }

    EveningPlan plan(final RigLoader.Loaded loaded, final Rig built, final PrintWriter err) throws Mistake {
        final Assumed assumed = Assumed.of(built);
        final Rig rig = assumed.rig();
        if (!(hours > 0 && hours <= HOURS_MAX)) {
            throw new Mistake("--hours must be more than 0 and at most 72, but was " + hours);
        }
        final long startMs = EveningPlan.startOf(rig, loaded.show());
        final long untilNs = (long) (hours * NS_PER_H);
        if (inputs.isPresent() && !walkers.isEmpty()) {
            throw new Mistake("--inputs and --walkers exclude each other: recorded inputs already tell who came");
        }
        final Optional<Recording> recorded = recording(err);
        final Crowd crowd = recorded.isPresent() ? Crowd.NOBODY : crowd(loaded, rig, startMs, untilNs, err);
        assumed.notes().forEach(err::println); // last: what was given wrongly stands alone
        return new EveningPlan(
                rig,
                loaded.show(),
                loaded.codes(),
                seed,
                startMs,
                Duration.ofNanos(untilNs),
                crowd,
                recorded,
                !isNotSkipping);
    }

    private Crowd crowd(
            final RigLoader.Loaded loaded, final Rig rig, final long startMs, final long untilNs, final PrintWriter err)
            throws Mistake {
        if (walkers.isEmpty()) {
            return CrowdMaker.draw(rig.surroundings().way(), seed, 0, untilNs);
        }
        Crowd all = Crowd.NOBODY;
        for (final Path file : walkers) {
            all = all.isEmpty()
                    ? measured(file, rig, err)
                    : all.then(measured(file, rig, err), BETWEEN_FILES.toNanos());
        }
        final long opensNs = EveningPlan.opensAfter(rig, loaded.show(), startMs).toNanos();
        return all.movedBy(opensNs + WALKERS_AFTER_OPENING.toNanos());
    }

    private Crowd measured(final Path file, final Rig rig, final PrintWriter err) throws Mistake {
        try {
            final WalkerFile read = WalkerFile.read(file, settings(rig));
            read.notes().forEach(err::println);
            return read.crowd();
        } catch (final WalkerFileMistake mistake) {
            throw new Mistake(String.valueOf(mistake.getMessage()));
        }
    }

    private Walkers settings(final Rig rig) throws Mistake {
        final Walkers said = rig.surroundings().walkers().orElse(new Walkers(25, 1, 0, new Point(0, 0)));
        final double rate = walkersRate.orElse(said.framesPerSecond());
        final double unit = walkersUnit.orElse(said.metresPerUnit());
        if (!(rate > 0 && unit > 0)) {
            throw new Mistake("--walkers-rate and --walkers-unit must be more than 0");
        }
        if (!walkersMove.isEmpty() && walkersMove.size() != 2) {
            throw new Mistake("--walkers-move takes two numbers, such as 8,-1");
        }
        final Point move = walkersMove.isEmpty() ? said.moveBy() : new Point(walkersMove.get(0), walkersMove.get(1));
        return new Walkers(rate, unit, walkersTurn.orElse(said.turnDeg()), move);
    }

    private Optional<Recording> recording(final PrintWriter err) throws Mistake {
        if (inputs.isEmpty()) {
            return Optional.empty();
        }
        try {
            final Recording read = VcdReader.read(inputs.get(), line -> true);
            read.warnings().forEach(err::println);
            return Optional.of(read);
        } catch (final VcdException mistake) {
            throw new Mistake(String.valueOf(mistake.getMessage()));
        }
    }
}
