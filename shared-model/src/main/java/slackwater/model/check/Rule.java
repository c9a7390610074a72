package slackwater.model.check;

import slackwater.model.finding.Findings;

/** One thing that can be wrong with a rig or its show. A rule only looks; what it sees it adds to the findings. */
public interface Rule {
    void look(Draft draft, Findings findings);
}
