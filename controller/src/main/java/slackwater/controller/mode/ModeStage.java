package slackwater.controller.mode;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import slackwater.controller.command.Commands;
import slackwater.controller.command.Scales;
import slackwater.controller.command.Secrets;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.latch.Kept;
import slackwater.controller.latch.Latches;
import slackwater.controller.latch.LockoutNames;
import slackwater.controller.run.Layout;
import slackwater.controller.run.Phase;
import slackwater.controller.run.RunState;
import slackwater.model.Arming;
import slackwater.model.Input;
import slackwater.model.Mode;
import slackwater.model.calendar.ShowCalendar;
import slackwater.model.event.Event;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;

/**
 * Commands, stop loop, trips, reset, keys and schedule set latches and wishes; then every mode is computed from them anew
 * (S3, S4, S5, S6). What rests comes last and so wins over what arms in the same scan.
 */
public final class ModeStage {
    private final Places places;
    private final Latches latches;
    private final Trips trips;
    private final Zones zones;
    private final Desk desk;
    private final Restart restart;
    private final ScheduleStage schedule;
    private final Family[] family;
    private final int[] zoneOf;
    private final int[] stopLoops;
    private final int[] armKeys;
    private final int[] standDowns;
    private final ResetButtons resets;
    private final Phase<Mode>[] lastMode;

    /** What the stage is made of and whom it asks. */
    public record Parts(
            Places places,
            Arming arming,
            Optional<ShowCalendar> calendar,
            Latches latches,
            Trips trips,
            LockoutNames names,
            Secrets secrets,
            Scales scales,
            long bootId) {}

    @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type cannot be made otherwise
    public ModeStage(final Parts parts, final Layout layout) {
        places = parts.places();
        latches = parts.latches();
        trips = parts.trips();
        zones = new Zones(places, parts.arming(), latches, layout);
        desk = new Desk(parts, zones);
        restart = new Restart(parts);
        schedule = new ScheduleStage(parts.calendar(), layout);
        family = places.outputs().stream().map(output -> output.family()).toArray(Family[]::new);
        zoneOf = places.zoneOfOutput();
        stopLoops = inputs(input -> input.family() == InputFamily.STOP_LOOP);
        armKeys = inputs(input -> input.use() == Input.Use.ARM);
        standDowns = inputs(input -> input.use() == Input.Use.STAND_DOWN);
        resets = new ResetButtons(inputs(input -> input.use() == Input.Use.RESET), layout);
        lastMode = new Phase[places.zones().size()];
        for (int zone = 0; zone < lastMode.length; zone++) {
            lastMode[zone] = layout.phase("zone." + zones.name(zone) + ".mode-noted", Mode.class);
        }
    }

    /** The rest-ward slots first, then the requests that wait. */
    public void commands(final RunState run, final Image image, final Commands commands) {
        desk.take(run, image, commands);
    }

    /** Latches and wishes from pins and schedule, then the modes. */
    public void update(final RunState run, final Image image, final Wall wall) {
        followSchedule(run, image, wall);
        followKeys(run, image);
        if (resets.areReleased(run, image)) {
            reset(run, image);
        }
        trips.update(run, image, latches);
        followStopLoops(run, image);
        for (int zone = 0; zone < zones.count(); zone++) {
            zones.goOn(run, image, zone);
        }
        compute(run, image);
    }

    /** Restores what outlived a restart; an unreadable store counts as locked out (S5). */
    public void restore(final RunState run, final Image image, final Optional<Kept> kept) {
        restart.restore(run, image, kept);
        kept.ifPresent(what -> schedule.setOpenedDay(run, what.openedDay() + 1));
        compute(run, image);
    }

    /** What must outlive a restart. */
    public Kept kept(final RunState run, final List<String> spent) {
        return restart.kept(run, spent, schedule.openedDay(run) - 1);
    }

    /** Differs whenever {@link #kept} would, but for spent releases. */
    public long signature(final RunState run) {
        return 31 * (31 * latches.signature(run) + schedule.openedDay(run)) + trips.signature(run);
    }

    /** Whether an output's surroundings allow it now (S15). */
    public boolean allows(final RunState run, final Image image, final int output) {
        return ModeTable.allows(family[output], image.mode[output], isWarming(run, output));
    }

    private boolean isWarming(final RunState run, final int output) {
        return zones.isWarming(run, zoneOf[output]) && !latches.awaitsArm(run, output);
    }

    /** Whether a heater has its own permission to warm while its zone rests. */
    public boolean wantsHeat(final RunState run, final int output) {
        return isWarming(run, output);
    }

