package slackwater.controller.latch;

import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.Bits;
import slackwater.controller.run.Count;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.Phase;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Since;
import slackwater.controller.run.Timer;
import slackwater.model.Mode;
import slackwater.model.event.Event;

/**
 * The latches of one controller: stop for the whole rig, faults by controller, zone and output, lockouts by zone and output,
 * trips; and the one wish of each zone. Independent of each other; the mode is the most restrictive of them (S4). Every new
 * latch raises the generation that energising requests must quote (S3) and ends the wish that it concerns: only a later
 * arm energises again. A latch of one output leaves its neighbours alone.
 */
public final class Latches {
    private static final long GENERATION_MAX = Long.MAX_VALUE;

    private final Places places;
    private final int[] zoneOf;
    private final Flag stop;
    private final Flag controllerFault;
    private final Flag[] zoneFault;
    private final Flag[] outputFault;
    private final Bits[] zoneLockout;
    private final Bits[] outputLockout;
    private final Flag[] awaitsArm;
    private final Phase<Wish>[] wish;
    private final Timer[] warning;
    private final Timer[] airSettles;
    private final Count generation;
    private final Since[] zoneSince;

    @SuppressWarnings({"unchecked", "rawtypes"}) // arrays of a generic type cannot be made otherwise
    public Latches(final Places places, final Layout layout) {
        this.places = places;
        zoneOf = places.zoneOfOutput();
        final int zones = places.zones().size();
        final int outputs = places.outputs().size();
        stop = layout.flag("latch.stop");
        controllerFault = layout.flag("latch.fault");
        generation = layout.count("latch.generation", GENERATION_MAX);
        zoneFault = new Flag[zones];
        zoneLockout = new Bits[zones];
        wish = new Phase[zones];
        warning = new Timer[zones];
        airSettles = new Timer[zones];
        zoneSince = new Since[zones];
        for (int z = 0; z < zones; z++) {
            final String place = "zone." + places.zones().get(z).name();
            zoneFault[z] = layout.flag(place + ".fault");
            zoneLockout[z] = layout.bits(place + ".lockout");
            wish[z] = layout.phase(place + ".wish", Wish.class);
            warning[z] = layout.timer(place + ".warning");
            airSettles[z] = layout.timer(place + ".air-settles");
            zoneSince[z] = layout.since(place + ".since");
        }
        outputFault = new Flag[outputs];
        outputLockout = new Bits[outputs];
        awaitsArm = new Flag[outputs];
        for (int o = 0; o < outputs; o++) {
            final String place = "output." + places.outputs().get(o).name();
            outputFault[o] = layout.flag(place + ".fault");
            outputLockout[o] = layout.bits(place + ".lockout");
            awaitsArm[o] = layout.flag(place + ".awaits-arm");
        }
    }

    /** Latches the stop of the whole rig. */
    public void stop(final RunState run, final Image image, final String why) {
        if (!stop.is(run)) {
            stop.set(run, true);
            latched(run, image, "stop", why);
        }
        restAllWishes(run);
    }

    /** Latches a fault of the whole controller. */
    public void faultController(final RunState run, final Image image, final String why) {
        if (!controllerFault.is(run)) {
            controllerFault.set(run, true);
            latched(run, image, "fault of " + places.controller(), why);
        }
        restAllWishes(run);
    }

    /** Latches a fault of one zone. */
    public void faultZone(final RunState run, final Image image, final int zone, final String why) {
        if (!zoneFault[zone].is(run)) {
            zoneFault[zone].set(run, true);
            latched(run, image, "fault of zone " + zoneName(zone), why);
        }
        rest(run, zone);
    }

    /** Latches a fault of one output; its neighbours go on (S10). */
    public void faultOutput(final RunState run, final Image image, final int output, final String why) {
        if (!outputFault[output].is(run)) {
            outputFault[output].set(run, true);
            latched(run, image, "fault of " + outputName(output), why);
        }
        awaitsArm[output].set(run, true);
    }

