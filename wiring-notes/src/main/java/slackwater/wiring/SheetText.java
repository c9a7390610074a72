package slackwater.wiring;

import java.util.ArrayList;
import java.util.List;
import slackwater.wiring.BenchAdvice.Guide;
import slackwater.wiring.WiringFacts.Unwired;

/** The sheet as plain text. */
final class SheetText {
    static final int WIDTH_MAX = 110;

    static final String LEGEND = "Active is the level that energises an output, or means active at an input."
            + " A contact normally open leaves its load off at rest, one normally closed leaves it on."
            + " Power-on to start is what the output does before the program takes the pin.";

    private final List<WiringFacts> sheets;
    private final StringBuilder text = new StringBuilder();

    SheetText(final List<WiringFacts> sheets) {
        this.sheets = sheets;
    }

    String render() {
        line("Before you touch anything");
        numbered(BenchAdvice.cautions(sheets));
        line("");
        for (final WiringFacts facts : sheets) {
            final String title = title(facts);
            line(title);
            line("=".repeat(Math.min(title.length(), WIDTH_MAX)));
            table(facts);
            picture(facts);
            unwired(facts);
        }
        line("Guides");
        for (final Guide guide : BenchAdvice.guides()) {
            indented("  ", guide.path() + ": " + guide.about());
        }
        return text.toString();
    }

    static String title(final WiringFacts facts) {
        return "Wiring of " + facts.rig() + ", controller " + facts.controller().name() + " ("
                + facts.controller().board().word() + ")";
    }

    private void table(final WiringFacts facts) {
        line("");
        if (facts.lines().isEmpty()) {
            line("Nothing is wired yet.");
            return;
        }
        final PinTable table = new PinTable(facts);
        new TextTable(WIDTH_MAX, PinTable.HEADINGS, table.rows()).lines().forEach(this::line);
        line("");
        indented("", LEGEND);
        if (!table.notes().isEmpty()) {
            line("");
            line("Notes");
            numbered(table.notes());
        }
    }

    private void picture(final WiringFacts facts) {
        line("");
        line("Header from above, pin 1 at the upper left; * is wired");
        new HeaderPicture(facts).lines().forEach(this::line);
        line("");
        BenchAdvice.supplies(facts).forEach(this::line);
        line("");
    }

    private void unwired(final WiringFacts facts) {
        if (facts.unwired().isEmpty()) {
            return;
        }
        line("Not wired yet (--propose-pins proposes pins)");
        for (final Unwired unwired : facts.unwired()) {
            indented("  ", unwiredWords(unwired));
        }
        line("");
    }

    static String unwiredWords(final Unwired unwired) {
        return unwired.thing().name() + ": " + unwired.thing().kind() + " ("
                + unwired.thing().role().direction() + "), [" + unwired.table() + "]";
    }

    private void numbered(final List<String> sentences) {
        for (int index = 0; index < sentences.size(); index++) {
            final String number = (index + 1) + ".";
            indented("  " + number + " ".repeat(4 - number.length()), sentences.get(index));
        }
    }

    private void indented(final String lead, final String sentence) {
        final List<String> lines = new ArrayList<>(TextTable.wrap(sentence, WIDTH_MAX - lead.length()));
        line(lead + lines.remove(0));
        lines.forEach(each -> line(" ".repeat(lead.length()) + each));
    }

    private void line(final String line) {
        text.append(line).append('\n');
    }
}
