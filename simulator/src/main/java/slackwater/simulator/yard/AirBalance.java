package slackwater.simulator.yard;

/**
 * Where the compressed air of a yard is and has gone, m3 ANR (20 degC, 1 bar). What is stored, in lines, vented and leaked
 * is what was there in the beginning and what was delivered.
 *
 * @param tankM3 in the tank
 * @param linesM3 in lines and cylinders
 * @param ventedM3 let out by valves, cylinders and nozzles since the evening began
 * @param leakedM3 leaked from the tank
 * @param deliveredM3 delivered by the compressor
 */
public record AirBalance(double tankM3, double linesM3, double ventedM3, double leakedM3, double deliveredM3) {
    /** What has to stay the same all evening. */
    public double wholeM3() {
        return tankM3 + linesM3 + ventedM3 + leakedM3 - deliveredM3;
    }
}
