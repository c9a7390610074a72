package slackwater.model.check;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import slackwater.model.Cue;
import slackwater.model.Input;
import slackwater.model.Interlock;
import slackwater.model.Output;
import slackwater.model.Step;
import slackwater.model.check.Steps.Placed;
import slackwater.model.finding.Findings;

/** What is shorter than a scan cannot be kept: the program looks once a scan. */
final class NothingBelowAScan implements Rule {
    private static final int FEWEST_SCANS_OF_DROP_OUT = 3;
    private static final String BLINK = "blink";
    private static final String LONGEST_ON = "longest-on";
    private static final String NEXT_AFTER = "next-after";

    /** A length, and the key under which it was written. */
    private record Length(String table, String key, Duration lasts) {

        /**
         * Zero means none, except for a longest-on, since what may be on for no time at all never comes on, and for a
         * next-after, since nothing is first among what is shed all at once.
         */
        private boolean isSaid() {
            return !lasts.isZero() || key.equals(LONGEST_ON) || key.equals(NEXT_AFTER);
        }

        /** The last part of the key; what must outlast a scan is half of a blink, on or off. */
        private String says() {
            final String name = key.substring(key.lastIndexOf('.') + 1);
            return name.equals(BLINK) ? "half of " + BLINK : name;
        }
    }

    @Override
    public void look(final Draft draft, final Findings findings) {
        final Duration scan = draft.rig().scan();
        final List<Length> lengths = new ArrayList<>();
        draft.rig().inputs().forEach(input -> lengths.addAll(of(input)));
        draft.rig().outputs().forEach(output -> lengths.addAll(of(output)));
        draft.rig().interlocks().forEach(interlock -> lengths.addAll(of(interlock)));
        draft.show().cues().forEach(cue -> lengths.addAll(of(cue)));
        lengths.stream()
                .filter(length -> length.isSaid() && length.lasts().compareTo(scan) < 0)
                .forEach(length -> report(draft, length, findings));
        dropOuts(draft, findings);
    }

    private static List<Length> of(final Input input) {
        final String table = Say.table(input);
        return List.of(
                new Length(table, "active-after", input.proving().activeAfter()),
                new Length(table, "inactive-after", input.proving().inactiveAfter()));
    }

    private static List<Length> of(final Output output) {
        final String table = Say.table(output);
        return Stream.concat(
                        output.limits().longestOn().stream().map(lasts -> new Length(table, LONGEST_ON, lasts)),
                        Stream.of(new Length(
                                table, "shortest-off", output.limits().shortestOff())))
                .toList();
    }

    private static List<Length> of(final Interlock interlock) {
        if (interlock instanceof Interlock.Shed shed && shed.outputs().size() > 1) {
            return List.of(new Length(Say.table(shed), NEXT_AFTER, shed.nextAfter()));
        }
        return interlock instanceof Interlock.Exclusion exclusion
                ? List.of(new Length(Say.table(exclusion), "clear-after", exclusion.clearAfter()))
                : List.of();
    }

    private static List<Length> of(final Cue cue) {
        final String table = Say.table(cue);
        final List<Length> lengths = new ArrayList<>();
        for (final Placed<Step.Energise> placed : Steps.all(Step.Energise.class, cue.steps())) {
            lengths.add(new Length(table, placed.key("for"), placed.step().lasts()));
            placed.step()
                    .blink()
                    .ifPresent(blink -> lengths.add(new Length(table, placed.key(BLINK), blink.dividedBy(2))));
        }
        Steps.all(Step.Pause.class, cue.steps())
                .forEach(placed -> lengths.add(
                        new Length(table, placed.key("pause"), placed.step().lasts())));
        Steps.all(Step.Await.class, cue.steps())
                .forEach(placed -> lengths.add(
                        new Length(table, placed.key("at-most"), placed.step().atMost())));
        return lengths;
    }

    private static void report(final Draft draft, final Length length, final Findings findings) {
        findings.error(
                "shorter-than-scan",
                draft.at(length.table(), length.key()),
                Say.words(
                        length.says() + "=" + Say.time(length.lasts()) + " < scan="
                                + Say.time(draft.rig().scan()),
                        "the program looks once a scan, so it could not keep a time that short",
                        "make it at least " + Say.time(draft.rig().scan()) + ", or the scan shorter"));
    }

    /**
     * The pulses that hold the relay need two scans for a period; a third is the least that is left for a late one
     * (S2).
     */
    private static void dropOuts(final Draft draft, final Findings findings) {
        final Duration least = draft.rig().scan().multipliedBy(FEWEST_SCANS_OF_DROP_OUT);
        draft.rig()
                .controllers()
                .forEach(controller -> controller
                        .holdUp()
                        .filter(holdUp -> holdUp.dropOut().compareTo(least) < 0)
                        .ifPresent(holdUp -> findings.error(
                                "drop-out-short",
                                draft.at("controller." + controller.name(), "hold-up.drop-out"),
                                Say.words(
                                        "drop-out=" + Say.time(holdUp.dropOut()) + " < 3 scans=" + Say.time(least),
                                        "the relay would open between the pulses of a healthy program (S2)",
                                        "take a relay with a longer drop-out, such as 400 ms,"
                                                + " or make the scan shorter"))));
    }
}
