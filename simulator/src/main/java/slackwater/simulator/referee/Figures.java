package slackwater.simulator.referee;

import java.util.List;

/**
 * What a run amounted to, up to the last look.
 *
 * @param outputs one for each output, in the order of the rig
 * @param worstStopToRestNs longest time from the opening of the stop loop, as a controller's own pin shows it, until
 *     all that controller's output pins were at rest; {@link Long#MAX_VALUE} where one never came to rest; 0 without a stop
 */
public record Figures(List<OfOutput> outputs, long worstStopToRestNs) {

    public Figures {
        outputs = List.copyOf(outputs);
    }

    /**
     * What became of one output.
     *
     * @param longestOnNs longest time energised without a break
     * @param starts how often it was energised
     * @param atRestNs total time at rest
     * @param nearMisses how often somebody and the moving prop met in its reach, violations included
     * @param worstEnergyJ the prop's largest kinetic energy while somebody was in its reach, joules
     */
    public record OfOutput(
            String name, long longestOnNs, int starts, long atRestNs, int nearMisses, double worstEnergyJ) {}

    public int nearMisses() {
        return outputs.stream().mapToInt(OfOutput::nearMisses).sum();
    }

    /** Joules. */
    public double worstEnergyJ() {
        return outputs.stream().mapToDouble(OfOutput::worstEnergyJ).max().orElse(0);
    }
}
