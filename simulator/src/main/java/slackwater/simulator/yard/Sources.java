package slackwater.simulator.yard;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slackwater.model.Air;
import slackwater.model.Circuit;
import slackwater.model.Load;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.Supply;

/**
 * The circuits and power supplies of a rig, which of them feeds which load, and whether it is alive. A load of which
 * nobody told what feeds it always has power. The compressor's motor is the load after the last output.
 */
final class Sources {
    private static final int NONE = -1;

    private final List<Circuit> circuits;
    private final List<Supply> supplies;
    private final int[] supplyOf;
    private final int[] circuitOf;
    private final int[] circuitOfSupply;
    private final int tripped;
    private final int folded;

    Sources(final Rig rig, final Slots slots) {
        circuits = rig.surroundings().circuits();
        supplies = rig.surroundings().supplies();
        final int outputs = rig.outputs().size();
        supplyOf = new int[outputs + 1];
        circuitOf = new int[outputs + 1];
        for (int i = 0; i < outputs; i++) {
            connect(i, rig.outputs().get(i).load());
        }
        connect(outputs, compressor(rig));
        circuitOfSupply = supplies.stream()
                .mapToInt(supply -> circuitNamed(supply.fedBy()))
                .toArray();
        tripped = slots.takeWholes(circuits.size());
        folded = slots.takeWholes(supplies.size());
    }

    static Load compressor(final Rig rig) {
        return rig.surroundings().air().map(Air::plate).map(Air.Plate::load).orElse(Load.NONE);
    }

    /** What feeds an output, in volts; empty where nobody told. */
    static Optional<Double> volts(final Rig rig, final Output output) {
        final Optional<String> from = output.load().feed().from();
        return rig.surroundings().circuits().stream()
                .filter(circuit -> from.equals(Optional.of(circuit.name())))
                .map(Circuit::volts)
                .findFirst()
                .or(() -> rig.surroundings().supplies().stream()
                        .filter(supply -> from.equals(Optional.of(supply.name())))
                        .map(Supply::volts)
                        .findFirst());
    }

    private void connect(final int load, final Load told) {
        supplyOf[load] = supplyNamed(told.feed().from());
        circuitOf[load] = circuitNamed(told.feed().from());
    }

    List<Circuit> circuits() {
        return circuits;
    }

    List<Supply> supplies() {
        return supplies;
    }

    /** The loads that hang on a supply. */
    int[] loadsOfSupply(final int supply) {
        return indices(supplyOf, supply);
    }

    /** The loads that hang on a circuit without a supply between. */
    int[] loadsOfCircuit(final int circuit) {
        return indices(circuitOf, circuit);
    }

    int[] suppliesOfCircuit(final int circuit) {
        return indices(circuitOfSupply, circuit);
    }

    OptionalInt circuit(final String name) {
        return found(circuitNamed(Optional.of(name)));
    }

    OptionalInt supply(final String name) {
        return found(supplyNamed(Optional.of(name)));
    }

    boolean isTripped(final State state, final int circuit) {
        return state.flag(tripped + circuit);
    }

    void setTripped(final State state, final int circuit, final boolean isTripped) {
        state.setFlag(tripped + circuit, isTripped);
    }

    boolean isFolded(final State state, final int supply) {
        return state.flag(folded + supply);
    }

    void setFolded(final State state, final int supply, final boolean isFolded) {
        state.setFlag(folded + supply, isFolded);
    }

    /** Whether what feeds a load is alive. */
    boolean isLive(final State state, final int load) {
        if (supplyOf[load] != NONE) {
            return isSupplyLive(state, supplyOf[load]);
        }
        return circuitOf[load] == NONE || !isTripped(state, circuitOf[load]);
    }

    boolean isCompressorLive(final State state) {
        return isLive(state, supplyOf.length - 1);
    }

    private boolean isSupplyLive(final State state, final int supply) {
        final int circuit = circuitOfSupply[supply];
        return !isFolded(state, supply) && (circuit == NONE || !isTripped(state, circuit));
    }

    private static int[] indices(final int[] of, final int wanted) {
        final int[] found = new int[of.length];
        int count = 0;
        for (int i = 0; i < of.length; i++) {
            if (of[i] == wanted) {
                found[count] = i;
                count++;
            }
        }
        return Arrays.copyOf(found, count);
    }

    private static OptionalInt found(final int index) {
        return index == NONE ? OptionalInt.empty() : OptionalInt.of(index);
    }

    private int circuitNamed(final Optional<String> name) {
        for (int i = 0; i < circuits.size(); i++) {
            if (name.equals(Optional.of(circuits.get(i).name()))) {
                return i;
            }
        }
        return NONE;
    }

    private int supplyNamed(final Optional<String> name) {
        for (int i = 0; i < supplies.size(); i++) {
            if (name.equals(Optional.of(supplies.get(i).name()))) {
                return i;
            }
        }
        return NONE;
    }
}
