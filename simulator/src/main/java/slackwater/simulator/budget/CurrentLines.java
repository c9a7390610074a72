package slackwater.simulator.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.model.Air;
import slackwater.model.Circuit;
import slackwater.model.Interlock;
import slackwater.model.Load;
import slackwater.model.Output;
import slackwater.model.Supply;
import slackwater.model.engineering.BreakerCurve;
import slackwater.model.engineering.ContinuousLoad;
import slackwater.model.engineering.GroundFault;
import slackwater.model.kind.Family;

/** What each supply and each circuit carries, steady and while things start. */
final class CurrentLines {
    /** Power out over power in of a switched supply (common practice, no source). */
    private static final double USUAL_EFFICIENCY = 0.85;

    private final Reckoning to;

    private CurrentLines(final Reckoning to) {
        this.to = to;
    }

    static void add(final Reckoning to) {
        final CurrentLines lines = new CurrentLines(to);
        final List<Supply> supplies = to.rig().surroundings().supplies();
        final List<Circuit> circuits = to.rig().surroundings().circuits();
        if (supplies.isEmpty() && circuits.isEmpty()) {
            to.leaveOut(
                    "currents of supplies and circuits: add [supply.NAME] and [circuit.NAME], and fed-by to outputs");
            return;
        }
        supplies.forEach(lines::supply);
        circuits.forEach(lines::circuit);
        to.rig().outputs().stream()
                .filter(output ->
                        output.load().amps() > 0 && output.load().feed().from().isEmpty())
                .forEach(output -> to.leaveOut("what feeds " + output.name() + ": say fed-by"));
    }

    private void supply(final Supply supply) {
        final List<Output> members = fedBy(supply.name());
        final double allA = atOnceA(members);
        to.add(new Entry(Line.Group.CURRENT, supply.name() + ", all that may be on at once")
                .asks(allA, Measure.AMPERE)
                .has(supply.givesA(), Measure.AMPERE)
                .by("sum of loads, kept by load limits")
                .advice("a supply of " + new Amount(allA * 1.2, Measure.AMPERE).text() + " (20 % over, handbook 3.6),"
                        + " or a [load-limit.NAME] of " + new Amount(supply.givesA(), Measure.AMPERE).text()
                        + " over its outputs")
                .judged());
        final double peakA = allA + largestRise(members);
        to.add(new Entry(Line.Group.CURRENT, supply.name() + ", while the hungriest starts")
                .asks(peakA, Measure.AMPERE)
                .has(supply.givesA(), Measure.AMPERE)
                .by("sum of loads and the largest inrush")
                .advice("a supply of " + new Amount(peakA, Measure.AMPERE).text()
                        + ", or loads that start one after another")
                .cautioned());
    }

    private void circuit(final Circuit circuit) {
        final List<String> assumed = new ArrayList<>();
        final double continuousA = continuousA(circuit) + suppliesA(circuit, assumed);
        final double otherA = otherA(circuit);
        final double needsA = ContinuousLoad.breakerA(continuousA, otherA);
        final OptionalDouble standard = ContinuousLoad.standardBreakerA(needsA);
        to.add(new Entry(Line.Group.CURRENT, circuit.name() + ", continuous load at 125 % and the rest")
                .asks(needsA, Measure.AMPERE)
                .has(circuit.breakerA(), Measure.AMPERE)
                .by("NEC 210.20(A) (handbook 3.1)")
                .assuming(assumed)
                .advice(overload(circuit, continuousA + otherA, standard))
                .judged());
        final double peakA = continuousA + otherA + largestRiseOn(circuit);
        to.add(new Entry(Line.Group.CURRENT, circuit.name() + ", while the hungriest starts")
                .asks(peakA, Measure.AMPERE)
                .has(circuit.breakerA() * BreakerCurve.B.mayTripAtOnceFrom(), Measure.AMPERE)
                .by("a type B breaker may trip at once from 3 times its rating (IEC 60898, from memory)")
                .assuming(assumed)
                .advice("a type C breaker, or another circuit for what starts hardest")
                .cautioned());
        if (circuit.groundFaultA().isEmpty()) {
            to.add(new Entry(Line.Group.CURRENT, circuit.name() + ", ground-fault protection")
                    .by("NEC 210.8: outdoor receptacles need it (handbook 3.2)")
                    .advice("add a device that trips at 6 mA (US, class A) or 30 mA, and write ground-fault")
                    .line(Verdict.LOOK));
        } else {
            final double leakA = electronics(circuit) * GroundFault.SUPPLY_LEAK_A.most();
            to.add(new Entry(Line.Group.CURRENT, circuit.name() + ", leakage of its electronics")
                    .asks(leakA, Measure.MILLIAMPERE)
                    .has(circuit.groundFaultA().getAsDouble(), Measure.MILLIAMPERE)
                    .by("0.5 mA a supply (handbook 3.2, common practice)")
                    .advice("split the supplies over two protected circuits")
                    .cautioned());
        }
    }

