package slackwater.controller.command;

import slackwater.controller.image.Image;
import slackwater.controller.run.RunState;

/** Takes a weighing: how much an output has really used since its bottle or tray was last filled. */
public interface Scales {

    /**
     * Takes it, or says in words why not.
     *
     * @param usedKg what the scales say
     * @param who weighed it
     */
    java.util.Optional<String> weigh(RunState run, Image image, int output, double usedKg, String who);
}
