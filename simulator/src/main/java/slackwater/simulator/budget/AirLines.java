package slackwater.simulator.budget;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slackwater.model.Air;
import slackwater.model.Output;
import slackwater.model.engineering.AirTank;
import slackwater.model.engineering.FlowPath;
import slackwater.model.engineering.FreeAir;
import slackwater.model.engineering.Hose;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;
import slackwater.simulator.budget.Demand.Pace;

/** Compressed air: what greetings take, what the compressor gives, and how long the tank bridges the rest. */
final class AirLines {
    private static final double S_PER_H = 3_600;
    private static final double FREE_PA = FreeAir.ATMOSPHERE_PA;

    /** A pressure switch opens a tenth below its set point (common practice, no source). */
    private static final double FALLS_SHARE = 0.9;

    /** More than a tenth of the pressure lost in a hose is felt (common practice, no source). */
    private static final double MOST_LOST_SHARE = 0.1;

    private static final double USUAL_STROKE_S = 0.5;
    private static final double FINEST_M = 0.0005;
    private static final double WIDEST_M = 0.1;

    private final Reckoning to;
    private final Demand demand;
    private final Air air;
    private final Map<String, AirUse> uses = new LinkedHashMap<>();
    private final List<String> assumed = new ArrayList<>();

    private AirLines(final Reckoning to, final Air air) {
        this.to = to;
        this.air = air;
        demand = to.demand();
        assumed.addAll(demand.assumed());
        for (final Output valve : to.outputs(Family.VALVE)) {
            final Optional<AirUse> use = AirUse.of(valve, air.workingPa());
            use.ifPresentOrElse(
                    found -> uses.put(valve.name(), found),
                    () -> to.leaveOut(
                            "the air of " + valve.name() + ": say bore and travel, nozzle, or air-per-stroke"));
        }
        uses.values().forEach(use -> assumed.addAll(use.assumed()));
    }

    static void add(final Reckoning to) {
        final boolean usesAir = !to.outputs(Family.VALVE).isEmpty();
        final Optional<Air> air = to.rig().surroundings().air();
        if (usesAir && air.isEmpty()) {
            to.leaveOut("whether the air suffices: add [air] with tank, cut-in, cut-out, delivers and working");
        }
        if (usesAir && air.isPresent()) {
            final AirLines lines = new AirLines(to, air.get());
            if (!lines.uses.isEmpty()) {
                lines.all();
            }
        }
    }

    private void all() {
        perGreeting();
        rate("air without a pause between greetings", Pace.WITHOUT_PAUSE);
        rate("air in the busiest hour", Pace.BUSIEST_HOUR);
        lasts();
        switchDrops();
        recovery();
        pressure();
        starts();
        duty();
        regulator();
        hoses();
    }

    private void perGreeting() {
        for (final CueCost cost : demand.cues()) {
            final double freeM3 = greetingM3(cost);
            if (freeM3 > 0) {
                to.add(line("one " + cost.cue().name() + " at its longest")
                        .asks(freeM3, Measure.LITRE)
                        .by(formulaOf(cost))
                        .told());
            }
        }
    }

    private void rate(final String about, final Pace pace) {
        final double asksM3PerS = useM3PerS(pace);
        final Entry entry = line(about)
                .asks(asksM3PerS, Measure.LITRE_PER_MINUTE)
                .has(air.deliveryM3PerS(), Measure.LITRE_PER_MINUTE)
                .by("free air delivered against free air used (handbook 1.2, 1.6)")
                .advice("the tank bridges it for " + bridges(asksM3PerS) + "; see the lines below");
        to.add(entry.cautioned());
    }

    /** The busiest hour on tank and compressor together, down to the working pressure. */
    private void lasts() {
        final double asksM3PerS = useM3PerS(Pace.BUSIEST_HOUR);
        final double lastsS = lastsS(asksM3PerS, air.workingPa());
        to.add(line("how long full force lasts in the busiest hour")
                .asks(S_PER_H, Measure.MINUTE)
                .has(lastsS, Measure.MINUTE)
                .by("receiver with steady draw and delivery, isothermal (handbook 1.6)")
                .advice(remedy(asksM3PerS))
                .judged());
    }

