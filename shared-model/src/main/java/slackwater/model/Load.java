package slackwater.model;

import java.time.Duration;

/**
 * What an output draws from its supply.
 *
 * @param amps steady current in amperes
 * @param inrushAmps current while it starts, at least {@code amps}
 * @param inrushLasts how long the start lasts
 */
public record Load(double amps, double inrushAmps, Duration inrushLasts) {
    public static final Load NONE = new Load(0, 0, Duration.ZERO);
}
