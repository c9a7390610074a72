package slackwater.simulator.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.model.Output;
import slackwater.model.Return;
import slackwater.model.engineering.AirReference;
import slackwater.model.engineering.Cylinder;
import slackwater.model.engineering.FlowPath;
import slackwater.model.engineering.FreeAir;
import slackwater.model.engineering.Hose;

/**
 * Free air (20 degC, 1.01325 bar) that a valve uses.
 *
 * @param perStartM3 for one stroke out and back
 * @param perSecondM3 for as long as it blows
 */
record AirUse(double perStartM3, double perSecondM3, String formula, List<String> assumed) {
    /** A rounded nozzle passes this share of the ideal flow (common practice, no source). */
    private static final double NOZZLE_CD = 0.9;

    AirUse {
        assumed = List.copyOf(assumed);
    }

    /** Empty where the rig does not tell enough. */
    static Optional<AirUse> of(final Output valve, final double workingPa) {
        final double gaugePa = valve.facts().siOr("pressure", workingPa);
        final Optional<Cylinder> cylinder = cylinder(valve);
        if (cylinder.isPresent()) {
            return Optional.of(stroke(valve, cylinder.get(), gaugePa));
        }
        final OptionalDouble nozzle = valve.facts().si("nozzle");
        if (nozzle.isPresent()) {
            final FlowPath path = FlowPath.ofHole(nozzle.getAsDouble(), NOZZLE_CD);
            return Optional.of(new AirUse(
                    0,
                    freeM3PerS(path, gaugePa),
                    "isentropic nozzle (handbook 1.5)",
                    List.of("a nozzle passes 0.9 of the ideal flow (common practice, no source)")));
        }
        final OptionalDouble stated = valve.facts().si("air-per-stroke");
        return stated.isPresent()
                ? Optional.of(new AirUse(stated.getAsDouble(), 0, "air-per-stroke, as the rig says", List.of()))
                : Optional.empty();
    }

    /** The cylinder that a valve feeds, where it is told. A rod that is not told is that of its standard bore. */
    static Optional<Cylinder> cylinder(final Output valve) {
        final OptionalDouble bore = valve.facts().si("bore");
        final OptionalDouble travel = valve.facts().si("travel");
        if (bore.isEmpty() || travel.isEmpty()) {
            return Optional.empty();
        }
        final double rodM = valve.facts().siOr("rod", StandardRod.ofBoreM(bore.getAsDouble()));
        return Optional.of(new Cylinder(bore.getAsDouble(), rodM, travel.getAsDouble()));
    }

    /** Free air for one start of so many seconds. */
    double startM3(final double onS) {
        return perStartM3 + perSecondM3 * onS;
    }

    private static AirUse stroke(final Output valve, final Cylinder cylinder, final double gaugePa) {
        final List<String> assumed = new ArrayList<>();
        final boolean isDouble = valve.rest().onPowerLoss().equals(Optional.of(Return.AIR_DRIVES));
        if (isDouble && valve.facts().si("rod").isEmpty()) {
            assumed.add("the rod of its standard bore (ISO 15552 and ISO 6432, from memory); rod says it");
        }
        final double hoseM3 = hoseM3(valve);
        if (hoseM3 == 0) {
            assumed.add("no hose between valve and cylinder; hose and hose-bore say it");
        }
        final double ways = isDouble ? 2 : 1;
        final double sweptM3 = isDouble
                ? cylinder.doubleAirM3(gaugePa, AirReference.FREE_AIR)
                : cylinder.pushAirM3(gaugePa, AirReference.FREE_AIR);
        final double deadM3 = ways * Cylinder.deadAirM3(hoseM3, gaugePa, AirReference.FREE_AIR);
        return new AirUse(sweptM3 + deadM3, 0, "swept and dead volume (handbook 1.2)", assumed);
    }

    private static double hoseM3(final Output valve) {
        final double lengthM = valve.facts().siOr("hose", 0);
        final double boreM = valve.facts().siOr("hose-bore", 0);
        return lengthM > 0 && boreM > 0 ? new Hose(lengthM, boreM).volumeM3() : 0;
    }

    private static double freeM3PerS(final FlowPath path, final double gaugePa) {
        final double anrM3PerS =
                path.freeFlowM3PerS(FreeAir.absolutePa(gaugePa), FreeAir.ATMOSPHERE_PA, FreeAir.REFERENCE_K);
        return AirReference.ANR.toM3(anrM3PerS, AirReference.FREE_AIR);
    }
}
