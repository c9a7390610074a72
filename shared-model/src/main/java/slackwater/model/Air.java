package slackwater.model;

/**
 * The compressed-air store.
 *
 * @param tankM3 volume
 * @param cutInPa the compressor starts below this gauge pressure
 * @param cutOutPa and stops above this
 * @param deliveryM3PerS free air delivered
 * @param workingPa gauge pressure behind the regulator
 */
public record Air(double tankM3, double cutInPa, double cutOutPa, double deliveryM3PerS, double workingPa) {}
