package slackwater.controller.cue;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import slackwater.controller.image.Image;
import slackwater.controller.image.Places;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.model.Cue;
import slackwater.model.event.Event;

/**
 * Starts, advances and ends cues, and collects what they wish. Higher priority, then the order of the file, pre-empts where
 * two share an output; the loser ends whole and never resumes (S11).
 */
public final class CueStage {
    private final CueLogic[] ranked;
    private final boolean[][] clash;

    /**
     * @param codes finds a cue in code by its word
     * @param seed of the run
     */
    public CueStage(
            final List<Cue> cues,
            final Places places,
            final Layout layout,
            final Function<String, CueCode> codes,
            final long seed) {
        ranked = cues.stream()
                .map(cue -> {
                    final Draws draws = new Draws(seed, cue.name());
                    final Playing playing = cue.code()
                            .map(word -> codes.apply(word).compile(cue, places, layout, draws::upTo))
                            .orElseGet(() -> new StepsPlaying(cue, places, layout, draws::upTo));
                    return new CueLogic(cue, places, layout, playing);
                })
                .sorted(Comparator.comparingInt((CueLogic logic) -> -logic.cue().priority()))
                .toArray(CueLogic[]::new);
        clash = new boolean[ranked.length][ranked.length];
        for (int a = 0; a < ranked.length; a++) {
            for (int b = 0; b < ranked.length; b++) {
                clash[a][b] = a != b && ranked[a].sharesAnOutputWith(ranked[b]);
            }
        }
    }

    /** Ends what may not play, starts what should, and lets every playing cue wish. */
    public void update(final RunState run, final Image image, final Asking asking) {
        for (int i = 0; i < ranked.length; i++) {
            final CueLogic cue = ranked[i];
            if (cue.isPlaying(run) && !image.mayGreet[cue.zone()]) {
                end(run, image, cue, "its zone is not armed");
            }
            cue.watch(run, image);
            if (cue.isAskedToStart(run, image) && image.mayGreet[cue.zone()]) {
                start(run, image, i);
            }
        }
        for (final CueLogic cue : ranked) {
            if (cue.goOn(run, asking)) {
                image.note(new Event.CueEnded(run.atNs(), cue.cue().name(), "played"));
            }
        }
    }

    /** The way for this image's cues to wish. */
    public static Asking asking(final Image image) {
        return new Asking(image);
    }

    private void start(final RunState run, final Image image, final int at) {
        final CueLogic cue = ranked[at];
        final String name = cue.cue().name();
        final String refusal = cue.refusal(run, image);
        if (!refusal.isEmpty()) {
            image.note(new Event.StartLost(run.atNs(), name, refusal));
            return;
        }
        for (int other = 0; other < at; other++) {
            if (clash[at][other] && ranked[other].isPlaying(run)) {
                image.note(new Event.StartLost(
                        run.atNs(), name, ranked[other].cue().name() + " is playing"));
                return;
            }
        }
        for (int other = at + 1; other < ranked.length; other++) {
            if (clash[at][other] && ranked[other].isPlaying(run)) {
                end(run, image, ranked[other], "pre-empted by " + name);
            }
        }
        cue.begin(run);
        image.note(new Event.CueStarted(
                run.atNs(), name, String.join(" and ", cue.cue().start().inputs())));
    }

    private static void end(final RunState run, final Image image, final CueLogic cue, final String why) {
        cue.end(run);
        image.note(new Event.CueEnded(run.atNs(), cue.cue().name(), why));
    }
}
