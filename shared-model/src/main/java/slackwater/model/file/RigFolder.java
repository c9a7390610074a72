package slackwater.model.file;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tomlj.TomlTable;
import slackwater.model.Cue;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.finding.Findings;
import slackwater.model.finding.Findings.Words;
import slackwater.model.finding.Nearest;
import slackwater.model.kind.Kinds;

/** Reads a rig folder, whatever is in it: a rig and a show, or everything that is wrong with them. Never throws. */
public final class RigFolder {
    private static final String RIG_FILE = "rig.toml";
    private static final String SHOWS = "shows";
    private static final String ENDING = ".toml";
    private static final String WHY_FOLDER = "a rig is a folder with rig.toml and shows/NAME.toml";

    private final Path folder;
    private final Kinds kinds;
    private final Places places = new Places();
    private final Findings findings = new Findings(places);

    private RigFolder(final Path folder, final Kinds kinds) {
        this.folder = folder;
        this.kinds = kinds;
    }

    /**
     * Reads a folder.
     *
     * @param showName which show, where there are several
     * @param loader where the service loader looks for kinds from outside the project
     */
    public static Reading read(final Path folder, final Optional<String> showName, final ClassLoader loader) {
        return new RigFolder(folder, Kinds.of(loader)).read(showName);
    }

    private Reading read(final Optional<String> showName) {
        if (!isFolder()) {
            return new Reading(Optional.empty(), Optional.empty(), findings.sorted(), places, List.of(), 0);
        }
        kinds.troubles()
                .forEach(trouble -> refuse(
                        "bad-kind",
                        new Words(
                                trouble,
                                "its outputs would have no rules",
                                "mend or" + " remove the library that brings it")));
        final List<String> showNames = showNames();
        final Optional<TomlTable> rigTable = new TomlFile(folder.resolve(RIG_FILE), places, findings).read();
        final Optional<String> chosen = choose(showNames, showName);
        final Optional<TomlTable> showTable = chosen.flatMap(
                name -> new TomlFile(folder.resolve(SHOWS).resolve(name + ENDING), places, findings).read());
        if (rigTable.isEmpty()) {
            return new Reading(
                    Optional.empty(), Optional.empty(), findings.sorted(), places, showNames, places.fileCount());
        }
        final Context context = new Context(findings, places, kinds, Names.of(rigTable.get()));
        final RigReader rigReader = new RigReader(context, rigTable.get());
        final Rig rig = rigReader.read(folderName());
        final Optional<Show> show = showTable.map(table -> new ShowReader(context, table, rigReader.mirrors())
                .read(chosen.orElse(""), rigTable.get().contains(List.of("place"))));
        if (showNames.size() <= 1) {
            rigReader.mirrors().forEach(mirror -> MirrorTable.checkWithout(mirror, context, allNames(rig, show)));
        }
        final boolean isGood = !findings.hasErrors();
        return new Reading(
                isGood ? Optional.of(rig) : Optional.empty(),
                isGood ? show : Optional.empty(),
                findings.sorted(),
                places,
                showNames,
                places.fileCount());
    }

    private boolean isFolder() {
        if (!Files.exists(folder)) {
            refuse("no-folder", new Words("there is no folder " + folder, WHY_FOLDER, "give the folder of a rig"));
        } else if (!Files.isDirectory(folder)) {
            refuse("not-a-folder", new Words(folder + " is a file", WHY_FOLDER, "give the folder that it is in"));
        } else if (!Files.isRegularFile(folder.resolve(RIG_FILE))) {
            refuse(
                    "no-rig",
                    new Words("there is no file " + folder.resolve(RIG_FILE), WHY_FOLDER, "give the folder of a rig"));
        } else {
            return true;
        }
        return false;
    }

    private List<String> showNames() {
        final List<String> names = new ArrayList<>();
        final Path shows = folder.resolve(SHOWS);
        if (Files.isDirectory(shows)) {
            try (DirectoryStream<Path> files = Files.newDirectoryStream(shows, "*" + ENDING)) {
                for (final Path file : files) {
                    final String name = String.valueOf(file.getFileName());
                    names.add(name.substring(0, name.length() - ENDING.length()));
                }
            } catch (final IOException | DirectoryIteratorException failed) {
                refuse(
                        "unreadable",
                        new Words(
                                shows + " cannot be read (" + failed.getMessage() + ")",
                                "the shows are in it",
                                "make it a folder that you may read"));
            }
        }
        return names.stream().sorted().toList();
    }

    private Optional<String> choose(final List<String> showNames, final Optional<String> wanted) {
        if (wanted.isPresent()) {
            if (!showNames.contains(wanted.get())) {
                refuse(
                        "unknown-show",
                        new Words(
                                "no show is called \"" + wanted.get() + "\"",
                                "a show NAME is the file shows/NAME.toml",
                                Nearest.of(wanted.get(), showNames)
                                        .map(near -> "did you mean \"" + near + "\"?")
                                        .orElse(Context.listed(
                                                "the shows are: ", showNames, "this rig has no show yet"))));
                return Optional.empty();
            }
            return wanted;
        }
        if (showNames.isEmpty()) {
            findings.warning(
                    "no-show",
                    Optional.empty(),
                    new Words(
                            folder + " has no show",
                            "without cues nothing is ever played",
                            "add shows/NAME.toml with a [cue.NAME]"));
        } else if (showNames.size() > 1) {
            refuse(
                    "which-show",
                    new Words(
                            folder + " has several shows",
                            "one is played at a time",
                            Context.listed("add --show and one of: ", showNames, "")));
        }
        return showNames.size() == 1 ? Optional.of(showNames.get(0)) : Optional.empty();
    }

    private static List<String> allNames(final Rig rig, final Optional<Show> show) {
        final List<String> names = new ArrayList<>();
        rig.inputs().forEach(input -> names.add(input.name()));
        rig.outputs().forEach(output -> names.add(output.name()));
        rig.interlocks().forEach(interlock -> names.add(interlock.name()));
        show.ifPresent(played -> played.cues().stream().map(Cue::name).forEach(names::add));
        return names;
    }

    private String folderName() {
        final Path name = folder.toAbsolutePath().normalize().getFileName();
        return name == null ? "rig" : name.toString();
    }

    private void refuse(final String code, final Words words) {
        findings.error(code, Optional.empty(), words);
    }
}
