package slackwater.controller.plan;

import java.util.Optional;
import slackwater.controller.cue.CueStage;
import slackwater.controller.cue.StandingStage;
import slackwater.controller.driver.DriverStage;
import slackwater.controller.guard.Bottles;
import slackwater.controller.guard.DriverLimits;
import slackwater.controller.guard.GuardStage;
import slackwater.controller.guard.Observations;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.input.InputStage;
import slackwater.controller.latch.Latches;
import slackwater.controller.latch.LockoutNames;
import slackwater.controller.ledger.Ledger;
import slackwater.controller.mode.ModeStage;
import slackwater.controller.mode.Trips;
import slackwater.controller.pins.PinWriter;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.watchdog.HoldUpPulses;
import slackwater.model.Controller;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.calendar.ShowCalendar;

/**
 * One controller's part of a rig and its show, compiled into immutable logic. This is the page that shows who asks whom.
 */
public final class Plan {
    private final Places places;
    private final long periodNs;
    private final Layout layout = new Layout();
    private final LockoutNames names = new LockoutNames();
    private final InputStage inputs;
    private final Latches latches;
    private final Ledger ledger;
    private final ModeStage modes;
    private final CueStage cues;
    private final StandingStage standing;
    private final DriverStage drivers;
    private final GuardStage guards;
    private final PinWriter pins;
    private final HoldUpPulses holdUp;

    private Plan(final Rig rig, final Show show, final Controller controller, final Options options) {
        places = Places.of(rig, controller.name());
        periodNs = rig.scan().toNanos();
        inputs = new InputStage(places.inputs(), layout);
        latches = new Latches(places, layout);
        final Trips trips = new Trips(rig.interlocks(), places, layout);
        final Optional<ShowCalendar> calendar =
                show.schedule().flatMap(schedule -> rig.place().map(place -> new ShowCalendar(schedule, place)));
        ledger = new Ledger(places, rig.ledger(), layout);
        modes = new ModeStage(
                new ModeStage.Parts(
                        places,
                        rig.arming(),
                        calendar,
                        latches,
                        trips,
                        names,
                        options.secrets(),
                        ledger,
                        options.bootId()),
                layout);
        cues = new CueStage(
                show.cues().stream()
                        .filter(cue -> places.zones().stream()
                                .anyMatch(zone -> zone.name().equals(cue.zone())))
                        .toList(),
                places,
                layout,
                options.codes(),
                options.seed());
        standing = new StandingStage(places, rig.arming().warnsWith(), layout);
        drivers = new DriverStage(places, layout);
        guards = new GuardStage(
                new GuardStage.Parts(
                        places,
                        rig.interlocks(),
                        new InputWords(inputs),
                        new Limits(drivers),
                        new ModesSeen(modes, latches, places.zoneOfOutput()),
                        new TripsSeen(trips),
                        new BottlesSeen(ledger)),
                layout);
        pins = new PinWriter(places.outputs().size(), layout);
        holdUp = new HoldUpPulses(controller.holdUp(), layout);
    }

    /**
     * Compiles a controller's part.
     *
     * @throws IllegalArgumentException if the rig has no such controller, or names something in an interlock or cue that
     *     is not wired to it; the checks say both before
     */
    public static Plan compile(final Rig rig, final Show show, final String controller, final Options options) {
        final Controller found = rig.controllers().stream()
                .filter(one -> one.name().equals(controller))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the rig has no controller=" + controller));
        return new Plan(rig, show, found, options);
    }

    public Places places() {
        return places;
    }

    public long periodNs() {
        return periodNs;
    }

    public LockoutNames names() {
        return names;
    }

    public InputStage inputs() {
        return inputs;
    }

    public Latches latches() {
        return latches;
    }

    public ModeStage modes() {
        return modes;
    }

    public Ledger ledger() {
        return ledger;
    }

    public CueStage cues() {
        return cues;
    }

    public StandingStage standing() {
        return standing;
    }

    public DriverStage drivers() {
        return drivers;
    }

    public GuardStage guards() {
        return guards;
    }

    public PinWriter pins() {
        return pins;
    }

    public HoldUpPulses holdUp() {
        return holdUp;
    }

    /** A run at its beginning. */
    public RunState newRun() {
        return layout.newRun();
    }

    /** Every place of a run in words. */
    public java.util.List<String> describe(final RunState run) {
        return layout.describe(run);
    }

    private record InputWords(InputStage inputs) implements Observations {
        @Override
        public String observed(final RunState run, final int input) {
            return inputs.observed(run, input);
        }

        @Override
        public long sinceNs(final RunState run, final int input) {
            return inputs.sinceNs(run, input);
        }
    }

    private record Limits(DriverStage drivers) implements DriverLimits {
        @Override
        public boolean mayEnergise(final RunState run, final int output, final boolean isEnergised) {
            return drivers.mayEnergise(run, output, isEnergised);
        }

        @Override
        public String observed(final RunState run, final int output) {
            return drivers.observed(run, output);
        }

        @Override
        public long sinceNs(final RunState run, final int output) {
            return drivers.sinceNs(run, output);
        }

        @Override
        public String clearsWhen(final RunState run, final int output) {
            return drivers.clearsWhen(run, output);
        }
    }

    private static final class ModesSeen implements GuardStage.Modes {
        private final ModeStage modes;
        private final Latches latches;
        private final int[] zoneOf;

        ModesSeen(final ModeStage modes, final Latches latches, final int[] zoneOf) {
            this.modes = modes;
            this.latches = latches;
            this.zoneOf = zoneOf;
        }

        @Override
        public boolean allows(final RunState run, final Image image, final int output) {
            return modes.allows(run, image, output);
        }

        @Override
        public long sinceNs(final RunState run, final int output) {
            return latches.sinceNs(run, zoneOf[output]);
        }
    }

    private record BottlesSeen(Ledger ledger) implements Bottles {
        @Override
        public boolean hasBottle(final int output) {
            return ledger.hasBottle(output);
        }

        @Override
        public boolean hasEnough(final RunState run, final int output, final boolean isEnergised) {
            return ledger.hasEnough(run, output, isEnergised);
        }

        @Override
        public String observed(final RunState run, final int output) {
            return ledger.observed(run, output);
        }

        @Override
        public long sinceNs(final RunState run, final int output) {
            return ledger.sinceNs(run, output);
        }

        @Override
        public String clearsWhen(final int output) {
            return ledger.clearsWhen(output);
        }
    }

    private record TripsSeen(Trips trips) implements GuardStage.LatchedTrips {
        @Override
        public int refusing(final RunState run, final int output, final boolean isEnergised) {
            return trips.refusing(run, output, isEnergised);
        }

        @Override
        public String name(final int trip) {
            return trips.name(trip);
        }

        @Override
        public String cause(final int trip) {
            return trips.cause(trip);
        }

        @Override
        public long sinceNs(final RunState run, final int trip) {
            return trips.sinceNs(run, trip);
        }
    }
}
