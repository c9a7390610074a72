package slackwater.model.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import slackwater.model.Arming;
import slackwater.model.Begun;
import slackwater.model.Controller;
import slackwater.model.Cue;
import slackwater.model.HoldUp;
import slackwater.model.Input;
import slackwater.model.Interlock;
import slackwater.model.Output;
import slackwater.model.Place;
import slackwater.model.Rig;
import slackwater.model.Schedule;
import slackwater.model.Show;
import slackwater.model.Zone;
import slackwater.model.board.Boards;
import slackwater.model.finding.Finding;
import slackwater.model.finding.Findings;
import slackwater.model.finding.Position;
import slackwater.model.finding.Where;

/**
 * A rig and a show built in code: one controller and zone called north, and what a test adds, in that order of lines.
 */
final class Sketch {
    private final List<String> tables = new ArrayList<>();
    private final List<Controller> controllers = new ArrayList<>();
    private final List<Zone> zones = new ArrayList<>();
    private final List<Input> inputs = new ArrayList<>();
    private final List<Output> outputs = new ArrayList<>();
    private final List<Interlock> interlocks = new ArrayList<>();
    private final List<Cue> cues = new ArrayList<>();
    private Optional<Place> place = Optional.empty();
    private Optional<Schedule> schedule = Optional.empty();
    private Arming arming = Arming.USUAL;

    private Sketch() {}

    static Sketch rig() {
        return new Sketch().controller("north", Optional.empty()).zone("north", Zone.WhenAlone.REST, false);
    }

    static Sketch rigWithHoldUp(final int pin, final int seenPin, final long dropOutMs) {
        final HoldUp holdUp = new HoldUp(OptionalInt.of(pin), Duration.ofMillis(dropOutMs), OptionalInt.of(seenPin));
        return new Sketch().controller("north", Optional.of(holdUp)).zone("north", Zone.WhenAlone.REST, false);
    }

    Sketch and(final String controller) {
        return controller(controller, Optional.empty()).zone(controller, Zone.WhenAlone.REST, false);
    }

    private Sketch controller(final String name, final Optional<HoldUp> holdUp) {
        tables.add("controller." + name);
        controllers.add(new Controller(name, Boards.named("pi-4").orElseThrow(), holdUp));
        return this;
    }

    Sketch zone(final String name, final Zone.WhenAlone whenAlone, final boolean hasHardWiredStop) {
        tables.add("zone." + name);
        zones.add(new Zone(name, whenAlone, hasHardWiredStop));
        return this;
    }

    Sketch with(final In... more) {
        for (final In in : more) {
            inputs.add(in.made());
            tables.add("input." + in.made().name());
        }
        return this;
    }

    Sketch with(final Out... more) {
        for (final Out out : more) {
            outputs.add(out.made());
            tables.add("output." + out.made().name());
        }
        return this;
    }

    Sketch with(final Interlock interlock) {
        interlocks.add(interlock);
        tables.add(Say.table(interlock));
        return this;
    }

    Sketch with(final Play... more) {
        for (final Play play : more) {
            cues.add(play.made());
            tables.add("cue." + play.made().name());
        }
        return this;
    }

    Sketch permissive(final Begun begun, final String output, final String... needs) {
        return with(new Interlock.Permissive(
                "guard",
                List.of(output),
                List.of(needs).stream().map(Play::condition).toList(),
                begun));
    }

    Sketch trip(final Begun begun, final String output, final String when) {
        return with(new Interlock.Trip("trip", List.of(output), List.of(Play.condition(when)), begun));
    }

    Sketch loadLimit(final double amps, final Map<String, Double> shares, final String... limited) {
        return with(new Interlock.LoadLimit("supply", List.of(limited), amps, shares));
    }

    Sketch flashLimit(final int flashes, final Map<String, Integer> shares, final String... limited) {
        return with(new Interlock.FlashLimit("lightning", List.of(limited), flashes, shares));
    }

    Sketch at(final Place where) {
        place = Optional.of(where);
        return this;
    }

    Sketch open(final Schedule.TimeOfDay opens, final Schedule.TimeOfDay closes) {
        tables.add("schedule");
        schedule = Optional.of(new Schedule(opens, closes, Set.of(), Duration.ZERO));
        return this;
    }

    Sketch arming(final long warningMs, final String... warnsWith) {
        tables.add("arming");
        arming = new Arming(Duration.ofMillis(warningMs), List.of(warnsWith), Duration.ZERO);
        return this;
    }

    /** Asserts all that one rule says, whole. */
    void finds(final Rule rule, final String expected) {
        assertThat(findings(rule)).isEqualTo(expected);
    }

    void isFineFor(final Rule rule) {
        assertThat(findings(rule)).isEmpty();
    }

    private String findings(final Rule rule) {
        final Findings findings = new Findings(new Lines());
        rule.look(draft(), findings);
        return findings.sorted().stream().map(Sketch::text).collect(Collectors.joining());
    }

    Draft draft() {
        final Rig rig = new Rig(
                "sketch",
                Duration.ofMillis(10),
                place,
                controllers,
                zones,
                inputs,
                outputs,
                interlocks,
                arming,
                List.of(),
                Rig.Surroundings.NONE);
        return Draft.of(rig, Optional.of(new Show("sketch", cues, schedule)), new Lines());
    }

    private static String text(final Finding finding) {
        final String at = finding.at().map(Position::file).orElse("nowhere");
        return String.join(
                "\n",
                finding.severity() + " " + finding.code() + " at " + at,
                finding.message(),
                "why: " + finding.why(),
                "fix: " + finding.fix(),
                "");
    }

    /**
     * Each table is a line of a file that bears its name and key, so that a test sees which key a finding points at.
     */
    private final class Lines implements Where {
        @Override
        public Optional<Position> value(final String table, final String key) {
            return table(table).map(at -> new Position(table + "/" + key, at.line(), 1, 1));
        }

        @Override
        public Optional<Position> table(final String table) {
            final int line = tables.indexOf(table) + 1;
            return line == 0 ? Optional.empty() : Optional.of(new Position(table, line, 1, 1));
        }

        @Override
        public String lineText(final Position position) {
            return position.file();
        }
    }
}
