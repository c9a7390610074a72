package slackwater.model.file;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slackwater.model.finding.Findings;
import slackwater.model.finding.Findings.Words;
import slackwater.model.finding.Nearest;
import slackwater.model.finding.Position;
import slackwater.model.kind.Kinds;

/** What every reader of a table needs: where to report, where things stand, and what may be named. */
record Context(Findings findings, Places places, Kinds kinds, Names names) {
    private static final int MOST_LISTED = 12;

    /** The table in which something with a name is described, such as {@code input}. */
    enum Thing {
        INPUT("input"),
        OUTPUT("output"),
        ZONE("zone"),
        CONTROLLER("controller"),
        CIRCUIT("circuit"),
        /** What may feed a load: a supply or, at mains voltage, a circuit. */
        SUPPLY("supply");

        private final String table;

        Thing(final String table) {
            this.table = table;
        }

        String table() {
            return table;
        }
    }

    void error(final String code, final Optional<Position> at, final Words words) {
        findings.error(code, at, words);
    }

    /** Reports a name that nothing has. */
    void unknown(final Thing thing, final String name, final Optional<Position> at) {
        final List<String> known = names.of(thing);
        final String noun = thing == Thing.SUPPLY ? "supply or circuit" : thing.table();
        final String fix = Nearest.of(name, known)
                .map(near -> "did you mean \"" + near + "\"" + standsAt(thing, near) + "?")
                .orElse(listed("there are: ", known, "there is no [" + thing.table() + ".NAME] table yet; add one"));
        error(
                "unknown-" + thing.table(),
                at,
                new Words("no " + noun + " is called \"" + name + "\"", "a name that means nothing does nothing", fix));
    }

    private String standsAt(final Thing thing, final String name) {
        return places.table(thing.table() + "." + name)
                .map(at -> " (" + at.file() + ":" + at.line() + ":" + at.column() + ")")
                .orElse("");
    }

    /** A list for a fix, cut where it would be long. */
    static String listed(final String before, final List<String> words, final String ifNone) {
        if (words.isEmpty()) {
            return ifNone;
        }
        final String end = words.size() > MOST_LISTED ? ", and " + (words.size() - MOST_LISTED) + " more" : "";
        return words.stream().limit(MOST_LISTED).collect(Collectors.joining(", ", before, end));
    }
}