    private void switchDrops() {
        to.rig().inputs().stream()
                .filter(input -> input.family() == InputFamily.PRESSURE)
                .filter(input -> input.facts().si("set-point").isPresent())
                .forEach(input -> {
                    final double opensPa = FALLS_SHARE * input.facts().siOr("set-point", 0);
                    final double lastsS = lastsS(useM3PerS(Pace.BUSIEST_HOUR), Math.min(opensPa, air.workingPa()));
                    to.add(line("when " + input.name() + " drops in the busiest hour")
                            .asks(S_PER_H, Measure.MINUTE)
                            .has(lastsS, Measure.MINUTE)
                            .by("receiver with steady draw and delivery, isothermal (handbook 1.6)")
                            .assuming(List.of(
                                    "the switch opens a tenth below its set point (common practice, no source)"))
                            .advice(remedy(useM3PerS(Pace.BUSIEST_HOUR)))
                            .judged());
                });
    }

    private void recovery() {
        for (final CueCost cost : demand.cues()) {
            final double freeM3 = greetingM3(cost);
            if (freeM3 > 0) {
                final double spareM3PerS = air.deliveryM3PerS() - leakM3PerS();
                final double recoversS = spareM3PerS > 0 ? freeM3 / spareM3PerS : Double.POSITIVE_INFINITY;
                final double periodS = demand.periodS(cost);
                to.add(line("recovery after one " + cost.cue().name())
                        .asks(recoversS, Measure.SECOND)
                        .has(periodS, Measure.SECOND)
                        .by("t = V dp / (Q pa) (handbook 1.6)")
                        .advice("again-after-clear or hold-off of " + seconds(recoversS)
                                + " lets the compressor keep up with this cue alone")
                        .cautioned());
            }
        }
    }

    private void pressure() {
        to.add(line("tank pressure at which the compressor starts")
                .asks(highestWorkingPa(), Measure.BAR)
                .has(air.cutInPa(), Measure.BAR)
                .by("the tank must stand above every regulator (common practice, no source)")
                .advice("set cut-in above " + new Amount(highestWorkingPa(), Measure.BAR).text())
                .judged());
    }

    private void starts() {
        final double drawM3PerS = useM3PerS(Pace.USUAL_HOUR);
        final double startsPerHour = startsPerHour(drawM3PerS);
        final Entry entry = line("compressor starts in a usual hour")
                .asks(startsPerHour, Measure.PER_HOUR)
                .by("pump-up and draw-down between cut-in and cut-out (handbook 1.6)");
        if (air.plate().starts().isEmpty()) {
            to.add(entry.told());
            to.leaveOut("how often the compressor may start: say starts in [air], from its plate");
            return;
        }
        final double allowed = air.plate().starts().get().most()
                * S_PER_H
                / CueCost.seconds(air.plate().starts().get().within());
        final double bandPa = air.cutOutPa() - air.cutInPa();
        to.add(entry.has(allowed, Measure.PER_HOUR)
                .advice("a tank of " + litresUp(air.tankM3() * startsPerHour / allowed) + ", or a band wider than "
                        + new Amount(bandPa, Measure.BAR).text())
                .judged());
    }

    private void duty() {
        final double share = Math.min(1, useM3PerS(Pace.BUSIEST_HOUR) / air.deliveryM3PerS());
        final Entry entry = line("compressor running in the busiest hour")
                .asks(share, Measure.PERCENT)
                .by("share of time = draw / delivery");
        if (air.plate().duty().isEmpty()) {
            to.add(entry.told());
            to.leaveOut("how much of the time the compressor may run: say duty in [air], from its plate");
            return;
        }
        to.add(entry.has(air.plate().duty().getAsDouble(), Measure.PERCENT)
                .advice("a compressor that delivers "
                        + new Amount(
                                        useM3PerS(Pace.BUSIEST_HOUR)
                                                / air.plate().duty().getAsDouble(),
                                        Measure.LITRE_PER_MINUTE)
                                .text()
                        + " runs no longer than it may")
                .judged());
    }

