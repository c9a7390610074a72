package slackwater.simulator.budget;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import slackwater.simulator.report.LinePlot;
import slackwater.simulator.report.Sheet;

/** A budget as one page that needs nothing beside it: its lines, and its busiest hour as pictures. */
public final class BudgetPage {
    private BudgetPage() {}

    /** Writes the page to {@code out}, which stays open. */
    public static void write(final Budget budget, final List<LinePlot> plots, final Writer out) throws IOException {
        final StringBuilder body = new StringBuilder("<h1>" + Sheet.escaped(budget.rig()) + ": the budget</h1>\n");
        body.append("<p class=\"quiet\">Show " + Sheet.escaped(budget.show())
                + ": what it asks against what there is. The figures are of a model: measure before you trust them, and"
                + " keep to local codes.</p>\n");
        body.append(verdict(budget));
        for (final Line.Group group : Line.Group.values()) {
            if (!budget.of(group).isEmpty()) {
                body.append(table(group, budget.of(group)));
            }
        }
        if (!budget.leftOut().isEmpty()) {
            body.append("<h2>Left out</h2>\n<ul>\n");
            budget.leftOut().forEach(each -> body.append("<li>" + Sheet.escaped(each) + "</li>\n"));
            body.append("</ul>\n");
        }
        if (!plots.isEmpty()) {
            body.append("<h2>The busiest hour, as the simulator plays it</h2>\n<div class=\"scroll\">\n");
            plots.forEach(plot -> body.append(plot.svg()));
            body.append("</div>\n");
        }
        out.write(Sheet.page(budget.rig() + ": the budget", body.toString()));
    }

    private static String verdict(final Budget budget) {
        return "<p class=\"verdict" + (budget.fits() ? "" : " bad") + "\">"
                + Sheet.escaped(BudgetText.verdictOf(budget)) + ".</p>\n";
    }

    private static String table(final Line.Group group, final List<Line> lines) {
        final StringBuilder text = new StringBuilder(
                "<h2>" + Sheet.escaped(heading(group)) + "</h2>\n<div class=\"scroll\">"
                        + "<table><tr><th scope=\"col\">what</th><th scope=\"col\">asks</th><th scope=\"col\">has</th>"
                        + "<th scope=\"col\" class=\"fixed\">margin</th><th scope=\"col\" class=\"fixed\"></th><th scope=\"col\">by</th></tr>\n");
        lines.forEach(line -> text.append(row(line)));
        return text.append("</table></div>\n").toString();
    }

    private static String heading(final Line.Group group) {
        final String word = group.word();
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private static String row(final Line line) {
        final String style = line.verdict() == Verdict.SHORT ? "bad-word" : "refused-word";
        final String word = line.verdict() == Verdict.SHORT || line.verdict() == Verdict.LOOK
                ? "<span class=\"" + style + "\">" + line.verdict().word() + "</span>"
                : line.verdict().word();
        final String advice =
                line.advice().map(each -> "<br>" + Sheet.escaped(each)).orElse("");
        final String assumed = line.assumed().isEmpty()
                ? ""
                : "<br><span class=\"quiet\">assumed: " + Sheet.escaped(String.join("; ", line.assumed())) + "</span>";
        return "<tr><td>" + Sheet.escaped(line.about()) + advice + "</td>"
                + cell(line.asks().map(Amount::text).orElse(""))
                + cell(line.has().map(Amount::text).orElse("")) + cell(BudgetText.margin(line.margin()))
                + "<td class=\"fixed\">" + word
                + "</td><td>" + Sheet.escaped(line.formula()) + assumed + "</td></tr>\n";
    }

    private static String cell(final String text) {
        return "<td class=\"fixed\">" + Sheet.escaped(text) + "</td>";
    }
}
