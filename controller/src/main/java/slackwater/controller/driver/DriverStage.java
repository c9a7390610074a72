package slackwater.controller.driver;

import java.util.stream.IntStream;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;

/** Every output's own driver, after all guards. */
public final class DriverStage {
    private final OutputDriver[] drivers;

    public DriverStage(final Places places, final Layout layout) {
        drivers = IntStream.range(0, places.outputs().size())
                .mapToObj(at -> new OutputDriver(places.outputs().get(at), at, layout))
                .toArray(OutputDriver[]::new);
    }

    /** Before the judging: demands that have ended or begun anew are no longer used up. */
    public void renew(final RunState run, final Image image) {
        for (int output = 0; output < drivers.length; output++) {
            if (!image.demand[output] || image.renewed[output]) {
                drivers[output].renew(run);
            }
        }
    }

    /** Decides what the pins will be told. */
    public void update(final RunState run, final Image image) {
        for (int output = 0; output < drivers.length; output++) {
            image.next[output] = drivers[output].energises(run, image.permitted[output], image);
        }
    }

    /** Puts every driver to rest without asking: after a failed or late scan (S9). */
    public void restAll(final RunState run) {
        for (final OutputDriver driver : drivers) {
            driver.rest(run);
        }
    }

    /** Puts one driver to rest without asking. */
    public void rest(final RunState run, final int output) {
        drivers[output].rest(run);
    }

    /** Whether an output's own limits let it be energised, or stay so. */
    public boolean mayEnergise(final RunState run, final int output, final boolean isEnergised) {
        return drivers[output].mayEnergise(run, isEnergised);
    }

    /** What an output's limits say now, in words. */
    public String observed(final RunState run, final int output) {
        return drivers[output].observed(run);
    }

    public long sinceNs(final RunState run, final int output) {
        return drivers[output].sinceNs(run);
    }

    /** What would let it be energised, in words. */
    public String clearsWhen(final RunState run, final int output) {
        return drivers[output].clearsWhen(run);
    }
}
