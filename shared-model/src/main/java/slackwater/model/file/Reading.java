package slackwater.model.file;

import java.util.List;
import java.util.Optional;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.finding.Finding;
import slackwater.model.finding.Where;

/**
 * What reading a rig folder gave.
 *
 * @param rig empty when there is an error in the rig or in the show
 * @param show empty when there is an error, or no show at all
 * @param findings by file, line and column
 * @param where where everything was written
 * @param showNames every show of the folder, by name
 * @param filesRead how many files were opened and decoded
 */
public record Reading(
        Optional<Rig> rig,
        Optional<Show> show,
        List<Finding> findings,
        Where where,
        List<String> showNames,
        int filesRead) {
    public Reading {
        findings = List.copyOf(findings);
        showNames = List.copyOf(showNames);
    }
}
