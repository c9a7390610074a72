package slackwater.model;

import java.time.Duration;

/**
 * What an output draws from its supply.
 *
 * @param amps steady current in amperes
 * @param inrushAmps current while it starts, at least {@code amps}
 * @param inrushLasts how long the start lasts
 * @param feed how the current comes to it
 */
public record Load(double amps, double inrushAmps, Duration inrushLasts, Feed feed) {
    public static final Load NONE = new Load(0, 0, Duration.ZERO);

    /** A load of which nobody said what feeds it. */
    public Load(final double amps, final double inrushAmps, final Duration inrushLasts) {
        this(amps, inrushAmps, inrushLasts, Feed.UNSAID);
    }
}
