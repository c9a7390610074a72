package slackwater.controller.mode;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.latch.Latches;
import slackwater.controller.run.RunState;
import slackwater.model.Input;
import slackwater.model.kind.InputFamily;

/** What must be so before a zone may be armed (S6). */
final class ArmingRules {
    private final Places places;
    private final int[] stops;
    private final int[][] reachesOfZone;
    private final int[][] outputsOfZone;

    ArmingRules(final Places places) {
        this.places = places;
        final int zones = places.zones().size();
        stops = inputs(input -> input.family() == InputFamily.STOP_LOOP);
        reachesOfZone = new int[zones][];
        outputsOfZone = new int[zones][];
        final int[] zoneOf = places.zoneOfOutput();
        for (int z = 0; z < zones; z++) {
            final int zone = z;
            outputsOfZone[z] = IntStream.range(0, zoneOf.length)
                    .filter(output -> zoneOf[output] == zone)
                    .toArray();
            reachesOfZone[z] = inputs(input -> input.reachOf().stream()
                    .anyMatch(name -> places.hasOutput(name) && zoneOf[places.output(name)] == zone));
        }
    }

    /** Why the zone may not be armed, or empty when it may. */
    Optional<String> refusal(final RunState run, final Image image, final Latches latches, final int zone) {
        if (latches.isZoneLatched(run, zone)) {
            return Optional.of("zone " + places.zones().get(zone).name() + " is "
                    + latches.zoneMode(run, zone)
                            .name()
                            .toLowerCase(java.util.Locale.ROOT)
                            .replace('_', ' '));
        }
        if (!image.hasPassedDropTest) {
            return Optional.of("the hold-up relay has not passed its drop test");
        }
        return firstStop(image).or(() -> firstReach(image, zone)).or(() -> firstEnergised(image, zone));
    }

    /** Whether somebody is, or has just been, in a reach of the zone: cancels a warning. */
    boolean isReachEntered(final Image image, final int zone) {
        for (final int reach : reachesOfZone[zone]) {
            if (!image.provenInactive[reach] || image.sawActive[reach]) {
                return true;
            }
        }
        return false;
    }

    private Optional<String> firstStop(final Image image) {
        for (final int stop : stops) {
            if (!image.provenActive[stop]) {
                return Optional.of(name(stop) + " is not proven closed");
            }
            if (!image.exercised[stop]) {
                return Optional.of(name(stop) + " has not been tried since power-on: press the stop once and reset it");
            }
        }
        return Optional.empty();
    }

    private Optional<String> firstReach(final Image image, final int zone) {
        for (final int reach : reachesOfZone[zone]) {
            if (!image.exercised[reach]) {
                return Optional.of(name(reach) + " has not been tried since power-on: walk through it once");
            }
            if (!image.provenInactive[reach]) {
                return Optional.of(name(reach) + " is not proven clear");
            }
        }
        return Optional.empty();
    }

    private Optional<String> firstEnergised(final Image image, final int zone) {
        return Arrays.stream(outputsOfZone[zone])
                .filter(output -> image.energised[output]
                        && places.outputs().get(output).family().moves())
                .mapToObj(output -> places.outputs().get(output).name() + " is not at rest")
                .findFirst();
    }

    private String name(final int input) {
        return places.inputs().get(input).name();
    }

    private int[] inputs(final java.util.function.Predicate<Input> wanted) {
        return IntStream.range(0, places.inputs().size())
                .filter(i -> wanted.test(places.inputs().get(i)))
                .toArray();
    }
}
