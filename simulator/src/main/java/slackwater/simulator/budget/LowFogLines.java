package slackwater.simulator.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.model.Output;
import slackwater.model.Weather;
import slackwater.model.engineering.Chilling;
import slackwater.model.engineering.Droplets;
import slackwater.model.engineering.LowLayer;
import slackwater.model.engineering.MoistAir;
import slackwater.model.engineering.UsualMister;
import slackwater.model.kind.Family;

/** Whether a layer of fog or mist stays low: its excess of density against the wind, and what ice or discs would do. */
final class LowFogLines {
    /** A layer to the knee (common practice, no source). */
    private static final double LAYER_M = 0.4;

    private static final double USUAL_CHILLED_C = 5;
    private static final String ICE = "ice";
    private static final String DRY_ICE = "dry-ice";

    private final Reckoning to;
    private final MoistAir around;
    private final double windMPerS;

    private LowFogLines(final Reckoning to) {
        this.to = to;
        final Weather weather = to.weather();
        around = MoistAir.of(weather.temperatureC(), weather.humidity());
        windMPerS = weather.windMPerS();
    }

    static void add(final Reckoning to) {
        final LowFogLines lines = new LowFogLines(to);
        to.outputs(Family.PUMP).forEach(lines::fog);
        to.outputs(Family.MISTER).forEach(lines::mist);
    }

    private void fog(final Output pump) {
        final Optional<String> by = pump.facts().text("chilled-by");
        if (by.isEmpty() || !(by.get().equals(ICE) || by.get().equals(DRY_ICE))) {
            warm(pump);
            return;
        }
        final List<String> assumed = new ArrayList<>(to.weatherAssumed());
        final double toC = pump.facts().si("chilled-to").orElseGet(() -> {
            assumed.add("chilled to 5 degC (handbook 2.5); chilled-to says it");
            return USUAL_CHILLED_C;
        });
        stays(pump, LowLayer.of(around, Math.min(toC, around.temperatureC()), 0), 0, assumed);
        final OptionalDouble air = pump.facts().si("air");
        if (air.isEmpty()) {
            to.leaveOut("how much " + by.get() + " chills " + pump.name() + ": say air, the flow through the chiller");
            return;
        }
        final double heatW = new Chilling(around, air.getAsDouble()).heatW(Math.min(toC, around.temperatureC()));
        final double kgPerS = by.get().equals(ICE) ? Chilling.iceKgPerS(heatW) : Chilling.dryIceKgPerS(heatW, toC);
        to.add(new Entry(Line.Group.LOW_FOG, by.get() + " that " + pump.name() + " takes while its chiller runs")
                .asks(kgPerS, Measure.KILOGRAM_PER_HOUR)
                .by("sensible heat and condensation over heat of melting (handbook 2.5)")
                .assuming(assumed)
                .told());
    }

    /** Fog straight from a heater rises until it has mixed; only chilling keeps it down. */
    private void warm(final Output pump) {
        final double neededExcess = LowLayer.excessAgainst(LAYER_M, Math.max(windMPerS, 0.1));
        final double chillC = (around.temperatureC() + 273.15) / (1 + neededExcess) - 273.15;
        to.add(new Entry(Line.Group.LOW_FOG, "speed of the layer that " + pump.name() + " makes")
                .asks(windMPerS, Measure.METRE_PER_SECOND)
                .has(0, Measure.METRE_PER_SECOND)
                .by("warm fog rises until it has mixed (handbook 2.5)")
                .assuming(to.weatherAssumed())
                .advice("chill it below " + new Amount(chillC, Measure.CELSIUS).text()
                        + " (chilled-by = \"ice\") where it should stay low in this wind")
                .line(Verdict.LOOK));
    }

    private void mist(final Output mister) {
        final double airM3PerS = mister.facts().siOr("air", 0);
        if (airM3PerS <= 0) {
            to.leaveOut("whether the mist of " + mister.name() + " stays low: say air, the flow that carries it away");
            return;
        }
        final List<String> assumed = new ArrayList<>(to.weatherAssumed());
        final double loadKgPerM3 = Droplets.loadKgPerM3(MistLines.usesM3PerS(mister, assumed), airM3PerS);
        stays(mister, LowLayer.of(around, around.temperatureC(), loadKgPerM3), airM3PerS, assumed);
    }

    private void stays(final Output output, final LowLayer layer, final double airM3PerS, final List<String> assumed) {
        final double frontMPerS = layer.frontMPerS(LAYER_M);
        assumed.add("a layer of 0.4 m (common practice, no source)");
        to.add(new Entry(Line.Group.LOW_FOG, "speed of the layer that " + output.name() + " makes")
                .asks(windMPerS, Measure.METRE_PER_SECOND)
                .has(frontMPerS, Measure.METRE_PER_SECOND)
                .by("sqrt(g h excess), excess by chilling " + percent(layer.chilling()) + ", evaporation "
                        + percent(layer.evaporation()) + ", droplets " + percent(layer.droplets()) + " (handbook 2.5)")
                .assuming(assumed)
                .advice(remedy(layer, airM3PerS))
                .cautioned());
    }

    private String remedy(final LowLayer layer, final double airM3PerS) {
        final double needed = LowLayer.excessAgainst(LAYER_M, windMPerS);
        final double missing = Math.max(0, needed - layer.excess());
        final double chillC = (around.temperatureC() + 273.15) / (1 + needed) - 273.15;
        final String chill = "shelter from the wind, or chilling to " + new Amount(chillC, Measure.CELSIUS).text();
        if (airM3PerS <= 0) {
            return chill;
        }
        final double moreKgPerS = missing * around.densityKgPerM3() * airM3PerS;
        final double discs = StrictMath.ceil(moreKgPerS / 1_000 / UsualMister.DISC_M3_PER_S.middle());
        return chill + ", or " + (long) discs + " more discs of 350 cm3/h in the same air";
    }

    private static String percent(final double share) {
        return new Amount(share, Measure.PERCENT).text();
    }
}
