package slackwater.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PinWriterTest {
    private static final Proposed LID = Proposed.pin("porch", "output.lid", 27);
    private static final Proposed PATH = Proposed.pin("porch", "input.path", 22);

    private static String written(final String toml, final Proposed... proposals) {
        return PinWriter.insert(toml, List.of(proposals)).toml();
    }

    @Test
    void eachPinIsOneLineBelowItsHeadingAndEveryOtherByteStays() {
        final String before = """
                # My first rig: 21 °C, "quoted" # and so on
                [input.path]   # at the gate

                  kind="motion"\t
                  [output.lid]
                  # the lid
                kind = 'valve'
                """;
        final PinWriter.Written after = PinWriter.insert(before, List.of(LID, PATH));
        assertThat(after.toml()).isEqualTo("""
                        # My first rig: 21 °C, "quoted" # and so on
                        [input.path]   # at the gate
                        pin = 22

                          kind="motion"\t
                          [output.lid]
                          pin = 27
                          # the lid
                        kind = 'valve'
                        """);
        assertThat(after.written()).containsExactly(LID, PATH);
        assertThat(after.left()).isEmpty();
    }

    @Test
    void lineEndsStayThePersonsOwn() {
        assertThat(written("[output.lid]\r\nkind = \"valve\"\r\n", LID))
                .isEqualTo("[output.lid]\r\npin = 27\r\nkind = \"valve\"\r\n");
        assertThat(written("# mixed\r\n[output.lid]\nkind = \"valve\"\r\n", LID))
                .isEqualTo("# mixed\r\n[output.lid]\npin = 27\nkind = \"valve\"\r\n");
    }

    @Test
    void aHeadingOnALastLineWithoutAnEndIsEndedFirst() {
        assertThat(written("# x\n[output.lid]", LID)).isEqualTo("# x\n[output.lid]\npin = 27");
        assertThat(written("# x\r\n[output.lid]", LID)).isEqualTo("# x\r\n[output.lid]\r\npin = 27");
        assertThat(written("[output.lid]\n", LID)).isEqualTo("[output.lid]\npin = 27\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[ output . lid ]",
                "[output.\"lid\"]",
                "['output'.'lid'] # [output.jet]",
                "\uFEFF[output.lid]",
                "\t[output.lid]\t",
                "a = \"\"\"text\"\"\"\n[output.lid]",
                "a = '''\n[output.jet]'''\n[output.lid]",
                "a = \"\"\"\\\"\"\"\n\"\"\"\n[output.lid]",
                "a = \"\"\"he said \"so\"\"\"\"\"\n[output.lid]",
                "a = \"it's\" # '''\n[output.lid]",
                "a = 'C:\\' # \"\"\"\n[output.lid]",
                "a = \"\\\"[\"\n[output.lid]"
            })
    void aHeadingIsKnownHoweverItIsWritten(final String heading) {
        final String indent = heading.startsWith("\t") ? "\t" : "";
        assertThat(written(heading + "\nkind = 1\n", LID)).isEqualTo(heading + "\n" + indent + "pin = 27\nkind = 1\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "# [output.lid]",
                "a = \"\"\"\n[output.lid]\n\"\"\"",
                "a = '''\n[output.lid]\n'''",
                "a = [\n[\"output.lid\"]\n]",
                "[[output.lid]]",
                "[output.lid.more]",
                "[output.lid-2]",
                "[zone.lid]"
            })
    void whatOnlyLooksLikeTheHeadingIsLeftAloneAndSaid(final String other) {
        final String before = other + "\nkind = 1\n";
        final PinWriter.Written after = PinWriter.insert(before, List.of(LID));
        assertThat(after.toml()).isEqualTo(before);
        assertThat(after.written()).isEmpty();
        assertThat(after.left())
                .containsExactly(
                        "[output.lid] has no heading of its own in this file, as with a mirrored bank: pin = 27 was"
                                + " not written.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"pin = 4", "  \"pin\"=4", "'pin' = 4"})
    void aPinThatIsThereIsNotWrittenTwice(final String pin) {
        final String before = "[output.lid]\nkind = \"valve\"\n" + pin + "\n";
        final PinWriter.Written after = PinWriter.insert(before, List.of(LID));
        assertThat(after.toml()).isEqualTo(before);
        assertThat(after.left()).containsExactly("[output.lid] has a pin already: pin = 27 was not written.");
    }

    @Test
    void anotherTablesPinIsNoObstacle() {
        final String before = "[output.lid]\npins = 1\n# pin = 4\n[[x]]\npin = 3\n[output.jet]\npin = 5\n";
        assertThat(written(before, LID))
                .isEqualTo("[output.lid]\npin = 27\npins = 1\n# pin = 4\n[[x]]\npin = 3\n[output.jet]\npin = 5\n");
    }

    @Test
    void whatSharesALineWithOtherKeysIsReportedAndNotWritten() {
        final String before =
                "[controller.porch]\nboard = \"pi-4\"\nhold-up = { drop-out = \"400 ms\" }\n[input.stop]\n";
        final PinWriter.Written after = PinWriter.insert(
                before,
                List.of(
                        new Proposed("porch", "controller.porch", 27, Proposed.Key.HOLD_UP_PIN),
                        new Proposed("porch", "input.stop", 5, Proposed.Key.PINS)));
        assertThat(after.toml()).isEqualTo(before);
        assertThat(after.left())
                .containsExactly(
                        "Write hold-up = { pin = 27 } into [controller.porch] yourself, beside what is there: it shares a line"
                                + " with other keys.",
                        "Write pins = { porch = 5 } into [input.stop] yourself, beside what is there: it shares a line with"
                                + " other keys.");
    }

    @Test
    void aFileWithNothingToWriteIsTheSame() {
        assertThat(written("")).isEmpty();
        assertThat(written("no toml at all ]] \"")).isEqualTo("no toml at all ]] \"");
    }
}
