package slackwater.controller.cue;

import slackwater.controller.run.Layout;
import slackwater.model.Output;
import slackwater.model.kind.OutputKind;

/** A kind of output whose demand has a shape of its own. */
public interface ShapedKind extends OutputKind {
    Shape shape(Output output, Layout layout);
}