    /** The largest flow that one valve takes, against what regulator and line pass while the tank is at cut-in. */
    private void regulator() {
        final Optional<Double> largest = to.outputs(Family.VALVE).stream()
                .filter(valve -> uses.containsKey(valve.name()))
                .map(this::flowM3PerS)
                .max(Double::compare);
        if (air.plate().flowM3PerS().isEmpty()) {
            to.leaveOut("whether regulator and line pass enough: say flow in [air], the nominal flow");
            return;
        }
        largest.ifPresent(asks -> {
            final FlowPath path =
                    FlowPath.fromNominalFlow(air.plate().flowM3PerS().getAsDouble(), FlowPath.USUAL_CRITICAL_RATIO);
            final double passes = path.freeFlowM3PerS(
                    FreeAir.absolutePa(air.cutInPa()), FreeAir.absolutePa(air.workingPa()), FreeAir.REFERENCE_K);
            to.add(line("flow of the hungriest valve through the regulator")
                    .asks(asks, Measure.LITRE_PER_MINUTE)
                    .has(passes, Measure.LITRE_PER_MINUTE)
                    .by("ISO 6358-1 (handbook 1.3, 1.4)")
                    .assuming(List.of("a critical ratio of 0.3 (handbook 1.4)"))
                    .advice("a regulator and line with a nominal flow of "
                            + new Amount(
                                            air.plate().flowM3PerS().getAsDouble() * asks / passes,
                                            Measure.LITRE_PER_MINUTE)
                                    .text()
                            + ", or a tank close to the banks")
                    .cautioned());
        });
    }

    /** Pressure lost in each hose while its valve takes what it takes. */
    private void hoses() {
        for (final Output valve : to.outputs(Family.VALVE)) {
            final double lengthM = valve.facts().siOr("hose", 0);
            final double boreM = valve.facts().siOr("hose-bore", 0);
            if (lengthM > 0 && boreM > 0 && uses.containsKey(valve.name())) {
                final double gaugePa = valve.facts().siOr("pressure", air.workingPa());
                final Hose hose = new Hose(lengthM, boreM);
                to.add(line("pressure lost in the hose of " + valve.name())
                        .asks(lostPa(valve, hose, gaugePa), Measure.BAR)
                        .has(MOST_LOST_SHARE * gaugePa, Measure.BAR)
                        .by("empirical, steel pipe (handbook 1.7), against a tenth of the pressure (common practice)")
                        .advice("a hose of " + new Amount(wideM(valve, hose, gaugePa), Measure.MILLIMETRE).text()
                                + " inside, or a valve closer to it")
                        .cautioned());
            }
        }
    }

    /** A wider hose also takes more air, since it is filled with every stroke. */
    private double lostPa(final Output valve, final Hose hose, final double gaugePa) {
        final double told = new Hose(hose.lengthM(), valve.facts().siOr("hose-bore", 0)).volumeM3();
        final double moreM3 = (hose.volumeM3() - told) * gaugePa / FREE_PA;
        return hose.empiricalDropPa(flowM3PerS(valve) + moreM3 / strokeS(valve), FreeAir.absolutePa(gaugePa));
    }

    private double wideM(final Output valve, final Hose hose, final double gaugePa) {
        double boreM = hose.diameterM();
        while (boreM < WIDEST_M
                && lostPa(valve, new Hose(hose.lengthM(), boreM), gaugePa) > MOST_LOST_SHARE * gaugePa) {
            boreM += FINEST_M;
        }
        return boreM;
    }

    private double flowM3PerS(final Output valve) {
        final AirUse use = uses.getOrDefault(valve.name(), new AirUse(0, 0, "", List.of()));
        final double strokeS =
                valve.facts().duration("strokes-in").map(CueCost::seconds).orElse(0.5);
        return use.perSecondM3() + use.perStartM3() / strokeS;
    }

    private static double strokeS(final Output valve) {
        return valve.facts().duration("strokes-in").map(CueCost::seconds).orElse(USUAL_STROKE_S);
    }

    private double highestWorkingPa() {
        return Math.max(
                air.workingPa(),
                to.outputs(Family.VALVE).stream()
                        .mapToDouble(valve -> valve.facts().siOr("pressure", 0))
                        .max()
                        .orElse(0));
    }

    private double startsPerHour(final double drawM3PerS) {
        if (drawM3PerS <= 0 || drawM3PerS >= air.deliveryM3PerS()) {
            return 0;
        }
        final AirTank tank = new AirTank(air.tankM3());
        final double bandPa = air.cutOutPa() - air.cutInPa();
        final double runsS = tank.steadyTimeS(bandPa, air.deliveryM3PerS() - drawM3PerS, FREE_PA);
        final double restsS = tank.steadyTimeS(bandPa, drawM3PerS, FREE_PA);
        return S_PER_H / (runsS + restsS);
    }

    private String bridges(final double asksM3PerS) {
        final double lastsS = lastsS(asksM3PerS, air.workingPa());
        return Double.isInfinite(lastsS) ? "ever" : new Amount(lastsS, Measure.MINUTE).text();
    }

