package slackwater.model.check;

import java.util.List;
import java.util.Optional;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.finding.Position;
import slackwater.model.finding.Where;

/**
 * A rig and a show as they were read, before anybody knows whether they are sound.
 *
 * @param show a show without cues where none was read
 * @param where in the files their parts were written
 */
public record Draft(Rig rig, Show show, Where where) {

    /** A rig with or without a show. */
    public static Draft of(final Rig rig, final Optional<Show> show, final Where where) {
        return new Draft(rig, show.orElseGet(() -> new Show("", List.of(), Optional.empty())), where);
    }

    /** Where a key's value was written, or its table where the key was left out. */
    Optional<Position> at(final String table, final String key) {
        return where.value(table, key);
    }

    /** The same as text within a sentence, such as {@code at rig.toml:41:7}; empty where it is not in a file. */
    String atText(final String table, final String key) {
        return at(table, key)
                .map(at -> " at " + at.file() + ":" + at.line() + ":" + at.column())
                .orElse("");
    }
}