    /** Notes a trip's new latch: its outputs wait for a later arm. The trip itself remembers that it is latched. */
    public void tripped(
            final RunState run, final Image image, final String trip, final int[] outputs, final String why) {
        latched(run, image, "trip " + trip, why);
        awaitArm(run, outputs);
    }

    /** Adds people to those who work in a zone. */
    public void lockOutZone(final RunState run, final Image image, final int zone, final long people) {
        if ((people & ~zoneLockout[zone].of(run)) != 0) {
            zoneLockout[zone].set(run, zoneLockout[zone].of(run) | people);
            latched(run, image, "lockout of zone " + zoneName(zone), "somebody works there");
        }
        rest(run, zone);
    }

    /** Adds people to those who work at an output. */
    public void lockOutOutput(final RunState run, final Image image, final int output, final long people) {
        if ((people & ~outputLockout[output].of(run)) != 0) {
            outputLockout[output].set(run, outputLockout[output].of(run) | people);
            latched(run, image, "lockout of " + outputName(output), "somebody works there");
        }
        awaitsArm[output].set(run, true);
    }

    /** Takes people from those who work in a zone. */
    public void unlockZone(final RunState run, final int zone, final long people) {
        zoneLockout[zone].set(run, zoneLockout[zone].of(run) & ~people);
    }

    /** Takes people from those who work at an output, which then awaits a later arm: nothing moves because of a release. */
    public void unlockOutput(final RunState run, final int output, final long people) {
        outputLockout[output].set(run, outputLockout[output].of(run) & ~people);
        awaitsArm[output].set(run, true);
    }

    /** Lets outputs rest until their zone is armed again, whatever was armed while they were latched. */
    public void awaitArm(final RunState run, final int[] outputs) {
        for (final int output : outputs) {
            awaitsArm[output].set(run, true);
        }
    }

    /** Clears stop and the faults of controller, zones and outputs; never a lockout, never a wish. */
    public void reset(final RunState run, final boolean clearsStop) {
        if (clearsStop) {
            stop.set(run, false);
        }
        controllerFault.set(run, false);
        for (final Flag fault : zoneFault) {
            fault.set(run, false);
        }
        for (int output = 0; output < outputFault.length; output++) {
            if (outputFault[output].is(run)) {
                outputFault[output].set(run, false);
                awaitsArm[output].set(run, true); // the zone may have been armed while the output was faulted
            }
        }
    }

    /** A person stands a zone down: what was asked before they did is refused, even when it arrives later (S3). */
    public void standDown(final RunState run, final int zone) {
        generation.set(run, generation.of(run) + 1);
        rest(run, zone);
    }

    /** Ends a zone's wish: rest-ward, never refused. */
    public void rest(final RunState run, final int zone) {
        warning[zone].stop(run);
        airSettles[zone].stop(run);
        wish[zone].set(run, Wish.RESTING);
    }

    /** Begins the warning before a zone is armed. */
    public void warn(final RunState run, final int zone, final long lengthNs) {
        wish[zone].set(run, Wish.WARNING);
        warning[zone].start(run, lengthNs);
    }

    /** Arms a zone: from now on its outputs that waited for a later arm wait no more. */
    public void arm(final RunState run, final int zone, final long airSettlesNs) {
        warning[zone].stop(run);
        wish[zone].set(run, Wish.ARMED);
        airSettles[zone].start(run, airSettlesNs);
        for (int o = 0; o < zoneOf.length; o++) {
            if (zoneOf[o] == zone) {
                awaitsArm[o].set(run, false);
            }
        }
    }

    public void bench(final RunState run, final int zone) {
        wish[zone].set(run, Wish.BENCH);
    }

    public boolean isStopped(final RunState run) {
        return stop.is(run);
    }

    public boolean isControllerFaulted(final RunState run) {
        return controllerFault.is(run);
    }

    public boolean isZoneFaulted(final RunState run, final int zone) {
        return zoneFault[zone].is(run);
    }

    public boolean isOutputFaulted(final RunState run, final int output) {
        return outputFault[output].is(run);
    }

