package slackwater.controller.guard;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Since;
import slackwater.model.Input;
import slackwater.model.event.Refusal;

/** A release is one shot: spent from its start until somebody has hung it again (S15). */
final class ReleaseGuard implements Guard {
    private static final String RULE = "one shot";

    private final Places places;
    private final int release;
    private final String name;
    private final int hung;
    private final Flag isSpent;
    private final Since since;

    ReleaseGuard(final Places places, final int release, final Layout layout) {
        this.places = places;
        this.release = release;
        name = places.outputs().get(release).name();
        hung = IntStream.range(0, places.inputs().size())
                .filter(i -> places.inputs().get(i).use() == Input.Use.HUNG)
                .filter(i -> places.inputs().get(i).facts().text("of").equals(Optional.of(name)))
                .findFirst()
                .orElse(-1);
        isSpent = layout.flag("output." + name + ".spent");
        since = layout.since("output." + name + ".spent-since");
    }

    /** Notices that it has been hung again; before the judging, so that guards stay pure. */
    @Override
    public void update(final RunState run, final Image image) {
        if (hung >= 0 && image.rose[hung] && !image.energised[release]) {
            isSpent.set(run, false);
        }
    }

    @Override
    public boolean permits(final RunState run, final Image image, final int output) {
        return image.energised[output] || !isSpent.is(run);
    }

    @Override
    public Refusal refusal(final RunState run, final Image image, final int output) {
        final String clears = hung < 0
                ? "it is hung again and the controller is told so"
                : places.inputs().get(hung).name() + " tells that it has been hung again";
        return new Refusal(name, RULE, name + " has been spent", since.atNs(run), clears);
    }

    @Override
    public void observe(final RunState run, final int output, final boolean isEnergised) {
        if (isEnergised) {
            isSpent.set(run, true);
            since.mark(run);
        }
    }

    boolean isSpent(final RunState run) {
        return isSpent.is(run);
    }

    void restore(final RunState run, final List<String> spent) {
        isSpent.set(run, spent.contains(name));
    }

    String name() {
        return name;
    }
}
