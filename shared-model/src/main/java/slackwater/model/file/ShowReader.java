package slackwater.model.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tomlj.TomlTable;
import slackwater.model.Cue;
import slackwater.model.Schedule;
import slackwater.model.Show;
import slackwater.model.finding.Findings.Words;

/** Reads shows/NAME.toml once it is TOML. */
final class ShowReader {
    private final Context context;
    private final Groups groups;
    private final List<Mirror> mirrors;

    ShowReader(final Context context, final TomlTable root, final List<Mirror> mirrors) {
        this.context = context;
        this.groups = new Groups(context, root);
        this.mirrors = List.copyOf(mirrors);
    }

    Show read(final String name, final boolean hasPlace) {
        final List<Cue> written = new ArrayList<>();
        groups.each("cue", (cue, reader) -> written.add(CueTable.read(cue, reader)));
        final List<Cue> cues = new ArrayList<>(written);
        mirrors.forEach(mirror -> cues.addAll(new Mirroring(context, mirror).cues(written)));
        checkNamesOnce(cues);
        final Optional<Schedule> schedule =
                groups.only("schedule").flatMap(reader -> ScheduleTable.read(reader, hasPlace));
        groups.finish("a show", List.of("cue", "schedule"), List.of());
        return new Show(name, cues, schedule);
    }

    private void checkNamesOnce(final List<Cue> cues) {
        final List<String> seen = new ArrayList<>();
        for (final Cue cue : cues) {
            if (seen.contains(cue.name())) {
                context.error(
                        "name-taken",
                        context.places().table("cue." + cue.name()),
                        new Words(
                                "the name \"" + cue.name() + "\" is already taken",
                                "a mirror makes a cue of the same name",
                                "give it another name, or name the original in the mirror's \"without\""));
            }
            seen.add(cue.name());
        }
    }
}
