package slackwater.model.finding;

import java.util.Optional;

/**
 * Something wrong in a rig or show file.
 *
 * @param code a short word that never changes meaning, such as {@code pin-taken}
 * @param at where; empty when it concerns the folder as a whole
 * @param lineText the text of that line
 * @param message what is wrong, in one line
 * @param why what would come of it
 * @param fix what to write instead
 */
public record Finding(
        Severity severity,
        String code,
        Optional<Position> at,
        String lineText,
        String message,
        String why,
        String fix) {

    public boolean isError() {
        return severity == Severity.ERROR;
    }
}
