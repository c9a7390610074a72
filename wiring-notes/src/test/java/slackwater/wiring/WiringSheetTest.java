package slackwater.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slackwater.model.Contact;
import slackwater.model.Level;
import slackwater.model.Rig;
import slackwater.model.board.BootState.Verdict;

class WiringSheetTest {

    /** Two outputs and three inputs, one of them not wired yet. */
    private static Rig small() {
        return new SmallRig("pi-4")
                .valve("lid", OptionalInt.of(17), Level.HIGH)
                .lamp("harbour-lamp", OptionalInt.of(22), Level.LOW, Contact.NORMALLY_CLOSED)
                .stopLoop(OptionalInt.of(5))
                .button("reset", OptionalInt.of(2))
                .motion("path", SmallRig.NOT_WIRED)
                .rig();
    }

    @Test
    void theSheetOfASmallRigIsThisToTheLetter() throws IOException {
        assertThat(WiringSheet.text(small())).isEqualTo(kept("small.txt"));
    }

    @Test
    void theMarkdownSaysTheSame() throws IOException {
        assertThat(WiringSheet.markdown(small())).isEqualTo(kept("small.md"));
    }

    /** What the sheet has to be, kept as a file so that a person can read it as it will lie on the bench. */
    private static String kept(final String file) throws IOException {
        try (InputStream kept = WiringSheetTest.class.getResourceAsStream(file)) {
            return new String(Objects.requireNonNull(kept, file).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void theJsonHoldsTheFacts() {
        final Rig rig = new SmallRig("pi-4")
                .lamp("glow", OptionalInt.of(14), Level.HIGH, Contact.NORMALLY_OPEN)
                .motion("path", SmallRig.NOT_WIRED)
                .rig();
        assertThat(WiringSheet.json(rig)).startsWith("""
                        {"rig":"Bench","controllers":[{"controller":"porch","board":"pi-4","lines":[\
                        {"header-pin":8,"gpio":14,"way":"out","name":"glow","kind":"lamp","pull-at-reset":"down",\
                        "active":"high","contact":"normally-open","level-at-rest":"low","power-on-to-start":"energised",\
                        "reason":"GPIO14: serial output on many images: high and chattering during boot; it is high before \
                        the program runs, and high energises the load.","load-at-rest":"off","notes":["GPIO14: serial \
                        output on many images: high and chattering during boot; it is high before the program runs, and \
                        high energises the load."]}],"not-wired":[{"name":"path","kind":"motion","way":"in",\
                        "table":"input.path"}],"supplies":{"3V3":[1,17],"5V":[2,4],"GND":[6,9,14,20,25,30,34,39]}}],\
                        "cautions":["Mains is""");
    }

    @Test
    void theJsonCanBeReadToItsEnd() throws IOException {
        final List<String> names = new ArrayList<>();
        try (JsonParser json = new JsonFactory().createParser(WiringSheet.json(small()))) {
            while (json.nextToken() != null) {
                if ("name".equals(json.currentName()) && json.currentToken().isScalarValue()) {
                    names.add(json.getText());
                }
            }
        }
        assertThat(names).containsExactly("reset", "lid", "harbour-lamp", "stop-loop", "path");
    }

    @Test
    void noLineIsWiderThanThePageHoweverLongTheNames() {
        final String longName = "the-" + "very-".repeat(30) + "x".repeat(60);
        final Rig rig = new SmallRig("pi-5")
                .valve(longName, OptionalInt.of(2), Level.HIGH)
                .motion("path-" + longName, OptionalInt.of(3))
                .button("left-" + longName, SmallRig.NOT_WIRED)
                .rig();
        final String sheet = WiringSheet.text(rig);
        assertThat(sheet.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(110));
        assertThat(sheet).contains("pi-5: The pulls at reset of this board are from memory");
    }

    @Test
    void anInputWhosePullCannotWinIsSaid() {
        final Rig rig = new SmallRig("pi-4").motion("path", OptionalInt.of(3)).rig();
        assertThat(WiringFacts.of(rig).get(0).lines().get(0).notes())
                .containsExactly(
                        "GPIO3: fixed 1.8 kOhm pull-up to 3.3 V on the board; low wakes a halted board.",
                        "The program's pull-down cannot win against that: use another pin.");
    }

    /** S2: only edges hold the relay, so a pin with edges of its own at boot is doubtful at either level. */
    @Test
    void theHoldUpRestsOnAnySteadyPinAndOnNoneThatChattersAtBoot() {
        for (final int gpio : List.of(5, 12, 27)) {
            assertThat(holdUpOn(gpio)).as("GPIO%d", gpio).isEqualTo(Verdict.AT_REST);
        }
        for (final int gpio : List.of(0, 1, 14, 15)) {
            assertThat(holdUpOn(gpio)).as("GPIO%d", gpio).isEqualTo(Verdict.UNCERTAIN);
        }
    }

    private static Verdict holdUpOn(final int gpio) {
        final Rig rig = new SmallRig("pi-4")
                .holdUp(OptionalInt.of(gpio), OptionalInt.of(26))
                .rig();
        final WiringFacts facts = WiringFacts.of(rig).get(0);
        assertThat(facts.lines()).hasSize(2);
        return facts.lines().stream()
                .flatMap(line -> line.rest().stream())
                .findFirst()
                .orElseThrow()
                .boot()
                .verdict();
    }

    @Test
    void aRigWithNoPinYetSaysSoAndListsWhatWaits() {
        final Rig rig = new SmallRig("pi-4")
                .holdUp(SmallRig.NOT_WIRED, SmallRig.NOT_WIRED)
                .valve("lid", SmallRig.NOT_WIRED, Level.HIGH)
                .rig();
        assertThat(WiringSheet.text(rig))
                .contains("Nothing is wired yet.\n")
                .contains("  hold-up: relay (out), [controller.porch]\n  lid: valve (out), [output.lid]\n");
    }

    @Test
    void aPinOffTheHeaderIsAProgrammersMistake() {
        final Rig rig = new SmallRig("pi-4").motion("path", OptionalInt.of(28)).rig();
        assertThatThrownBy(() -> WiringSheet.text(rig)).hasMessage("gpio=28 on porch is not on the header of pi-4");
    }
}
