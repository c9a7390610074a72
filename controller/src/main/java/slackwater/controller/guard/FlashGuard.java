package slackwater.controller.guard;

import java.time.Duration;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Since;
import slackwater.controller.run.Timer;
import slackwater.controller.run.Window;
import slackwater.model.Interlock;
import slackwater.model.Output;
import slackwater.model.event.Refusal;

/**
 * At most so many flash onsets in any [t, t+1 s) on this controller; refuses starts only (S14). A strobe that flashes by
 * itself counts its whole rate from its start until a second after its end, and one more for each further start in that
 * time: it flashes at once when it is powered, however slow its own rate is.
 */
final class FlashGuard implements Guard {
    private static final Duration SECOND = Duration.ofSeconds(1);

    private final Interlock.FlashLimit limit;
    private final Places places;
    private final int share;
    private final int[] members;
    private final int[] ownRate;
    private final Window onsets;
    private final Timer[] fades;
    private final Since changed;

    FlashGuard(final Interlock.FlashLimit limit, final Places places, final Layout layout) {
        this.limit = limit;
        this.places = places;
        share = limit.shares().getOrDefault(places.controller(), limit.flashes());
        members = places.outputsHere(limit.outputs());
        ownRate = new int[members.length];
        fades = new Timer[members.length];
        for (int i = 0; i < members.length; i++) {
            final Output member = places.outputs().get(members[i]);
            ownRate[i] = (int) StrictMath.ceil(member.facts().siOr("flash-rate", 0));
            fades[i] = layout.timer("flash." + limit.name() + "." + member.name());
        }
        onsets = layout.window("flash." + limit.name(), share, SECOND);
        changed = layout.since("flash." + limit.name());
    }

    @Override
    public boolean permits(final RunState run, final Image image, final int output) {
        return image.energised[output] || count(run, image, output) <= share;
    }

    @Override
    public Refusal refusal(final RunState run, final Image image, final int output) {
        return new Refusal(
                places.outputs().get(output).name(),
                limit.name(),
                "with it there would have been " + count(run, image, output) + " flashes in a second of at most "
                        + share,
                changed.atNs(run),
                "a second has passed since the first of them");
    }

    @Override
    public void observe(final RunState run, final int output, final boolean isEnergised) {
        for (int i = 0; i < members.length; i++) {
            if (members[i] == output) {
                changed.mark(run);
                if (isEnergised && (ownRate[i] == 0 || fades[i].isRunning(run))) {
                    onsets.count(run);
                }
                if (ownRate[i] > 0) {
                    follow(run, fades[i], isEnergised);
                }
            }
        }
    }

    private static void follow(final RunState run, final Timer fade, final boolean isEnergised) {
        if (isEnergised) {
            fade.stop(run);
        } else {
            fade.start(run, SECOND.toNanos());
        }
    }

    /** Flashes in the second from now, with this output started. */
    private int count(final RunState run, final Image image, final int output) {
        int count = share - onsets.room(run);
        for (int i = 0; i < members.length; i++) {
            final int member = members[i];
            final boolean isStarting = member == output || (image.next[member] && !image.energised[member]);
            final boolean isFading = fades[i].isRunning(run);
            if (isStarting || image.energised[member] || isFading) {
                count += ownRate[i];
            }
            if (isStarting && (ownRate[i] == 0 || isFading)) {
                count++;
            }
        }
        return count;
    }
}
