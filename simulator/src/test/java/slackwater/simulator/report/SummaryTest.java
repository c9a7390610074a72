package slackwater.simulator.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SummaryTest {
    private static final long S_NS = 1_000_000_000L;

    private static Evening small(final StartedAt startedAt, final List<Evening.Violation> violations) {
        final Map<String, Long> cues = new LinkedHashMap<>();
        cues.put("farewell", 3L);
        cues.put("greet", 41L);
        cues.put("storm", 0L);
        return new Evening(
                new Evening.Run("First", "first", 7, startedAt, 3600 * S_NS, 812_000_000L, 360_000),
                new Evening.Visits(61, 30, 24, 1, 0),
                List.of(new Evening.SeenAhead("path", "lid", 61, 58, 2_300_000_000L, 900_000_000L)),
                new Evening.Tallies(
                        cues,
                        Map.of("hold-off", 6L),
                        Map.of(),
                        Map.of("lid", 44L),
                        List.of(
                                new Evening.LongestOn("lamp", 600 * S_NS, 0),
                                new Evening.LongestOn("lid", 1_500_000_000L, 2 * S_NS)),
                        0.9817),
                violations,
                "00ff");
    }

    @Test
    void aQuietEveningReadsLikeThis() {
        assertThat(Summary.text(small(StartedAt.UNKNOWN, List.of()))).isEqualTo("""
                        First, show first: 1 h 0 min, seed 7 (360 000 scans in 812 ms)

                        visitors             61 in 30 groups
                        groups greeted       24 (80.0 % of the groups)
                        near misses          1: somebody stood where a prop moved
                        startled by mistake  0
                        all at rest          98.2 % of the evening
                        seen ahead           path sees 58 of 61 before lid, by 2.3 s (median; least 900 ms)

                        cues started         44
                                          41  greet
                                           3  farewell
                        greetings lost       6
                                           6  hold-off
                        refused, by rule     none
                        longest on           nearest to its limit first
                                       1.5 s  lid, limit 2 s
                                      10 min  lamp, no limit
                        violations           none: every rule held
                        digest               00ff
                        """);
    }

    @Test
    void momentsAreLocalClockTimesWhereTheStartIsKnown() {
        final Evening.Violation late = new Evening.Violation("longest-on", "lid", 3130 * S_NS, "2.01 s, limit 2 s");
        assertThat(Summary.text(small(SyntheticEvening.atSeven(), List.of(late))))
                .startsWith("First, show first: 1 h 0 min from 2026-10-31 18:50:00, seed 7")
                .contains("violations           1\n  ! 19:42:10  lid: longest-on, 2.01 s, limit 2 s\n");
        assertThat(Summary.text(small(StartedAt.UNKNOWN, List.of(late)))).contains("  ! 0:52:10.000  lid");
    }

    @Test
    void theLongestSummaryHasFortyLines() {
        final Map<String, Long> many = new LinkedHashMap<>();
        final List<Evening.LongestOn> outputs = new ArrayList<>();
        for (int each = 0; each < 30; each++) {
            many.put("name-" + each, 1L + each);
            outputs.add(new Evening.LongestOn("output-" + each, S_NS + each, 2 * S_NS));
        }
        final Evening calm = small(StartedAt.UNKNOWN, List.of());
        final Evening.Violation bad = new Evening.Violation("rule", "lid", 0, "detail");
        final String text = Summary.text(new Evening(
                calm.run(),
                calm.visits(),
                Collections.nCopies(20, new Evening.SeenAhead("path", "lid", 1, 1, S_NS, S_NS)),
                new Evening.Tallies(many, many, many, many, outputs, 0),
                Collections.nCopies(300, bad),
                "00"));
        assertThat(text.lines()).hasSizeLessThanOrEqualTo(40);
        assertThat(text).contains("in 26 more").contains("  ! and 296 more");
    }

    @Test
    void anEveningInWhichNobodyCameDividesByNothing() {
        final Evening calm = small(StartedAt.UNKNOWN, List.of());
        final Evening empty =
                new Evening(calm.run(), new Evening.Visits(0, 0, 0, 0, 0), List.of(), calm.tallies(), List.of(), "00");
        assertThat(Summary.text(empty))
                .contains("groups greeted       0\n")
                .contains("visitors             0 in 0 groups");
    }

    @Test
    void theObjectForScriptsIsThisAndNothingElse() {
        final Evening.Violation late = new Evening.Violation("longest-on", "lid", 3_130_500_000_000L, "say \"2 s\"");
        assertThat(SummaryJson.text(small(StartedAt.UNKNOWN, List.of(late))))
                .isEqualTo("{\"rig\":\"First\",\"show\":\"first\",\"seed\":7,\"virtualSeconds\":3600.0,"
                        + "\"wallSeconds\":0.812,\"scans\":360000,\"visitors\":61,\"groups\":30,\"groupsGreeted\":24,"
                        + "\"nearMisses\":1,\"startledByMistake\":0,"
                        + "\"seenAhead\":[{\"input\":\"path\",\"output\":\"lid\",\"passing\":61,\"seen\":58,"
                        + "\"medianSeconds\":2.3,\"leastSeconds\":0.9}],"
                        + "\"cuesStarted\":{\"farewell\":3,\"greet\":41,\"storm\":0},\"startsLost\":{\"hold-off\":6},"
                        + "\"refusals\":{},\"actuations\":{\"lid\":44},"
                        + "\"longestOn\":{\"lamp\":{\"seconds\":600.0},\"lid\":{\"seconds\":1.5,\"limitSeconds\":2.0}},"
                        + "\"restShare\":0.9817,\"violations\":[{\"rule\":\"longest-on\",\"output\":\"lid\","
                        + "\"at\":3130.5,\"detail\":\"say \\\"2 s\\\"\"}],\"digest\":\"00ff\"}\n");
    }

    @Test
    void theObjectForScriptsIsOneWellFormedObject() throws IOException {
        int depth = 0;
        int objects = 0;
        try (JsonParser json = new JsonFactory().createParser(SummaryJson.text(SyntheticEvening.bad()))) {
            for (JsonToken token = json.nextToken(); token != null; token = json.nextToken()) {
                objects += depth == 0 ? 1 : 0;
                depth += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
            }
        }
        assertThat(objects).isEqualTo(1);
        assertThat(depth).isZero();
    }
}
