package slackwater.simulator.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.model.Cue;
import slackwater.model.Input;
import slackwater.model.Output;
import slackwater.model.Start;
import slackwater.model.Step;
import slackwater.model.WalkWay;
import slackwater.model.engineering.Detection;
import slackwater.model.engineering.ValveTimes;
import slackwater.model.engineering.WalkingSpeeds;
import slackwater.model.kind.Family;

/** From the first sensor to the reveal: where on the way the visitor will be by then, and how far ahead a sensor looks. */
final class TimingLines {
    private static final double USUAL_STROKE_S = 0.5;
    private static final double FASTEST_M_PER_S = WalkingSpeeds.ADULT_FASTEST_MEAN_M_PER_S;

    private final Reckoning to;
    private final WayPlaces places;

    private TimingLines(final Reckoning to, final WalkWay way) {
        this.to = to;
        places = new WayPlaces(way);
    }

    static void add(final Reckoning to) {
        final Optional<WalkWay> way = to.rig().surroundings().way();
        if (way.isEmpty()) {
            to.leaveOut("how far ahead sensors look: add [way] with points, width and groups-per-hour");
            return;
        }
        final TimingLines lines = new TimingLines(to, way.get());
        to.demand().cues().forEach(lines::cue);
    }

    private void cue(final CueCost cost) {
        final Optional<Output> prop = cost.uses().keySet().stream()
                .flatMap(name -> to.rig().output(name).stream())
                .filter(output -> output.family().moves() && output.at().isPresent())
                .findFirst();
        if (prop.isEmpty()) {
            return;
        }
        final OptionalDouble seenM = seenAtM(cost.cue());
        if (seenM.isEmpty()) {
            to.leaveOut("how far ahead " + cost.cue().name() + " sees people: say where its sensors stand and look");
            return;
        }
        final double propM = places.nearestM(prop.get().at().orElseThrow());
        final List<String> assumed = new ArrayList<>();
        final double revealsS = revealsS(cost, prop.get(), assumed);
        reveal(cost, prop.get(), seenM.getAsDouble(), propM, revealsS, assumed);
        if (cost.cue().steps().stream().noneMatch(Step.Await.class::isInstance)) {
            // what waits for something is not meant to meet the visitor on the way
            ahead(cost, prop.get(), propM - seenM.getAsDouble(), revealsS, assumed);
        }
    }

    private void reveal(
            final CueCost cost,
            final Output prop,
            final double seenM,
            final double propM,
            final double revealsS,
            final List<String> assumed) {
        to.add(new Entry(Line.Group.TIMING, cost.cue().name() + ": from the sensor to " + prop.name() + " at its end")
                .asks(revealsS, Measure.SECOND)
                .by("proving, cue, valve and stroke")
                .assuming(assumed)
                .told());
        final double leftM = propM - Detection.atRevealM(seenM, FASTEST_M_PER_S, revealsS);
        to.add(new Entry(
                        Line.Group.TIMING,
                        cost.cue().name() + ": the visitor by then, "
                                + (leftM >= 0 ? "short of the prop" : "beyond the prop"))
                .asks(Math.abs(leftM), Measure.METRE)
                .by("place where first seen + speed x time (handbook 5.4)")
                .assuming(assumed)
                .told());
    }

    private void ahead(
            final CueCost cost,
            final Output prop,
            final double leadM,
            final double revealsS,
            final List<String> assumed) {
        final double needsM = FASTEST_M_PER_S * revealsS;
        to.add(new Entry(
                        Line.Group.TIMING,
                        cost.cue().name() + ": how far ahead of " + prop.name() + " its sensor looks")
                .asks(needsM, Measure.METRE)
                .has(Math.max(0, leadM), Measure.METRE)
                .by("speed x time; 1.43 m/s, the fastest stratum's mean (handbook 5.4 case 1)")
                .assuming(assumed)
                .advice("move the sensor " + new Amount(needsM - leadM, Measure.METRE).text()
                        + " further up the way, or shorten the time to the reveal to "
                        + new Amount(Math.max(0, leadM) / FASTEST_M_PER_S, Measure.SECOND).text())
                .judged());
    }

    /** Where along the way the last of the needed sensors first sees somebody who comes from its beginning. */
    private OptionalDouble seenAtM(final Cue cue) {
        final Start start = cue.start();
        double latestM = 0;
        for (final String name : start.inputs()) {
            final Optional<Input> input = to.rig().input(name);
            final OptionalDouble seesM =
                    input.isPresent() ? places.firstSeenM(input.get().sees()) : OptionalDouble.empty();
            if (seesM.isEmpty()) {
                return OptionalDouble.empty();
            }
            latestM = Math.max(latestM, seesM.getAsDouble());
        }
        return OptionalDouble.of(latestM);
    }

    private double revealsS(final CueCost cost, final Output prop, final List<String> assumed) {
        final double provesS = cost.cue().start().inputs().stream()
                .flatMap(name -> to.rig().input(name).stream())
                .mapToDouble(input -> CueCost.seconds(input.proving().activeAfter()))
                .max()
                .orElse(0);
        final double scanS = CueCost.seconds(to.rig().scan());
        return scanS + provesS + cost.use(prop.name()).latestFirstS() + movesS(prop, assumed);
    }

    private static double movesS(final Output prop, final List<String> assumed) {
        final Optional<Double> strokeS = prop.facts().duration("strokes-in").map(CueCost::seconds);
        if (prop.family() != Family.VALVE) {
            return 0;
        }
        if (strokeS.isEmpty()) {
            assumed.add("a stroke of 0.5 s (common practice, no source); strokes-in says it");
        }
        final Optional<Double> opensS = prop.facts().duration("opens-in").map(CueCost::seconds);
        if (opensS.isEmpty()) {
            assumed.add("a pilot valve that opens in 21 ms (common practice, handbook 1.8); opens-in says it");
        }
        return strokeS.orElse(USUAL_STROKE_S) + opensS.orElse(ValveTimes.PILOT_ON_S.middle());
    }
}
