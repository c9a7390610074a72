package slackwater.wiring;

import java.util.List;
import java.util.stream.Collectors;
import slackwater.wiring.BenchAdvice.Guide;
import slackwater.wiring.WiringFacts.Unwired;

/** The sheet as Markdown. */
final class SheetMarkdown {
    private final List<WiringFacts> sheets;
    private final StringBuilder text = new StringBuilder();

    SheetMarkdown(final List<WiringFacts> sheets) {
        this.sheets = sheets;
    }

    String render() {
        heading("# ", "Before you touch anything");
        numbered(BenchAdvice.cautions(sheets));
        for (final WiringFacts facts : sheets) {
            heading("# ", escaped(SheetText.title(facts)));
            table(facts);
            heading("## ", "Header from above, pin 1 at the upper left");
            line("```text");
            new HeaderPicture(facts).lines().forEach(this::line);
            line("```");
            line("");
            BenchAdvice.supplies(facts).forEach(supply -> line("- " + supply));
            line("");
            unwired(facts);
        }
        heading("# ", "Guides");
        for (final Guide guide : BenchAdvice.guides()) {
            line("- `" + guide.path() + "`: " + guide.about());
        }
        return text.toString();
    }

    private void table(final WiringFacts facts) {
        if (facts.lines().isEmpty()) {
            line("Nothing is wired yet.");
            line("");
            return;
        }
        final PinTable table = new PinTable(facts);
        line(row(PinTable.HEADINGS));
        line(row(PinTable.HEADINGS.stream().map(heading -> "---").toList()));
        table.rows().forEach(cells -> line(row(cells)));
        line("");
        line(SheetText.LEGEND);
        line("");
        if (!table.notes().isEmpty()) {
            heading("## ", "Notes");
            numbered(table.notes());
        }
    }

    private void unwired(final WiringFacts facts) {
        if (facts.unwired().isEmpty()) {
            return;
        }
        heading("## ", "Not wired yet");
        for (final Unwired unwired : facts.unwired()) {
            line("- " + escaped(SheetText.unwiredWords(unwired)));
        }
        line("");
    }

    private void numbered(final List<String> sentences) {
        for (int index = 0; index < sentences.size(); index++) {
            line((index + 1) + ". " + escaped(sentences.get(index)));
        }
        line("");
    }

    private void heading(final String marks, final String words) {
        line(marks + words);
        line("");
    }

    private static String row(final List<String> cells) {
        return cells.stream().map(SheetMarkdown::escaped).collect(Collectors.joining(" | ", "| ", " |"));
    }

    /** A rig's own names may hold characters that Markdown reads as its own. */
    private static String escaped(final String words) {
        return words.replaceAll("([\\\\`*_\\[\\]<>|])", "\\\\$1");
    }

    private void line(final String line) {
        text.append(line).append('\n');
    }
}
