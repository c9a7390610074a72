package slackwater.simulator.yard;

/**
 * Where the energy of a heater's block has gone since the evening began: what came in is stored, lost or in the fluid.
 *
 * @param inJ what its heater gave
 * @param storedJ what the block holds above the temperature of the air, at which it began
 * @param lostJ what it gave to the air
 * @param intoFluidJ what turned fluid into vapour
 */
public record HeatBalance(double inJ, double storedJ, double lostJ, double intoFluidJ) {}
