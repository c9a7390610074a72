package slackwater.simulator.report;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** A made-up evening of two banks with as many pulses as a test asks for. */
final class SyntheticEvening {
    static final long S_NS = 1_000_000_000L;
    static final long H_NS = 3600 * S_NS;
    private static final List<String> MODES =
            List.of("stopped", "faulted", "locked out", "bench", "warning", "armed", "resting");
    private static final List<String> INPUTS = List.of(
            "path-east",
            "path-west",
            "beam-upper",
            "beam-lower",
            "clam-curtain",
            "pressure-ok",
            "stop-loop",
            "mist-ready");
    private static final List<String> PINS = List.of(
            "clam-lid", "jet-low", "lightning", "mist-pump", "mist-heater", "spray-tray", "surf-fan", "gull", "horn");
    private static final List<String> CUES = List.of("greet", "storm", "farewell", "gull-drops");

    private SyntheticEvening() {}

    static StartedAt atSeven() {
        final ZoneId zone = ZoneId.of("Europe/London");
        return StartedAt.of(
                LocalDateTime.of(2026, 10, 31, 18, 50, 0).atZone(zone).toInstant(), zone);
    }

    static Evening calm() {
        return evening(List.of());
    }

    static Evening bad() {
        final List<Evening.Violation> violations = List.of(
                new Evening.Violation("longest-on", "north-clam-lid", 3130 * S_NS, "energised 2.01 s, limit 2 s"),
                new Evening.Violation("longest-on", "north-clam-lid", 3150 * S_NS, "energised 2.3 s, limit 2 s"),
                new Evening.Violation("flash limit", "south-lightning", 9000 * S_NS, "4 flashes in 1 s, limit 3"));
        return evening(violations);
    }

    private static Evening evening(final List<Evening.Violation> violations) {
        final Map<String, Long> cues = new LinkedHashMap<>();
        final Map<String, Long> actuations = new LinkedHashMap<>();
        final List<Evening.LongestOn> longest = new ArrayList<>();
        for (final String bank : List.of("north", "south")) {
            CUES.forEach(cue -> cues.put(bank + "-" + cue, 20L + cue.length() * 7L));
            PINS.forEach(pin -> actuations.put(bank + "-" + pin, pin.length() * 131L));
            PINS.forEach(pin -> longest.add(new Evening.LongestOn(
                    bank + "-" + pin, pin.length() * S_NS / 4, pin.equals("surf-fan") ? 0 : 3 * S_NS)));
        }
        final Map<String, Long> refusals = new LinkedHashMap<>();
        refusals.put("clear of the clam", 41L);
        refusals.put("never used", 0L);
        refusals.put("enough air", 1210L);
        return new Evening(
                new Evening.Run("Sea cave walk", "evening", 42, atSeven(), 4 * H_NS, 1_432_000_000L, 2_880_000),
                new Evening.Visits(246, 119, 97, 0, 3),
                List.of(),
                new Evening.Tallies(cues, Map.of("hold-off", 22L), refusals, actuations, longest, 0.873),
                violations,
                "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08");
    }

    /** Pins of both banks, 18 in all, get so many pulses each. */
    static Lanes lanes(final int pulses) {
        final List<Lane> lanes = new ArrayList<>();
        for (final String bank : List.of("north", "south")) {
            lanes.add(Lane.words(bank, bank, Lane.Sort.MODE, MODES));
            CUES.forEach(name -> lanes.add(Lane.bit(bank, bank + "-" + name, Lane.Sort.CUE)));
            INPUTS.forEach(name -> lanes.add(Lane.bit(bank, bank + "-" + name, Lane.Sort.INPUT)));
            PINS.forEach(name -> lanes.add(Lane.bit(bank, bank + "-" + name, Lane.Sort.PIN)));
            lanes.add(Lane.gauge(bank, bank + "-pressure", "bar"));
        }
        final List<Happening> happenings = new ArrayList<>();
        final SplittableRandom random = new SplittableRandom(7);
        for (int lane = 0; lane < lanes.size(); lane++) {
            happen(lane, lanes.get(lane), pulses, random.split(), happenings);
        }
        happenings.sort((left, right) -> Long.compare(left.atNs, right.atNs));
        final LaneRecorder recorder = new LaneRecorder(lanes);
        happenings.forEach(each -> record(recorder, lanes.get(each.lane), each));
        for (int refusal = 0; refusal < 60; refusal++) {
            recorder.refused(13, 4000 * S_NS + refusal * 20L * S_NS, "north-clam-lid may not: \"clear\" refuses");
        }
        recorder.refused(13, 9000 * S_NS, "north-clam-lid may not: \"clear\" refuses");
        return recorder.until(4 * H_NS);
    }

    private static void happen(
            final int index,
            final Lane lane,
            final int pulses,
            final SplittableRandom random,
            final List<Happening> into) {
        switch (lane.value()) {
            case WORD -> {
                into.add(new Happening(0, index, 6));
                into.add(new Happening(605 * S_NS, index, 4));
                into.add(new Happening(610 * S_NS, index, 5));
                into.add(new Happening(9001 * S_NS, index, 0));
                into.add(new Happening(9600 * S_NS, index, 5));
                into.add(new Happening(14_000 * S_NS, index, 6));
            }
            case NUMBER -> {
                for (int second = 0; second < 14_400; second += 5) {
                    final double dip = second % 900 < 200 ? (second % 900) / 200.0 : 1;
                    into.add(new Happening(second * S_NS, index, 6 + 2 * dip));
                }
            }
            case BIT -> pulses(index, lane.sort() == Lane.Sort.PIN ? pulses : 60, random, into);
        }
    }

    private static void pulses(
            final int index, final int pulses, final SplittableRandom random, final List<Happening> into) {
        into.add(new Happening(0, index, 0));
        final long apartNs = (4 * H_NS - 1500 * S_NS) / (pulses + 1);
        for (int pulse = 1; pulse <= pulses; pulse++) {
            final long atNs = 620 * S_NS + pulse * apartNs + random.nextLong(apartNs / 2);
            into.add(new Happening(atNs, index, 1));
            into.add(new Happening(atNs + Math.min(2 * S_NS, apartNs / 3), index, 0));
        }
    }

    private static void record(final LaneRecorder recorder, final Lane lane, final Happening each) {
        switch (lane.value()) {
            case BIT -> recorder.bit(each.lane, each.atNs, each.value != 0);
            case WORD -> recorder.word(each.lane, each.atNs, (int) each.value);
            case NUMBER -> recorder.number(each.lane, each.atNs, each.value);
        }
    }

    private record Happening(long atNs, int lane, double value) {}
}