    /** From a full tank until it stands at a pressure; without end where the compressor keeps up. */
    private double lastsS(final double asksM3PerS, final double downToPa) {
        final double netM3PerS = asksM3PerS - air.deliveryM3PerS();
        return netM3PerS <= 0
                ? Double.POSITIVE_INFINITY
                : new AirTank(air.tankM3()).steadyTimeS(Math.max(0, air.cutOutPa() - downToPa), netM3PerS, FREE_PA);
    }

    /** What would carry the busiest hour: a larger tank, a larger compressor, or a longer wait of the hungriest cue. */
    private String remedy(final double asksM3PerS) {
        final double netM3PerS = asksM3PerS - air.deliveryM3PerS();
        if (netM3PerS <= 0 || air.cutOutPa() <= air.workingPa()) {
            return "a higher cut-out, or a lower working pressure";
        }
        final AirTank tank = AirTank.bridging(S_PER_H, netM3PerS, FREE_PA, air.cutOutPa(), air.workingPa());
        final String larger = "a tank of " + litresUp(tank.volumeM3()) + ", a compressor that delivers "
                + new Amount(asksM3PerS, Measure.LITRE_PER_MINUTE).text();
        return larger + hungriest().flatMap(cost -> slower(cost, netM3PerS)).orElse("");
    }

    private Optional<CueCost> hungriest() {
        return demand.cues().stream()
                .filter(cost -> greetingM3(cost) > 0)
                .max((a, b) -> Double.compare(busiestM3PerS(a), busiestM3PerS(b)));
    }

    /** The wait after which the hungriest cue leaves just as much as is missing; empty where no wait does. */
    private Optional<String> slower(final CueCost cost, final double netM3PerS) {
        final double keepsM3PerS = busiestM3PerS(cost) - netM3PerS;
        if (keepsM3PerS <= 0) {
            return Optional.empty();
        }
        // served = groups / (1 + groups * period / 3600), turned round
        final double playsPerHour = keepsM3PerS * S_PER_H / meanGreetingM3(cost);
        final double periodS = S_PER_H * (1 / playsPerHour - 1 / demand.busiestGroups());
        return Optional.of(", or " + cost.cue().name() + " at most every " + seconds(periodS) + " instead of "
                + seconds(demand.periodS(cost)));
    }

    private double busiestM3PerS(final CueCost cost) {
        return demand.playsPerHour(cost, Pace.BUSIEST_HOUR) * meanGreetingM3(cost) / S_PER_H;
    }

    /** Free air used in an hour, with the leak, per second. */
    private double useM3PerS(final Pace pace) {
        double sumM3 = 0;
        for (final Map.Entry<String, AirUse> use : uses.entrySet()) {
            sumM3 += demand.startsPerHour(use.getKey(), pace) * use.getValue().perStartM3()
                    + demand.onSecondsPerHour(use.getKey(), pace)
                            * use.getValue().perSecondM3();
        }
        return sumM3 / S_PER_H + leakM3PerS();
    }

    private double leakM3PerS() {
        return air.plate().leakM3PerS().orElse(0);
    }

    private double greetingM3(final CueCost cost) {
        double sumM3 = 0;
        for (final Map.Entry<String, AirUse> use : uses.entrySet()) {
            final CueCost.Use own = cost.use(use.getKey());
            sumM3 += own.starts() * use.getValue().perStartM3()
                    + own.longestS() * use.getValue().perSecondM3();
        }
        return sumM3;
    }

    private double meanGreetingM3(final CueCost cost) {
        double sumM3 = 0;
        for (final Map.Entry<String, AirUse> use : uses.entrySet()) {
            final CueCost.Use own = cost.use(use.getKey());
            sumM3 += own.meanStarts() * use.getValue().perStartM3()
                    + own.meanS() * use.getValue().perSecondM3();
        }
        return sumM3;
    }

    private String formulaOf(final CueCost cost) {
        return String.join(
                "; ",
                uses.entrySet().stream()
                        .filter(use -> cost.use(use.getKey()).starts() > 0)
                        .map(use -> use.getValue().formula())
                        .distinct()
                        .toList());
    }

    private Entry line(final String about) {
        return new Entry(Line.Group.AIR, about).assuming(assumed);
    }

    private static String litresUp(final double m3) {
        return (long) StrictMath.ceil(m3 * 1_000) + " l";
    }

    private static String seconds(final double s) {
        return new Amount(s, Measure.SECOND).text();
    }
}
