package slackwater.simulator.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import slackwater.simulator.budget.Budget;
import slackwater.simulator.report.Evening;

/**
 * Both acts and what lies between them.
 *
 * @param sketchLateM how much farther ahead the sketch's sensor would have to look, metres
 * @param rigLateM the same of the corrected rig; below 0 where it looks farther than it must
 * @param edits what was changed
 */
public record TwoActs(
        Act.Seen sketch, Act.Seen rig, OptionalDouble sketchLateM, OptionalDouble rigLateM, List<String> edits) {
    /** The lid in each of the two rigs. */
    public static final String SKETCH_LID = "lid";

    public static final String RIG_LID = "north-clam-lid";

    public TwoActs {
        edits = List.copyOf(edits);
    }

    /** Compares two evenings of two rigs that lie in these folders. */
    public static TwoActs of(final Act.Seen sketch, final Act.Seen rig, final Path sketchFolder, final Path rigFolder)
            throws IOException {
        return new TwoActs(
                sketch, rig, lateM(sketch, SKETCH_LID), lateM(rig, RIG_LID), Edits.between(sketchFolder, rigFolder));
    }

    private static OptionalDouble lateM(final Act.Seen act, final String lid) {
        return act.plan()
                .rig()
                .output(lid)
                .map(output ->
                        Act.lateM(output, Budget.of(act.plan().rig(), act.plan().show())))
                .orElse(OptionalDouble.empty());
    }

    /** At most 25 lines. */
    public List<String> lines() {
        final List<String> lines = new ArrayList<>();
        lines.add("Act 1, a plausible first sketch: " + title(sketch));
        went(sketch, sketchLateM, lines);
        lines.add("What was changed:");
        edits.forEach(edit -> lines.add("  " + edit));
        lines.add("Act 2, the same visitors and the same mishap: " + title(rig));
        lines.add(row("", "sketch", "sea cave"));
        lines.add(row(
                "groups greeted",
                count(sketch.evening().visits().greeted()),
                count(rig.evening().visits().greeted())));
        lines.add(row("strokes of the lid", count(sketch.strokes()), count(rig.strokes())));
        lines.add(row("demands refused", count(refused(sketch)), count(refused(rig))));
        lines.add(row("lowest air in the tank", bar(sketch.lowestBar()), bar(rig.lowestBar())));
        lines.add(row("valve held after the freeze", seconds(sketch.heldS()), seconds(rig.heldS())));
        lines.add(row("hardest landing of the lid", joules(sketch.hardestJ()), joules(rig.hardestJ())));
        lines.add(row("people seen too late by", late(sketchLateM), late(rigLateM)));
        lines.add(row("landings above 1.69 J", count(sketch.drops()), count(rig.drops())));
        return lines;
    }

    private static void went(final Act.Seen act, final OptionalDouble lateM, final List<String> lines) {
        act.trippedNs()
                .ifPresent(at -> lines.add("  " + clock(act, at) + "  the breaker trips at " + amps(act.trippedA())));
        act.airGoneNs()
                .ifPresent(
                        at -> lines.add("  " + clock(act, at) + "  the air is gone: the tank is below the regulator"));
        lateM.ifPresent(late -> lines.add("  people are seen " + metres(late) + " too late for the reveal"));
        lines.add("  the lid drops " + act.drops() + " times, with up to " + joules(act.hardestJ()));
        act.frozenNs()
                .ifPresent(at -> lines.add("  " + clock(act, at) + "  the computer freezes for "
                        + seconds(Act.FREEZE.toMillis() / 1e3) + ": the lid's valve stays open for "
                        + seconds(act.heldS())));
    }

    private static String late(final OptionalDouble lateM) {
        if (lateM.isEmpty()) {
            return "unknown";
        }
        return lateM.getAsDouble() > 0 ? metres(lateM.getAsDouble()) : "in time";
    }

    static long refused(final Act.Seen act) {
        return act.evening().tallies().refusals().values().stream()
                .mapToLong(Long::longValue)
                .sum();
    }

    private static String title(final Act.Seen act) {
        final Evening.Run run = act.evening().run();
        return run.rig() + ", seed " + run.seed() + ", "
                + act.evening().visits().visitors() + " visitors";
    }

    private static String clock(final Act.Seen act, final long atNs) {
        return act.evening().run().startedAt().moment(atNs).substring(0, 5);
    }

    private static String row(final String what, final String sketch, final String rig) {
        return String.format(Locale.ROOT, "  %-30s%12s%12s", what, sketch, rig).stripTrailing();
    }

    private static String count(final long count) {
        return Long.toString(count);
    }

    private static String bar(final double bar) {
        return String.format(Locale.ROOT, "%.1f bar", bar);
    }

    private static String seconds(final double s) {
        return String.format(Locale.ROOT, "%.2f s", s);
    }

    private static String joules(final double energyJ) {
        return String.format(Locale.ROOT, "%.2f J", energyJ);
    }

    private static String metres(final double m) {
        return String.format(Locale.ROOT, "%.2f m", m);
    }

    private static String amps(final double amps) {
        return String.format(Locale.ROOT, "%.1f A", amps);
    }
}
