package slackwater.simulator.budget;

import java.util.List;
import slackwater.model.Rig;
import slackwater.model.Show;

/**
 * A rig's whole budget.
 *
 * @param lines by group
 * @param leftOut what could not be reckoned, each with the key that would tell it
 */
public record Budget(String rig, String show, List<Line> lines, List<String> leftOut) {
    public Budget {
        lines = List.copyOf(lines);
        leftOut = List.copyOf(leftOut);
    }

    /** Reckons everything that the rig and its show tell enough about. */
    public static Budget of(final Rig rig, final Show show) {
        final Reckoning reckoning = new Reckoning(rig, show);
        AirLines.add(reckoning);
        StrokeLines.add(reckoning);
        FogLines.add(reckoning);
        LowFogLines.add(reckoning);
        MistLines.add(reckoning);
        CurrentLines.add(reckoning);
        CableLines.add(reckoning);
        PinLines.add(reckoning);
        ContactLines.add(reckoning);
        FlashLines.add(reckoning);
        TimingLines.add(reckoning);
        EveningLines.add(reckoning);
        return new Budget(rig.name(), show.name(), reckoning.lines(), reckoning.leftOut());
    }

    /** Whether nothing is short. */
    public boolean fits() {
        return lines.stream().noneMatch(line -> line.verdict() == Verdict.SHORT);
    }

    /** The lines of one group. */
    public List<Line> of(final Line.Group group) {
        return lines.stream().filter(line -> line.group() == group).toList();
    }
}
