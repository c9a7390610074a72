package slackwater.model.file;

import java.time.DayOfWeek;
import java.time.Duration;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slackwater.model.Schedule;
import slackwater.model.Schedule.TimeOfDay;
import slackwater.model.finding.Findings.Words;

/** Reads {@code [schedule]}. */
final class ScheduleTable {
    private static final Map<String, DayOfWeek> DAYS = days();

    private final TableReader reader;
    private final boolean hasPlace;

    private ScheduleTable(final TableReader reader, final boolean hasPlace) {
        this.reader = reader;
        this.hasPlace = hasPlace;
    }

    static Optional<Schedule> read(final TableReader reader, final boolean hasPlace) {
        return new ScheduleTable(reader, hasPlace).schedule();
    }

    private Optional<Schedule> schedule() {
        final Optional<TimeOfDay> opens = time("opens");
        final Optional<TimeOfDay> closes = time("closes");
        final Set<DayOfWeek> days = reader.has("days") ? days(reader.texts("days")) : EnumSet.allOf(DayOfWeek.class);
        final Duration warmUp = reader.duration("warm-up").orElse(Duration.ZERO);
        reader.finish();
        return opens.flatMap(open -> closes.map(close -> new Schedule(open, close, days, warmUp)));
    }

    private Optional<TimeOfDay> time(final String key) {
        reader.require(key, "a schedule is a window with two ends", "add " + key + " = \"18:30\"");
        final Optional<TimeOfDay> time = reader.parsed(key, Texts.TIME_OF_DAY, Texts::timeOfDay);
        if (time.isPresent() && !(time.get() instanceof TimeOfDay.Clock) && !hasPlace) {
            reader.error(
                    "no-place",
                    key,
                    new Words(
                            "\"" + key + "\" goes by the sun, but the rig does not say where it stands",
                            "the sun sets at another time elsewhere",
                            "add [place] with latitude, longitude and time-zone to rig.toml"));
        }
        return time;
    }

    private Set<DayOfWeek> days(final List<String> words) {
        final Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        for (int i = 0; i < words.size(); i++) {
            final DayOfWeek day = DAYS.get(words.get(i));
            if (day == null) {
                reader.unknownWord("days[" + i + "]", words.get(i), List.copyOf(DAYS.keySet()));
            } else {
                days.add(day);
            }
        }
        if (words.isEmpty()) {
            reader.wrongType("days", "a list of at least one day, such as [\"fri\", \"sat\"]");
        }
        return days;
    }

    private static Map<String, DayOfWeek> days() {
        final Map<String, DayOfWeek> days = new LinkedHashMap<>();
        final List<String> words = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");
        for (int i = 0; i < words.size(); i++) {
            days.put(words.get(i), DayOfWeek.of(i + 1));
        }
        return days;
    }
}
