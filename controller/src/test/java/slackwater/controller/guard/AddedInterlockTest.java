package slackwater.controller.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slackwater.controller.plan.LogicBench;

/** An interlock can only refuse: adding one takes energy away from the outputs that it guards, and adds no permission. */
class AddedInterlockTest {
    private static final int OUTPUTS = 5;
    private static final int INPUTS = 4;
    private static final int SCANS = 200;
    private static final int SEEDS = 60;

    /** Goal: no input at any time makes the added interlock energise. Method: both rigs get the same random evening. */
    @Test
    void anAddedPermissiveOnlyTakesAwayFromARigOfPermissives() {
        int takenAway = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            final Random random = new Random(seed);
            final StringBuilder rig = new StringBuilder(outputs(random, true));
            for (int i = 0; i < 3; i++) {
                rig.append(permissive(random, "p" + i));
            }
            final LogicBench without = LogicBench.of(rig.toString());
            final LogicBench with = LogicBench.of(rig + permissive(random, "added"));
            for (int scan = 0; scan < SCANS; scan++) {
                final long draw = random.nextLong();
                stir(without, draw);
                stir(with, draw);
                assertThat(without.on()).as("seed %d, scan %d", seed, scan).containsAll(with.on());
                takenAway += without.on().size() - with.on().size();
            }
        }
        assertThat(takenAway).as("the added ones did refuse").isPositive();
    }

    /** Goal: whatever is refused stays refused. Method: the same state, judged with and without the added interlock. */
    @Test
    void inTheSameStateAnyAddedInterlockKeepsEveryRefusal() {
        int refusals = 0;
        int added = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            final Random random = new Random(seed);
            final StringBuilder rig = new StringBuilder(outputs(random, false));
            for (int i = 0; i < 3; i++) {
                rig.append(any(random, "r" + i));
            }
            final LogicBench without = LogicBench.of(rig.toString());
            final LogicBench with = LogicBench.of(rig + any(random, "added"));
            for (int scan = 0; scan < SCANS; scan++) {
                final long draw = random.nextLong();
                stirPins(without, draw);
                stirPins(with, draw);
                final String output = "o" + scan % OUTPUTS;
                final List<String> before = without.whyNot(output);
                final List<String> after = with.whyNot(output);
                assertThat(after.stream().filter(text -> !text.contains("\"added\"")))
                        .as("seed %d, scan %d", seed, scan)
                        .containsExactlyElementsOf(before);
                refusals += before.size();
                added += after.size() - before.size();
            }
        }
        assertThat(refusals).isPositive();
        assertThat(added).isPositive();
    }

    /** What one may not use another may: a shared limit is a share, so the rule above is one of each output's state. */
    @Test
    void aRefusedMemberLeavesItsPlaceInAnExclusionToTheNext() {
        final String pair = """
                [input.i0]
                kind = "motion"
                [output.a]
                kind = "lamp"
                [output.b]
                kind = "lamp"
                [exclusion.one]
                outputs = ["a", "b"]
                clear-after = "0 s"
                """;
        final String added = """
                [permissive.added]
                outputs = ["a"]
                needs = ["i0"]
                """;

        assertThat(LogicBench.of(pair).wish("a", "b").step().on()).containsExactly("a");
        assertThat(LogicBench.of(pair + added).wish("a", "b").step().on()).containsExactly("b");
    }

    private static void stir(final LogicBench bench, final long draw) {
        final Random random = new Random(draw);
        turnInput(bench, random);
        final String output = "o" + random.nextInt(OUTPUTS);
        if (random.nextBoolean()) {
            bench.wish(output);
        } else if (random.nextInt(3) == 0) {
            bench.unwish(output);
        }
        bench.step();
    }

    /** The pins are told to both alike, so that only the judging differs. */
    private static void stirPins(final LogicBench bench, final long draw) {
        final Random random = new Random(draw);
        turnInput(bench, random);
        bench.step();
        for (int i = 0; i < OUTPUTS; i++) {
            final boolean isOn = random.nextInt(4) == 0;
            bench.image().energised[i] = isOn;
            bench.image().next[i] = isOn || random.nextInt(4) == 0;
        }
    }

    private static void turnInput(final LogicBench bench, final Random random) {
        final String input = "i" + random.nextInt(INPUTS);
        switch (random.nextInt(3)) {
            case 0 -> bench.active(input);
            case 1 -> bench.inactive(input);
            default -> bench.unknown(input);
        }
    }

    private static String outputs(final Random random, final boolean areFree) {
        final StringBuilder text = new StringBuilder();
        for (int i = 0; i < INPUTS; i++) {
            text.append("[input.i").append(i).append("]\nkind = \"motion\"\n");
        }
        for (int i = 0; i < OUTPUTS; i++) {
            final boolean isLamp = areFree || random.nextBoolean();
            text.append("[output.o").append(i).append("]\ncurrent = \"1 A\"\nkind = ");
            text.append(isLamp ? "\"lamp\"\n" : "\"strobe\"\nlongest-on = \"80 ms\"\none-flash-per-pulse = true\n");
        }
        return text.toString();
    }

    private static String any(final Random random, final String name) {
        return switch (random.nextInt(4)) {
            case 0 -> permissive(random, name);
            case 1 ->
                "[exclusion." + name + "]\nclear-after = \"30 ms\"\noutputs = " + some(random, "o", OUTPUTS) + "\n";
            case 2 -> "[load-limit." + name + "]\nlimit = \"2 A\"\noutputs = " + some(random, "o", OUTPUTS) + "\n";
            default -> "[flash-limit." + name + "]\nflashes = 1\noutputs = " + some(random, "o", OUTPUTS) + "\n";
        };
    }

    private static String permissive(final Random random, final String name) {
        return "[permissive." + name + "]\nneeds = " + some(random, random.nextBoolean() ? "i" : "not i", INPUTS)
                + "\nbegun = \"" + (random.nextBoolean() ? "rest" : "finish") + "\"\noutputs = "
                + some(random, "o", OUTPUTS) + "\n";
    }

    private static String some(final Random random, final String prefix, final int count) {
        final List<String> names = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            if (random.nextBoolean()) {
                names.add("\"" + prefix + i + "\"");
            }
        }
        if (names.isEmpty()) {
            names.add("\"" + prefix + "0\"");
        }
        return names.toString();
    }
}