    private String overload(final Circuit circuit, final double steadyA, final OptionalDouble standard) {
        final double multiple = steadyA / circuit.breakerA();
        final OptionalDouble tripsS = BreakerCurve.B.tripsAfterS(multiple);
        final String when = tripsS.isPresent()
                ? "all on at once it trips after about " + new Amount(tripsS.getAsDouble(), Measure.MINUTE).text()
                        + "; "
                : "";
        final String larger = standard.isPresent()
                ? ", or a circuit of " + new Amount(standard.getAsDouble(), Measure.AMPERE).text()
                        + " by an electrician"
                : "";
        return when + "put the hungriest load on another circuit" + larger;
    }

    /** What may stay on for hours: heaters, lamps without a longest-on, what is not in the rig. */
    private double continuousA(final Circuit circuit) {
        return circuit.othersA()
                + fedBy(circuit.name()).stream()
                        .filter(output -> output.limits().longestOn().isEmpty())
                        .mapToDouble(output -> output.load().amps())
                        .sum();
    }

    private double otherA(final Circuit circuit) {
        return fedBy(circuit.name()).stream()
                        .filter(output -> output.limits().longestOn().isPresent())
                        .mapToDouble(output -> output.load().amps())
                        .sum()
                + compressor(circuit).map(Load::amps).orElse(0.0);
    }

    /** Current that the supplies of a circuit draw from it with all their loads on. */
    private double suppliesA(final Circuit circuit, final List<String> assumed) {
        double sumA = 0;
        for (final Supply supply : to.rig().surroundings().supplies()) {
            if (supply.fedBy().equals(Optional.of(circuit.name()))) {
                if (supply.efficiency().isEmpty()) {
                    assumed.add("supplies of 85 % efficiency (common practice, no source); efficiency says it");
                }
                final double outW = Math.min(atOnceA(fedBy(supply.name())), supply.givesA()) * supply.volts();
                sumA += ContinuousLoad.amps(outW / supply.efficiency().orElse(USUAL_EFFICIENCY), circuit.volts());
            }
        }
        return sumA;
    }

    private long electronics(final Circuit circuit) {
        return to.rig().surroundings().supplies().stream()
                .filter(supply -> supply.fedBy().equals(Optional.of(circuit.name())))
                .count();
    }

    private double largestRiseOn(final Circuit circuit) {
        final double compressorA =
                compressor(circuit).map(load -> load.inrushAmps() - load.amps()).orElse(0.0);
        return Math.max(compressorA, largestRise(fedBy(circuit.name())));
    }

    private Optional<Load> compressor(final Circuit circuit) {
        return to.rig()
                .surroundings()
                .air()
                .map(Air::plate)
                .map(Air.Plate::load)
                .filter(load -> load.feed().from().equals(Optional.of(circuit.name())));
    }

    private List<Output> fedBy(final String name) {
        return to.rig().outputs().stream()
                .filter(output -> output.load().feed().from().equals(Optional.of(name)))
                .toList();
    }

    /** All members on at once, as far as load limits let them. A limit counts where every one of its outputs is here. */
    private double atOnceA(final List<Output> members) {
        double sumA =
                members.stream().mapToDouble(output -> output.load().amps()).sum();
        final List<String> names = members.stream().map(Output::name).toList();
        for (final Interlock interlock : to.rig().interlocks()) {
            if (interlock instanceof Interlock.LoadLimit limit && names.containsAll(limit.outputs())) {
                final double limitedA = members.stream()
                        .filter(output -> limit.outputs().contains(output.name()))
                        .mapToDouble(output -> output.load().amps())
                        .sum();
                sumA -= Math.max(0, limitedA - limit.amps());
            }
        }
        return sumA;
    }

    private static double largestRise(final List<Output> members) {
        return members.stream()
                .filter(output -> output.family() != Family.HEATER)
                .mapToDouble(
                        output -> output.load().inrushAmps() - output.load().amps())
                .max()
                .orElse(0);
    }
}
