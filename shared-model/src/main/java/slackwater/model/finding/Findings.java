package slackwater.model.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Collects findings, so that all of them are reported at once and in the order of the files. */
public final class Findings {
    private static final Comparator<Finding> BY_PLACE = Comparator.comparing(
                    (Finding finding) -> finding.at().map(Position::file).orElse(""))
            .thenComparingInt(finding -> finding.at().map(Position::line).orElse(0))
            .thenComparingInt(finding -> finding.at().map(Position::column).orElse(0))
            .thenComparing(Finding::code);

    private final Where where;
    private final List<Finding> all = new ArrayList<>();

    public Findings(final Where where) {
        this.where = where;
    }

    /** What is wrong, why it matters and what to write instead. */
    public record Words(String message, String why, String fix) {}

    public void error(final String code, final Optional<Position> at, final Words words) {
        add(Severity.ERROR, code, at, words);
    }

    public void warning(final String code, final Optional<Position> at, final Words words) {
        add(Severity.WARNING, code, at, words);
    }

    public boolean hasErrors() {
        return all.stream().anyMatch(Finding::isError);
    }

    /** All findings, by file, line and column; each once. */
    public List<Finding> sorted() {
        return all.stream().distinct().sorted(BY_PLACE).toList();
    }

    private void add(final Severity severity, final String code, final Optional<Position> at, final Words words) {
        final String line = at.map(where::lineText).orElse("");
        all.add(new Finding(severity, code, at, line, words.message(), words.why(), words.fix()));
    }
}
