package slackwater.model.check;

import java.util.Collection;
import java.util.List;
import slackwater.model.Output;
import slackwater.model.Rig;

/** Which controllers drive outputs. */
final class Homes {

    private Homes() {}

    /** The controllers of the named outputs, each once, in the order of the names. */
    static List<String> of(final Rig rig, final Collection<String> outputs) {
        return outputs.stream()
                .flatMap(name -> rig.output(name).stream())
                .map(Output::controller)
                .distinct()
                .toList();
    }
}
