package slackwater.simulator.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A line being written. */
final class Entry {
    private final Line.Group group;
    private final String about;
    private final List<String> assumed = new ArrayList<>();
    private Optional<Amount> asks = Optional.empty();
    private Optional<Amount> has = Optional.empty();
    private String formula = "";
    private Optional<String> advice = Optional.empty();

    Entry(final Line.Group group, final String about) {
        this.group = group;
        this.about = about;
    }

    Entry asks(final double si, final Measure measure) {
        asks = Optional.of(new Amount(si, measure));
        return this;
    }

    Entry has(final double si, final Measure measure) {
        has = Optional.of(new Amount(si, measure));
        return this;
    }

    /** The formula's name and source. */
    Entry by(final String words) {
        formula = words;
        return this;
    }

    Entry assuming(final List<String> words) {
        words.stream().filter(each -> !assumed.contains(each)).forEach(assumed::add);
        return this;
    }

    Entry advice(final String words) {
        advice = Optional.of(words);
        return this;
    }

    /** Judges by what is asked and what there is: short where more is asked. */
    Line judged() {
        return line(isShort() ? Verdict.SHORT : Verdict.FITS);
    }

    /** As {@link #judged}, but more than there is is only to be looked at: a figure of caution. */
    Line cautioned() {
        return line(isShort() ? Verdict.LOOK : Verdict.FITS);
    }

    /** A figure that is only told. */
    Line told() {
        return line(Verdict.TOLD);
    }

    Line line(final Verdict verdict) {
        final boolean isGood = verdict == Verdict.FITS;
        return new Line(group, about, asks, has, verdict, formula, assumed, isGood ? Optional.empty() : advice);
    }

    private boolean isShort() {
        return asks.isPresent()
                && has.isPresent()
                && !(asks.get().si() <= has.get().si());
    }
}
