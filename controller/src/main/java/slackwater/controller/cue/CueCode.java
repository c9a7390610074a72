package slackwater.controller.cue;

import java.util.List;
import slackwater.controller.image.Places;
import slackwater.controller.run.Layout;
import slackwater.model.Cue;
import slackwater.model.kind.Key;

/** A cue in code, found by the standard service loader: it may wish, and stands before all guards. */
public interface CueCode {
    /** The word after {@code code =} in the show file. */
    String word();

    /** Keys that the cue's table may have beside the usual ones. */
    default List<Key> keys() {
        return List.of();
    }

    /**
     * Compiles one cue of this kind.
     *
     * @param draws numbers that depend on seed, cue and start alone
     */
    Playing compile(Cue cue, Places places, Layout layout, Numbers draws);

    /** Seeded numbers for a cue in code. */
    interface Numbers {
        /** A number from 0 to {@code most}, both included, the same for the same start and step. */
        long upTo(long most, long start, int step);
    }
}
