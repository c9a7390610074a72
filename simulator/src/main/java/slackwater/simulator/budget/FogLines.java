package slackwater.simulator.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.model.Circuit;
import slackwater.model.Output;
import slackwater.model.Supply;
import slackwater.model.engineering.FogFluid;
import slackwater.model.kind.Family;
import slackwater.simulator.budget.Demand.Pace;
import slackwater.simulator.yard.BlockFigures;

/** Heat and fluid of fog makers. */
final class FogLines {
    /** Coldest working temperature of a block (handbook 2.4 case 4, common practice). */
    private static final double WORKS_FROM_C = 200;

    private static final double FLUID_KG_PER_M3 = 1_030;
    private static final double USUAL_FLOW_KG_PER_S = 12e-3 / 60;
    private static final double USUAL_VOLTS = 230;
    private static final double S_PER_H = 3_600;

    private final Reckoning to;

    private FogLines(final Reckoning to) {
        this.to = to;
    }

    static void add(final Reckoning to) {
        final FogLines lines = new FogLines(to);
        to.outputs(Family.HEATER).forEach(lines::warmUp);
        to.outputs(Family.PUMP).forEach(lines::pump);
    }

    private void warmUp(final Output heater) {
        final BlockFigures figures = figures(heater);
        final OptionalDouble warmS =
                figures.block().warmUpS(airC(), figures.thermostat().highC(), figures.powerW());
        final Entry entry = entry("warm-up of " + heater.name(), assumed(heater))
                .asks(warmS.orElse(Double.POSITIVE_INFINITY), Measure.MINUTE)
                .by("C dT/dt = P - (T - Ta) / R (handbook 2.3)");
        final Optional<Double> aheadS = to.show().schedule().map(schedule -> CueCost.seconds(schedule.warmUp()));
        if (aheadS.isEmpty()) {
            to.add(entry.told());
            return;
        }
        to.add(entry.has(aheadS.get(), Measure.MINUTE)
                .advice("a warm-up of at least "
                        + new Amount(warmS.orElse(Double.POSITIVE_INFINITY), Measure.MINUTE).text()
                        + " in the show's schedule")
                .judged());
    }

    private void pump(final Output pump) {
        final List<String> assumed = new ArrayList<>();
        final double flowKgPerS = pump.facts().si("flow").orElseGet(() -> {
            assumed.add("a pump of 12 g/min (common practice, handbook 2.4 case 7); flow says it");
            return USUAL_FLOW_KG_PER_S;
        });
        fluid(pump, flowKgPerS, assumed);
        final Optional<Output> heater = pump.facts().text("heated-by").flatMap(to.rig()::output);
        if (heater.isEmpty()) {
            to.leaveOut("how long " + pump.name() + " can pump: say heated-by, its heater");
            return;
        }
        if (pump.facts().si("glycol").isEmpty()) {
            assumed.add("a fluid of 20 % glycol (handbook 2.2); glycol says it");
        }
        assumed.addAll(assumed(heater.get()));
        bursts(pump, figures(heater.get()), flowKgPerS, assumed);
    }

    private void bursts(
            final Output pump, final BlockFigures figures, final double flowKgPerS, final List<String> assumed) {
        final FogFluid fluid = new FogFluid(pump.facts().siOr("glycol", FogFluid.USUAL.glycolShare()));
        final double takenW = flowKgPerS * fluid.heatJPerKg(airC());
        final OptionalDouble longestS =
                figures.block().longestBurstS(figures.thermostat().lowC(), WORKS_FROM_C, figures.powerW() - takenW);
        final double usedS = to.demand().longestUseS(pump.name());
        to.add(entry("longest burst of " + pump.name(), assumed)
                .asks(usedS, Measure.SECOND)
                .has(longestS.orElse(Double.POSITIVE_INFINITY), Measure.SECOND)
                .by("block from thermostat to 200 degC, heater on (handbook 2.3, 2.4)")
                .advice("a shorter burst, a smaller pump, or a heavier block")
                .judged());
        final double onS = to.demand().onSecondsPerHour(pump.name(), Pace.WITHOUT_PAUSE);
        final double sustainedS = sustainedSecondsPerHour(figures, takenW);
        to.add(entry("pumping without a pause between greetings, seconds an hour", assumed)
                .asks(onS, Measure.SECOND)
                .has(sustainedS, Measure.SECOND)
                .by("mean heat into fluid against power less loss (handbook 2.2, 2.3)")
                .advice("bursts of " + new Amount(usedS * sustainedS / Math.max(1e-9, onS), Measure.SECOND).text()
                        + ", or a heater of "
                        + new Amount(figures.powerW() * onS / Math.max(1e-9, sustainedS), Measure.WATT).text())
                .judged());
    }

    /** Seconds an hour for which the heater makes up for the fluid and for its loss. */
    private static double sustainedSecondsPerHour(final BlockFigures figures, final double takenW) {
        final double middleC = (WORKS_FROM_C + figures.thermostat().highC()) / 2;
        final double spareW = figures.powerW() - figures.block().holdingPowerW(middleC);
        return Math.max(0, Math.min(1, spareW / takenW)) * S_PER_H;
    }

    private void fluid(final Output pump, final double flowKgPerS, final List<String> assumed) {
        final double eveningKg = to.demand().onSecondsPerHour(pump.name(), Pace.BUSIEST_HOUR)
                * flowKgPerS
                * to.demand().openS()
                / S_PER_H;
        final Entry entry = entry("fluid of " + pump.name() + " for an evening of busy hours", assumed)
                .assuming(to.demand().assumed())
                .asks(eveningKg / FLUID_KG_PER_M3, Measure.MILLILITRE)
                .by("flow x time on, 1.03 kg/l (common practice, no source)");
        final OptionalDouble holds = pump.facts().si("holds");
        if (holds.isEmpty()) {
            to.add(entry.told());
            to.leaveOut("whether the fluid of " + pump.name() + " lasts: say holds");
            return;
        }
        to.add(entry.has(holds.getAsDouble(), Measure.MILLILITRE)
                .advice("a bottle of " + new Amount(eveningKg / FLUID_KG_PER_M3, Measure.LITRE).text()
                        + ", or fill it up in time")
                .judged());
    }

    private BlockFigures figures(final Output heater) {
        return BlockFigures.of(heater, volts(heater), airC());
    }

    private double volts(final Output heater) {
        final Optional<String> from = heater.load().feed().from();
        final Optional<Double> circuit = to.rig().surroundings().circuits().stream()
                .filter(each -> from.equals(Optional.of(each.name())))
                .map(Circuit::volts)
                .findFirst();
        return circuit.or(() -> to.rig().surroundings().supplies().stream()
                        .filter(each -> from.equals(Optional.of(each.name())))
                        .map(Supply::volts)
                        .findFirst())
                .orElse(USUAL_VOLTS);
    }

    private double airC() {
        return to.weather().temperatureC();
    }

    private List<String> assumed(final Output heater) {
        final List<String> assumed = new ArrayList<>(to.weatherAssumed());
        if (heater.facts().si("power").isEmpty()) {
            assumed.add(heater.name() + " heats with its current at 230 V; power says it");
        }
        if (heater.facts().si("block").isEmpty()) {
            assumed.add("the block of " + heater.name()
                    + " from its warm-up and the loss of handbook 2.3; block, its mass, says it");
        }
        return assumed;
    }

    private static Entry entry(final String about, final List<String> assumed) {
        return new Entry(Line.Group.FOG, about).assuming(assumed);
    }
}
