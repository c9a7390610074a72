package slackwater.model.check;

import java.time.Duration;
import java.util.stream.Stream;
import slackwater.model.Schedule;
import slackwater.model.Schedule.TimeOfDay;
import slackwater.model.finding.Findings;

/** A schedule opens and closes at two different times that can be told for the place. */
final class OpeningHours implements Rule {
    private static final Duration DAY = Duration.ofDays(1);
    private static final Duration LONG_NIGHT = Duration.ofHours(14);

    @Override
    public void look(final Draft draft, final Findings findings) {
        draft.show().schedule().ifPresent(schedule -> {
            place(draft, schedule, findings);
            if (schedule.opens().equals(schedule.closes())) {
                never(draft, findings);
            } else {
                night(draft, schedule, findings);
            }
        });
    }

    private static void place(final Draft draft, final Schedule schedule, final Findings findings) {
        final boolean needsSun =
                Stream.of(schedule.opens(), schedule.closes()).anyMatch(time -> !(time instanceof TimeOfDay.Clock));
        if (needsSun && draft.rig().place().isEmpty()) {
            final String key = schedule.opens() instanceof TimeOfDay.Clock ? "closes" : "opens";
            findings.error(
                    "dusk-without-place",
                    draft.at("schedule", key),
                    Say.words(
                            "the schedule goes by the sun, and the rig does not say where it stands",
                            "dusk comes at another time in every place",
                            "add [place] with latitude, longitude and time-zone to rig.toml, or write a time such as"
                                    + " \"18:30\""));
        }
    }

    private static void never(final Draft draft, final Findings findings) {
        findings.error(
                "never-open",
                draft.at("schedule", "closes"),
                Say.words(
                        "the schedule closes when it opens",
                        "nobody knows whether that means never or always",
                        "write a time after the opening"));
    }

    private static void night(final Draft draft, final Schedule schedule, final Findings findings) {
        if (schedule.opens() instanceof TimeOfDay.Clock opens
                && schedule.closes() instanceof TimeOfDay.Clock closes
                && closes.time().isBefore(opens.time())) {
            final Duration open = DAY.minus(Duration.between(closes.time(), opens.time()));
            if (open.compareTo(LONG_NIGHT) > 0) {
                findings.warning(
                        "long-night",
                        draft.at("schedule", "closes"),
                        Say.words(
                                "the schedule stays open from " + opens.time() + " until " + closes.time()
                                        + " of the next day",
                                "more than 14 h past midnight are more often a slip than a plan",
                                "look whether opens and closes were exchanged"));
            }
        }
    }
}