    public boolean awaitsArm(final RunState run, final int output) {
        return awaitsArm[output].is(run);
    }

    public Wish wish(final RunState run, final int zone) {
        return wish[zone].of(run);
    }

    public boolean isWarningOver(final RunState run, final int zone) {
        return wish[zone].of(run) == Wish.WARNING && warning[zone].isDue(run);
    }

    public boolean hasAirSettled(final RunState run, final int zone) {
        return airSettles[zone].isDue(run);
    }

    /** Whether anything latched forbids arming the zone. */
    public boolean isZoneLatched(final RunState run, final int zone) {
        return stop.is(run) || controllerFault.is(run) || zoneFault[zone].is(run) || !zoneLockout[zone].isEmpty(run);
    }

    public long zoneLockout(final RunState run, final int zone) {
        return zoneLockout[zone].of(run);
    }

    public long outputLockout(final RunState run, final int output) {
        return outputLockout[output].of(run);
    }

    /** What energising requests must quote; rises with every new latch. */
    public long generation(final RunState run) {
        return generation.of(run);
    }

    /** Since when a zone has had its mode. */
    public long sinceNs(final RunState run, final int zone) {
        return zoneSince[zone].atNs(run);
    }

    public void markModeOf(final RunState run, final int zone) {
        zoneSince[zone].mark(run);
    }

    /** The zone's mode, worst first; never stored. */
    public Mode zoneMode(final RunState run, final int zone) {
        if (stop.is(run)) {
            return Mode.STOPPED;
        }
        if (controllerFault.is(run) || zoneFault[zone].is(run)) {
            return Mode.FAULTED;
        }
        if (!zoneLockout[zone].isEmpty(run)) {
            return Mode.LOCKED_OUT;
        }
        return switch (wish[zone].of(run)) {
            case BENCH -> Mode.BENCH;
            case WARNING -> Mode.WARNING;
            case ARMED -> Mode.ARMED;
            case RESTING -> Mode.RESTING;
        };
    }

    /** The output's mode: the worst of its zone's and its own. */
    public Mode outputMode(final RunState run, final int output) {
        final Mode zone = zoneMode(run, zoneOf[output]);
        final Mode own = outputFault[output].is(run)
                ? Mode.FAULTED
                : !outputLockout[output].isEmpty(run)
                        ? Mode.LOCKED_OUT
                        : awaitsArm[output].is(run) ? Mode.RESTING : Mode.ARMED;
        if (zone == Mode.STOPPED || zone == Mode.FAULTED) {
            return zone;
        }
        if (own == Mode.FAULTED || own == Mode.LOCKED_OUT) {
            return own;
        }
        return zone == Mode.ARMED && own == Mode.RESTING ? Mode.RESTING : zone;
    }

    /** A number that differs whenever something that must outlive a restart has changed. */
    public long signature(final RunState run) {
        long sum = generation.of(run);
        sum = 31 * sum + (stop.is(run) ? 1 : 0) + (controllerFault.is(run) ? 2 : 0);
        for (final Flag fault : zoneFault) {
            sum = 31 * sum + (fault.is(run) ? 1 : 0);
        }
        for (final Bits locked : zoneLockout) {
            sum = 31 * sum + locked.of(run);
        }
        for (int o = 0; o < outputFault.length; o++) {
            sum = 31 * sum + outputLockout[o].of(run);
            sum = 31 * sum + (outputFault[o].is(run) ? 1 : 0);
        }
        return sum;
    }

    private void restAllWishes(final RunState run) {
        for (int z = 0; z < wish.length; z++) {
            rest(run, z);
        }
    }

    private void latched(final RunState run, final Image image, final String what, final String why) {
        generation.set(run, generation.of(run) + 1);
        image.note(new Event.Latched(run.atNs(), what, why));
    }

    private String zoneName(final int zone) {
        return places.zones().get(zone).name();
    }

    private String outputName(final int output) {
        return places.outputs().get(output).name();
    }
}
