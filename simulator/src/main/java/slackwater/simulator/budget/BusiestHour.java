package slackwater.simulator.budget;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.controller.cue.CueCode;
import slackwater.model.Air;
import slackwater.model.Circuit;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.Supply;
import slackwater.model.WalkWay;
import slackwater.model.kind.Family;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.evening.Assumed;
import slackwater.simulator.evening.EveningPlan;
import slackwater.simulator.evening.EveningRun;
import slackwater.simulator.report.LinePlot;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.visitor.CrowdMaker;
import slackwater.simulator.yard.Yard;

/** The busiest hour as the simulator plays it: tank, blocks and currents over time, from the opening on. */
public final class BusiestHour {
    private static final long SEED = 1;
    private static final int SECONDS = 3_600;
    private static final double BAR_PA = 100_000;

    private final Rig rig;
    private final VirtualBench bench;
    private final long opensNs;

    private BusiestHour(final Rig built, final Show show, final List<CueCode> codes) {
        final Rig assumed = Assumed.of(built).rig();
        final WalkWay way = assumed.surroundings().way().orElseThrow();
        final double groups = Demand.of(assumed, show).busiestGroups();
        rig = assumed;
        final long startMs = EveningPlan.startOf(rig, show);
        final Duration opens = EveningPlan.opensAfter(rig, show, startMs);
        final Duration lasts = opens.plusSeconds(SECONDS);
        opensNs = opens.toNanos();
        final Crowd crowd = CrowdMaker.draw(
                Optional.of(new WalkWay(way.points(), way.widthM(), groups)), SEED, opensNs, lasts.toNanos());
        bench = new EveningRun(new EveningPlan(rig, show, codes, SEED, startMs, lasts, crowd, Optional.empty(), true))
                .bench();
    }

    /** The pictures of what there is: none of air without a tank, none of heat without a heater. */
    public static List<LinePlot> plots(final Rig rig, final Show show, final List<CueCode> codes) {
        return new BusiestHour(rig, show, codes).draw();
    }

    private List<LinePlot> draw() {
        final List<Integer> heaters = new ArrayList<>();
        final List<Integer> lines = new ArrayList<>();
        for (int i = 0; i < rig.outputs().size(); i++) {
            final Family family = rig.outputs().get(i).family();
            if (family == Family.HEATER) {
                heaters.add(i);
            } else if (family == Family.AIR_SUPPLY) {
                lines.add(i);
            }
        }
        final List<String> sources = new ArrayList<>();
        rig.surroundings().circuits().stream().map(Circuit::name).forEach(sources::add);
        rig.surroundings().supplies().stream().map(Supply::name).forEach(sources::add);
        final double[] tank = new double[SECONDS];
        final double[][] line = new double[lines.size()][SECONDS];
        final double[][] block = new double[heaters.size()][SECONDS];
        final double[][] amps = new double[sources.size()][SECONDS];
        for (int second = 0; second < SECONDS; second++) {
            bench.runTo(opensNs + second * 1_000_000_000L);
            final Yard yard = bench.yard();
            tank[second] = yard.tankPa() / BAR_PA;
            fill(line, second, i -> yard.linePa(lines.get(i)) / BAR_PA);
            fill(block, second, i -> yard.blockC(heaters.get(i)));
            fill(amps, second, i -> yard.currentA(sources.get(i)));
        }
        final List<LinePlot> plots = new ArrayList<>();
        rig.surroundings().air().ifPresent(air -> plots.add(pressure(air, tank, line, lines)));
        if (!heaters.isEmpty()) {
            plots.add(plot("Block temperature", "degC", named(heaters, block), List.of()));
        }
        for (int i = 0; i < sources.size(); i++) {
            plots.add(plot(
                    "Current of " + sources.get(i),
                    "A",
                    List.of(LinePlot.Series.of(sources.get(i), amps[i])),
                    List.of(limit(sources.get(i)))));
        }
        return plots;
    }

    private interface Gauge {
        double of(int index);
    }

    private static void fill(final double[][] series, final int second, final Gauge gauge) {
        for (int i = 0; i < series.length; i++) {
            series[i][second] = gauge.of(i);
        }
    }

    private LinePlot pressure(final Air air, final double[] tank, final double[][] line, final List<Integer> lines) {
        final List<LinePlot.Series> series = new ArrayList<>(List.of(LinePlot.Series.of("tank", tank)));
        series.addAll(named(lines, line));
        return plot(
                "Pressure", "bar", series, List.of(new LinePlot.Limit("working pressure", air.workingPa() / BAR_PA)));
    }

    private List<LinePlot.Series> named(final List<Integer> outputs, final double[][] values) {
        final List<LinePlot.Series> series = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            final Output output = rig.outputs().get(outputs.get(i));
            series.add(LinePlot.Series.of(output.name(), values[i]));
        }
        return series;
    }

    private LinePlot.Limit limit(final String source) {
        return rig.surroundings().circuits().stream()
                .filter(circuit -> circuit.name().equals(source))
                .map(circuit -> new LinePlot.Limit("breaker", circuit.breakerA()))
                .findFirst()
                .orElseGet(() -> new LinePlot.Limit(
                        "supply gives",
                        rig.surroundings().supplies().stream()
                                .filter(supply -> supply.name().equals(source))
                                .mapToDouble(Supply::givesA)
                                .findFirst()
                                .orElse(0)));
    }

    private static LinePlot plot(
            final String title,
            final String unit,
            final List<LinePlot.Series> series,
            final List<LinePlot.Limit> limits) {
        return new LinePlot(title, unit, 1, series, limits);
    }
}
