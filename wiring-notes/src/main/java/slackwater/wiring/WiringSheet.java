package slackwater.wiring;

import java.util.List;
import slackwater.model.Rig;

/** The sheet a person takes to the bench, for every controller of a rig. */
public final class WiringSheet {
    private WiringSheet() {}

    /** Plain text, no line wider than 110 columns. */
    public static String text(final Rig rig) {
        return new SheetText(WiringFacts.of(rig)).render();
    }

    /** The same as Markdown. */
    public static String markdown(final Rig rig) {
        return new SheetMarkdown(WiringFacts.of(rig)).render();
    }

    /** The facts alone, as one JSON object. */
    public static String json(final Rig rig) {
        final List<WiringFacts> facts = WiringFacts.of(rig);
        return new SheetJson(rig.name(), facts).render();
    }
}
