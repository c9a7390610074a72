package slackwater.simulator.budget;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.Weather;
import slackwater.model.kind.Family;

/** What all parts of a budget reckon from, and the lines that they have written so far. */
final class Reckoning {
    private final Rig rig;
    private final Show show;
    private final Demand demand;
    private final List<Line> lines = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();

    Reckoning(final Rig rig, final Show show) {
        this.rig = rig;
        this.show = show;
        demand = Demand.of(rig, show);
    }

    Rig rig() {
        return rig;
    }

    Show show() {
        return show;
    }

    Demand demand() {
        return demand;
    }

    Weather weather() {
        return rig.surroundings().weather().orElse(Weather.USUAL);
    }

    /** What is assumed where the rig says nothing of the weather. */
    List<String> weatherAssumed() {
        return rig.surroundings().weather().isPresent()
                ? List.of()
                : List.of("15 degC, 60 % humidity, 0.5 m/s of wind (common practice, no source); [weather] says it");
    }

    List<Output> outputs(final Family family) {
        return rig.outputs().stream()
                .filter(output -> output.family() == family)
                .toList();
    }

    void add(final Line line) {
        lines.add(line);
    }

    /** Something that could not be reckoned, with the key that would tell it. */
    void leaveOut(final String words) {
        if (!leftOut.contains(words)) {
            leftOut.add(words);
        }
    }

    List<Line> lines() {
        return lines.stream().sorted(Comparator.comparing(Line::group)).toList();
    }

    List<String> leftOut() {
        return List.copyOf(leftOut);
    }
}
