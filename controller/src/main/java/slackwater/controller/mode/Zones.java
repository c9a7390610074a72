package slackwater.controller.mode;

import java.util.Optional;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.latch.Latches;
import slackwater.controller.latch.Wish;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.model.Arming;
import slackwater.model.Zone;
import slackwater.model.event.Event;

/** The way of each zone from rest to armed and back (S6). */
final class Zones {
    private final Places places;
    private final long warningNs;
    private final long airSettlesNs;
    private final Latches latches;
    private final ArmingRules rules;
    private final Flag[] isWarming;

    Zones(final Places places, final Arming arming, final Latches latches, final Layout layout) {
        this.places = places;
        this.latches = latches;
        warningNs = arming.warning().toNanos();
        airSettlesNs = arming.airSettles().toNanos();
        rules = new ArmingRules(places);
        isWarming = places.zones().stream()
                .map(zone -> layout.flag("zone." + zone.name() + ".warming"))
                .toArray(Flag[]::new);
    }

    int count() {
        return isWarming.length;
    }

    String name(final int zone) {
        return places.zones().get(zone).name();
    }

    /** Begins the warning; returns why not, or empty. */
    Optional<String> arm(final RunState run, final Image image, final int zone) {
        final Wish wish = latches.wish(run, zone);
        if (wish == Wish.ARMED || wish == Wish.WARNING) {
            return Optional.of("zone " + name(zone) + " is armed already; stand it down first");
        }
        final Optional<String> why = rules.refusal(run, image, latches, zone);
        if (why.isEmpty()) {
            latches.warn(run, zone, warningNs);
        }
        return why;
    }

    /** Lets the heaters warm while the zone rests; returns why not, or empty. */
    Optional<String> warm(final RunState run, final int zone) {
        if (latches.isZoneLatched(run, zone)) {
            return Optional.of("something is latched");
        }
        isWarming[zone].set(run, true);
        return Optional.empty();
    }

    /** Takes the zone to the bench; returns why not, or empty. */
    Optional<String> bench(final RunState run, final int zone) {
        if (latches.isZoneLatched(run, zone) || latches.wish(run, zone) != Wish.RESTING) {
            return Optional.of("zone " + name(zone) + " is not resting, or something is latched");
        }
        isWarming[zone].set(run, false);
        latches.bench(run, zone);
        return Optional.empty();
    }

    /** Rest-ward: never refused. */
    void standDown(final RunState run, final int zone) {
        isWarming[zone].set(run, false);
        latches.rest(run, zone);
    }

    /** A zone that does not go on without its network rests when that goes; a person at its key may arm it (S24). */
    void linkLost(final RunState run, final Image image) {
        for (int zone = 0; zone < isWarming.length; zone++) {
            final Zone is = places.zones().get(zone);
            final boolean goesOn = is.whenAlone() == Zone.WhenAlone.GO_ON && is.hasHardWiredStop();
            if (!goesOn) {
                standDown(run, zone);
                image.note(new Event.Commanded(run.atNs(), "stand down " + name(zone), true, "its network is gone"));
            }
        }
    }

    /** Rest-ward and by a person: requests that were sent before it are refused (S3). */
    void standDownByHand(final RunState run, final int zone) {
        isWarming[zone].set(run, false);
        latches.standDown(run, zone);
    }

    boolean isWarming(final RunState run, final int zone) {
        return isWarming[zone].is(run);
    }

    /** Goes on with a warning: cancelled by somebody in the reach, in its last scan too; else it arms. */
    void goOn(final RunState run, final Image image, final int zone) {
        if (latches.isZoneLatched(run, zone)) {
            isWarming[zone].set(run, false);
        }
        if (latches.wish(run, zone) != Wish.WARNING) {
            return;
        }
        if (rules.isReachEntered(image, zone)) {
            latches.rest(run, zone);
            image.note(new Event.Commanded(
                    run.atNs(), "arm " + name(zone), false, "somebody entered the reach during the warning"));
        } else if (latches.isWarningOver(run, zone)) {
            isWarming[zone].set(run, false);
            latches.arm(run, zone, airSettlesNs);
        }
    }
}
