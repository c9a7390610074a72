package slackwater.controller.mode;

import java.util.Optional;
import slackwater.controller.command.Commands;
import slackwater.controller.command.Request;
import slackwater.controller.command.Scales;
import slackwater.controller.command.Secrets;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.latch.Latches;
import slackwater.controller.latch.LockoutNames;
import slackwater.controller.run.RunState;
import slackwater.model.event.Event;

/** Takes commands at their fixed place in the scan: rest-ward ones first and always, requests if they may (S3). */
final class Desk {
    private final Places places;
    private final Latches latches;
    private final Zones zones;
    private final LockoutNames names;
    private final Secrets secrets;
    private final Scales scales;
    private final long bootId;

    Desk(final ModeStage.Parts parts, final Zones zones) {
        places = parts.places();
        latches = parts.latches();
        names = parts.names();
        secrets = parts.secrets();
        scales = parts.scales();
        bootId = parts.bootId();
        this.zones = zones;
    }

    void take(final RunState run, final Image image, final Commands commands) {
        takeRestWard(run, image, commands);
        for (int taken = 0; taken < Commands.QUEUE_MAX; taken++) {
            final Optional<Request> next = commands.takeRequest();
            if (next.isEmpty()) {
                return;
            }
            final Optional<String> why = answer(run, image, next.get());
            image.note(new Event.Commanded(run.atNs(), next.get().text(), why.isEmpty(), why.orElse("")));
        }
    }

    private void takeRestWard(final RunState run, final Image image, final Commands commands) {
        if (commands.takeStop()) {
            latches.stop(run, image, "stop was sent");
        }
        final long standDown = commands.takeStandDown();
        for (int zone = 0; standDown != 0 && zone < zones.count(); zone++) {
            if ((standDown & 1L << zone) != 0) {
                zones.standDownByHand(run, zone);
            }
        }
        if (commands.takeLinkLost()) {
            zones.linkLost(run, image);
        }
        if (commands.takeLockoutNews()) {
            for (int zone = 0; zone < zones.count(); zone++) {
                final long people = commands.takeZoneLockout(zone);
                if (people != 0) {
                    latches.lockOutZone(run, image, zone, people);
                }
            }
            for (int output = 0; output < places.outputs().size(); output++) {
                final long people = commands.takeOutputLockout(output);
                if (people != 0) {
                    latches.lockOutOutput(run, image, output, people);
                }
            }
        }
    }

    /** Why the request is refused, or empty when it was taken. */
    private Optional<String> answer(final RunState run, final Image image, final Request request) {
        if (request.seen().bootId() != bootId) {
            return Optional.of("it was meant for an earlier start of this controller; look again and ask again");
        }
        if (request.seen().generation() != latches.generation(run)) {
            return Optional.of("something has latched since it was sent; look again and ask again");
        }
        return switch (request.wants()) {
            case ARM -> inZone(request, zone -> zones.arm(run, image, zone));
            case WARM -> inZone(request, zone -> zones.warm(run, zone));
            case BENCH -> inZone(request, zone -> zones.bench(run, zone));
            case UNLOCK_ZONE -> inZone(request, zone -> unlock(run, image, request, zone, -1));
            case UNLOCK_OUTPUT -> atOutput(request, output -> unlock(run, image, request, -1, output));
            case WEIGH ->
                atOutput(request, output -> scales.weigh(run, image, output, request.usedKg(), request.who()));
        };
    }

    private Optional<String> atOutput(
            final Request request, final java.util.function.IntFunction<Optional<String>> answer) {
        return places.hasOutput(request.target())
                ? answer.apply(places.output(request.target()))
                : Optional.of("no output here is called " + request.target());
    }

    private Optional<String> inZone(
            final Request request, final java.util.function.IntFunction<Optional<String>> answer) {
        for (int zone = 0; zone < zones.count(); zone++) {
            if (zones.name(zone).equals(request.target())) {
                return answer.apply(zone);
            }
        }
        return Optional.of("no zone here is called " + request.target());
    }

    private Optional<String> unlock(
            final RunState run, final Image image, final Request request, final int zone, final int output) {
        final boolean isOverride = secrets.isOverride(request.secret());
        if (!isOverride && !secrets.isOwn(request.who(), request.secret())) {
            return Optional.of("a lock comes off with the secret of the person who put it on");
        }
        if (!isOverride && names.isShared(request.who())) {
            return Optional.of("too many people hold locks to tell yours apart; use the key override");
        }
        final long held = zone >= 0 ? latches.zoneLockout(run, zone) : latches.outputLockout(run, output);
        final long own = isOverride ? held : names.maskOf(request.who());
        if ((held & own) == 0) {
            return Optional.of(request.who() + " holds no lock there");
        }
        if (zone >= 0) {
            latches.unlockZone(run, zone, own);
        } else {
            latches.unlockOutput(run, output, own);
        }
        image.note(new Event.Cleared(
                run.atNs(),
                "lockout of " + request.target(),
                isOverride ? "key override, asked for by " + request.who() : request.who()));
        return Optional.empty();
    }
}
