package slackwater.wiring;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import slackwater.model.Contact;
import slackwater.model.Level;
import slackwater.model.Pull;
import slackwater.wiring.WiringFacts.Line;
import slackwater.wiring.WiringFacts.Rest;
import slackwater.wiring.WiringFacts.Role;

/** The table of the sheet in words, and the numbered notes that its last column points to. */
final class PinTable {
    private static final String NOTHING = "-";

    static final List<String> HEADINGS = List.of(
            "pin",
            "GPIO",
            "way",
            "name",
            "kind",
            "pull at reset",
            "pull asked",
            "active",
            "contact normally",
            "level at rest",
            "power-on to start",
            "load at rest",
            "notes");

    private final WiringFacts facts;
    private final List<String> notes;

    PinTable(final WiringFacts facts) {
        this.facts = facts;
        final Set<String> once = new LinkedHashSet<>();
        facts.lines().forEach(line -> once.addAll(line.notes()));
        this.notes = List.copyOf(once);
    }

    /** Each note once, in the order in which the rows need them. */
    List<String> notes() {
        return notes;
    }

    List<List<String>> rows() {
        return facts.lines().stream().map(this::row).toList();
    }

    private List<String> row(final Line line) {
        final List<String> cells = new ArrayList<>();
        cells.add(String.valueOf(line.pin().header()));
        cells.add(String.valueOf(line.pin().gpio()));
        cells.add(line.thing().role().direction());
        cells.add(line.thing().name());
        cells.add(line.thing().kind());
        cells.add(words(line.pin().atReset()));
        cells.add(line.signal().asked().map(PinTable::words).orElse(NOTHING));
        cells.add(active(line));
        cells.add(line.rest().map(rest -> words(rest.contact())).orElse(NOTHING));
        cells.add(line.rest().map(PinTable::level).orElse(NOTHING));
        cells.add(line.rest().map(rest -> rest.boot().verdict().words()).orElse(NOTHING));
        cells.add(line.rest().map(Rest::load).orElse(NOTHING));
        cells.add(line.notes().stream()
                .map(note -> String.valueOf(notes.indexOf(note) + 1))
                .collect(Collectors.joining(" ")));
        return cells;
    }

    static String active(final Line line) {
        return line.thing().role() == Role.HOLD_UP
                ? "pulses"
                : line.signal().active().map(PinTable::words).orElse(NOTHING);
    }

    static String words(final Level level) {
        return level.name().toLowerCase(Locale.ROOT);
    }

    static String words(final Pull pull) {
        return pull.name().toLowerCase(Locale.ROOT);
    }

    static String words(final Contact contact) {
        return contact == Contact.NORMALLY_OPEN ? "open" : "closed";
    }

    private static String level(final Rest rest) {
        return rest.level().map(PinTable::words).orElse("steady");
    }
}
