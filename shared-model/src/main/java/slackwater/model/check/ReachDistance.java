package slackwater.model.check;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.model.engineering.ProtectiveDistance;
import slackwater.model.finding.Findings;

/**
 * A reach curtain hangs far enough away that the prop is at rest before somebody who broke it arrives: K * T + C
 * (handbook 6.7, ISO 13855), with a running child's K. Where one of its figures is left out, the finding says which.
 */
final class ReachDistance implements Rule {
    private static final double MM_PER_M = 1_000;
    private static final double NS_PER_S = 1e9;

    /** Far below any ruler, and above what the arithmetic of a double adds. */
    private static final double ROUNDING_MM = 1e-6;

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Input input : draft.rig().inputs()) {
            if (!input.reachOf().isEmpty()) {
                look(draft, input, findings);
            }
        }
    }

    private static void look(final Draft draft, final Input input, final Findings findings) {
        final OptionalDouble distanceM = input.facts().si("distance");
        final Optional<Duration> respondsIn = input.facts().duration("responds-in");
        if (distanceM.isEmpty()) {
            unsaid(draft, Say.table(input), "distance", input.name(), findings);
        }
        if (respondsIn.isEmpty()) {
            unsaid(draft, Say.table(input), "responds-in", input.name(), findings);
        }
        input.reachOf().stream()
                .flatMap(name -> draft.rig().output(name).stream())
                .forEach(output -> {
                    final Optional<Duration> restsIn = restsIn(output);
                    if (restsIn.isEmpty()) {
                        unsaid(draft, Say.table(output), "time-to-rest", output.name(), findings);
                    } else if (distanceM.isPresent() && respondsIn.isPresent()) {
                        final Duration stops =
                                respondsIn.get().plus(draft.rig().scan()).plus(restsIn.get());
                        tooNear(draft, new Curtain(input, output, distanceM.getAsDouble() * MM_PER_M, stops), findings);
                    }
                });
    }

    private static Optional<Duration> restsIn(final Output output) {
        return output.rest().within().or(() -> output.facts().duration("returns-in"));
    }

    private static void unsaid(
            final Draft draft, final String table, final String key, final String name, final Findings findings) {
        findings.warning(
                "reach-unproven",
                draft.at(table, key),
                Say.words(
                        Say.quoted(name) + " does not say its " + key,
                        "without it nobody knows whether the prop rests before a child who broke the curtain gets there"
                                + " (handbook 6.7, ISO 13855)",
                        switch (key) {
                            case "distance" -> "add distance, from the curtain to the nearest place that moves";
                            case "responds-in" -> "add responds-in, the sensor's response time from its data sheet";
                            default -> "add time-to-rest, measured from switching off to standing still";
                        }));
    }

    /** A curtain before an output, and the time from breaking it to rest. */
    private record Curtain(Input input, Output output, double distanceMm, Duration stops) {

        private OptionalDouble resolutionMm() {
            final OptionalDouble resolutionM = input.facts().si("resolution");
            return resolutionM.isPresent() && resolutionM.getAsDouble() * MM_PER_M <= ProtectiveDistance.FINEST_BEAMS_MM
                    ? OptionalDouble.of(resolutionM.getAsDouble() * MM_PER_M)
                    : OptionalDouble.empty();
        }

        private double neededMm() {
            final double stopsInS = stops.toNanos() / NS_PER_S;
            return resolutionMm().isPresent()
                    ? ProtectiveDistance.yardCurtainMm(stopsInS, resolutionMm().getAsDouble())
                    : ProtectiveDistance.yardBeamsMm(stopsInS);
        }

        private String formula() {
            final String reach = resolutionMm().isPresent()
                    ? "8 * (" + Say.number(resolutionMm().getAsDouble(), 1) + " - 14) mm"
                    : "850 mm";
            return "2000 mm/s * " + Say.time(stops) + " + " + reach;
        }
    }

    private static void tooNear(final Draft draft, final Curtain curtain, final Findings findings) {
        final double neededMm = curtain.neededMm();
        final double roundedUpMm = Math.ceil(neededMm - ROUNDING_MM);
        if (curtain.distanceMm() >= neededMm - ROUNDING_MM) {
            return;
        }
        findings.error(
                "reach-too-near",
                draft.at(Say.table(curtain.input()), "distance"),
                Say.words(
                        Say.quoted(curtain.input().name()) + " hangs "
                                + Say.number(curtain.distanceMm(), 1) + " mm before "
                                + Say.quoted(curtain.output().name()) + ", and "
                                + Say.number(roundedUpMm, 0) + " mm are needed",
                        "a running child gets there before it is at rest: " + curtain.formula()
                                + " (handbook 6.7, ISO 13855; sensor, one scan and time to rest)",
                        "move the curtain to at least " + Say.number(roundedUpMm, 0)
                                + " mm, or make the prop come to rest sooner"));
    }
}
