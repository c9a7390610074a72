package slackwater.model.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tomlj.TomlTable;
import slackwater.model.Point;
import slackwater.model.finding.Findings.Words;
import slackwater.model.finding.Nearest;
import slackwater.model.quantity.Dimension;
import slackwater.model.quantity.Quantity;

/** Reads {@code [mirror.NEW]}. */
final class MirrorTable {
    private MirrorTable() {}

    static Mirror read(final TomlTable root, final String name, final TableReader reader) {
        reader.require("of", "a mirror repeats a zone", "add of = \"...\", the zone to repeat");
        final Optional<String> of = reader.name("of", Context.Thing.ZONE);
        if (of.isPresent() && Raw.tables(root, "mirror").contains(of.get())) {
            reader.error(
                    "mirror-of-mirror",
                    "of",
                    new Words(
                            "zone \"" + of.get() + "\" is itself made by a mirror",
                            "a mirror repeats only what is written down",
                            "repeat the zone that has its own tables"));
        }
        reader.require("on", "the new bank is wired to a controller of its own", "add on = \"...\", a controller");
        final String on = reader.name("on", Context.Thing.CONTROLLER).orElse("");
        final Optional<Double> acrossY =
                reader.signed("across-y", Dimension.LENGTH).map(Quantity::si);
        final Point shift = reader.point("shift").orElse(new Point(0, 0));
        reader.texts("without");
        reader.finish();
        final MirrorNames names = MirrorNames.of(root, name);
        final Map<String, String> renamed = new LinkedHashMap<>(names.mirrored("input"));
        renamed.putAll(names.mirrored("output"));
        // A supply is not repeated by itself, but where the new bank has one of its own, its loads hang on that.
        for (final String supply : Raw.tables(root, "supply")) {
            if (names.hasPrefix(supply) && Raw.tables(root, "supply").contains(names.renamed(supply))) {
                renamed.put(supply, names.renamed(supply));
            }
        }
        return new Mirror(name, on, acrossY, shift, names, renamed);
    }

    /** Reports names after {@code without} that nothing in the rig or in its only show has. */
    static void checkWithout(final Mirror mirror, final Context context, final List<String> known) {
        final List<String> without = mirror.names().without();
        for (int i = 0; i < without.size(); i++) {
            if (!known.contains(without.get(i))) {
                final String fix = Nearest.of(without.get(i), known)
                        .map(near -> "did you mean \"" + near + "\"?")
                        .orElse("leave it out");
                context.error(
                        "unknown-without",
                        context.places().value("mirror." + mirror.zone(), "without[" + i + "]"),
                        new Words(
                                "nothing is called \"" + without.get(i) + "\"",
                                "what should have been left out would be repeated",
                                fix));
            }
        }
    }
}