    private void followSchedule(final RunState run, final Image image, final Wall wall) {
        final ScheduleStage.Asks asks = schedule.look(run, wall);
        if (asks == ScheduleStage.Asks.NOTHING) {
            return;
        }
        for (int zone = 0; zone < zones.count(); zone++) {
            final Optional<String> why = switch (asks) {
                case OPEN -> zones.arm(run, image, zone);
                case WARM -> zones.warm(run, zone);
                case CLOSE, NOTHING -> {
                    zones.standDown(run, zone);
                    yield Optional.empty();
                }
            };
            final String what = "schedule: " + asks.name().toLowerCase(java.util.Locale.ROOT) + " " + zones.name(zone);
            image.note(new Event.Commanded(run.atNs(), what, why.isEmpty(), why.orElse("")));
        }
    }

    private void followKeys(final RunState run, final Image image) {
        for (final int key : armKeys) {
            if (image.rose[key]) {
                armByKey(run, image, key);
            }
            if (image.fell[key]) {
                standDownAll(run, true);
            }
        }
        for (final int button : standDowns) {
            if (image.sawActive[button]) {
                standDownAll(run, image.rose[button]);
            }
        }
    }

    /** A key arms the zone that it belongs to: zones are armed apart. */
    private void armByKey(final RunState run, final Image image, final int key) {
        final Input input = places.inputs().get(key);
        for (int zone = 0; zone < zones.count(); zone++) {
            if (input.zone().equals(Optional.of(zones.name(zone)))) {
                final Optional<String> why = zones.arm(run, image, zone);
                image.note(new Event.Commanded(run.atNs(), "arm by " + input.name(), why.isEmpty(), why.orElse("")));
            }
        }
    }

    /** A button held down goes on resting the zones, but outdates what was asked only when its press begins. */
    private void standDownAll(final RunState run, final boolean isNews) {
        for (int zone = 0; zone < zones.count(); zone++) {
            if (isNews) {
                zones.standDownByHand(run, zone);
            } else {
                zones.standDown(run, zone);
            }
        }
    }

    /** A reset permits a later arm; it starts nothing (ISO 13850). */
    private void reset(final RunState run, final Image image) {
        final boolean isLoopClosed = IntStream.of(stopLoops).allMatch(loop -> image.provenActive[loop]);
        final boolean areTripsClear = trips.reset(run, image, latches);
        if (latches.isControllerFaulted(run) && !image.mayResetFault) {
            image.note(new Event.Commanded(
                    run.atNs(), "reset", false, "the hold-up relay has not been seen open with every output at rest"));
            return;
        }
        latches.reset(run, isLoopClosed);
        final String left = !isLoopClosed ? "stop loop still open" : areTripsClear ? "" : "a trip's cause remains";
        image.note(new Event.Commanded(run.atNs(), "reset", left.isEmpty(), left));
    }

    private void followStopLoops(final RunState run, final Image image) {
        for (final int loop : stopLoops) {
            if (image.sawInactive[loop]) {
                latches.stop(run, image, places.inputs().get(loop).name() + " is open");
            }
        }
    }

    private void compute(final RunState run, final Image image) {
        for (int zone = 0; zone < lastMode.length; zone++) {
            final Mode mode = latches.zoneMode(run, zone);
            image.zoneMode[zone] = mode;
            image.mayGreet[zone] = mode == Mode.ARMED && latches.hasAirSettled(run, zone);
            if (lastMode[zone].of(run) != mode) {
                image.note(new Event.ModeChanged(
                        run.atNs(), zones.name(zone), lastMode[zone].of(run), mode, "latches and wishes"));
                lastMode[zone].set(run, mode);
                latches.markModeOf(run, zone);
            }
        }
        for (int output = 0; output < family.length; output++) {
            final Mode mode = latches.outputMode(run, output);
            final boolean isTripped = !isLatched(mode) && trips.concerns(run, output);
            // a stroke that a trip lets finish is still guarded by the trip itself, so the table must not cut it short
            final boolean isFinishing = isTripped && image.energised[output] && trips.refusing(run, output, true) < 0;
            image.mode[output] = isFinishing ? image.zoneMode[zoneOf[output]] : isTripped ? Mode.FAULTED : mode;
        }
    }

    private static boolean isLatched(final Mode mode) {
        return mode == Mode.STOPPED || mode == Mode.FAULTED || mode == Mode.LOCKED_OUT;
    }

    private int[] inputs(final Predicate<Input> wanted) {
        return IntStream.range(0, places.inputs().size())
                .filter(i -> wanted.test(places.inputs().get(i)))
                .toArray();
    }
}
