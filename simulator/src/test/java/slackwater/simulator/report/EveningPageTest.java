package slackwater.simulator.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

class EveningPageTest {
    private static final Pattern SVG = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL);

    private static String page(final Evening evening, final Lanes lanes) throws IOException {
        final StringWriter out = new StringWriter();
        EveningPage.write(evening, lanes, out);
        return out.toString();
    }

    @Test
    void anEveningWithViolationsShowsThemAsSignAndWordAndIsLeftBesideTheTestsToBeLookedAt() throws IOException {
        final String page = page(SyntheticEvening.bad(), SyntheticEvening.lanes(120));
        Files.writeString(Path.of("target", "evening.html"), page);
        assertThat(page)
                .contains("3 violations: something happened that must not happen.")
                .contains("19:42:10")
                .contains("energised 2.01 s, limit 2 s")
                .contains(">violation ×2</text>")
                .contains(">refused ×60</text>")
                .contains("<path class=\"violation\"")
                .contains("with a violation");
    }

    @Test
    void aCalmEveningHasNoSignOfAnythingAbnormalBesideTheLegend() throws IOException {
        final LaneRecorder recorder = new LaneRecorder(List.of(Lane.bit("porch", "lid", Lane.Sort.PIN)));
        recorder.bit(0, 0, false);
        recorder.bit(0, 5 * SyntheticEvening.S_NS, true);
        final String page = page(SyntheticEvening.calm(), recorder.until(SyntheticEvening.H_NS));
        assertThat(page).contains("No rule was broken.").contains(">once</text>");
        assertThat(page.split("<path class=\"violation\"", -1)).hasSize(2);
        assertThat(page.split("<path class=\"refusal\"", -1)).hasSize(2);
    }

    @Test
    void fourHoursWithThirtySixThousandPulsesStayBelowTheLargestSize() throws IOException {
        final String page = page(SyntheticEvening.bad(), SyntheticEvening.lanes(2000));
        Files.writeString(Path.of("target", "evening-dense.html"), page);
        assertThat(page.getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(EveningPage.LARGEST_BYTES);
        assertThat(page).contains(">2 000 times</text>");
    }

    @Test
    void aDenserPageThanFitsIsDrawnMoreCoarsely() throws IOException {
        final Lanes lanes = manyLanes(300);
        final String page = page(SyntheticEvening.calm(), lanes);
        assertThat(page.getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(EveningPage.LARGEST_BYTES);
    }

    /** Each lane goes on every 40 s for 14 s: a pixel of four hours is 14.4 s, so that hardly a block merges. */
    private static Lanes manyLanes(final int count) {
        final LaneRecorder recorder = new LaneRecorder(IntStream.range(0, count)
                .mapToObj(lane -> Lane.bit("bank", "output-" + lane, Lane.Sort.PIN))
                .toList());
        for (long s = 0; s < 14_400; s += 40) {
            for (int lane = 0; lane < count; lane++) {
                recorder.bit(lane, s * SyntheticEvening.S_NS, true);
            }
            for (int lane = 0; lane < count; lane++) {
                recorder.bit(lane, (s + 14) * SyntheticEvening.S_NS, false);
            }
        }
        return recorder.until(4 * SyntheticEvening.H_NS);
    }

    @Test
    void aValveThatHangsThroughItsViolationIsDrawnInItsFiveMinutesThoughItDoesNotChangeThere() {
        final LaneRecorder recorder = new LaneRecorder(List.of(
                Lane.bit("north", "north-clam-lid", Lane.Sort.PIN), Lane.bit("north", "north-horn", Lane.Sort.PIN)));
        recorder.bit(0, 0, true);
        recorder.bit(1, 0, true);
        final Story story = new Story(SyntheticEvening.bad(), recorder.until(SyntheticEvening.H_NS));
        final long violatedAtNs = 3130 * SyntheticEvening.S_NS;
        assertThat(LanePicture.worthDrawing(story, new Axis(violatedAtNs - 1, violatedAtNs + 1, 0, 100)))
                .containsExactly(0);
    }

    @Test
    void theSameEveningGivesTheSameBytes() throws IOException {
        assertThat(page(SyntheticEvening.bad(), SyntheticEvening.lanes(50)))
                .isEqualTo(page(SyntheticEvening.bad(), SyntheticEvening.lanes(50)));
    }

    @Test
    void nothingIsFetchedFromElsewhereAndNoScriptRuns() throws IOException {
        assertThat(page(SyntheticEvening.bad(), SyntheticEvening.lanes(10)))
                .startsWith("<!DOCTYPE html>\n<html lang=\"en\">")
                .doesNotContain("http", "<script", "src=", "@import", "<link");
    }

    @Test
    void everyPictureIsWellFormedAndSaysWhatItShows() throws Exception {
        final Matcher pictures = SVG.matcher(page(SyntheticEvening.bad(), SyntheticEvening.lanes(120)));
        int labelled = 0;
        while (pictures.find()) {
            final Document picture = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(pictures.group().getBytes(StandardCharsets.UTF_8)));
            labelled += picture.getDocumentElement().getAttribute("aria-label").isEmpty() ? 0 : 1;
        }
        assertThat(labelled).isEqualTo(4);
    }

    @Test
    void namesThatLookLikeMarkupStayText() throws IOException {
        final Evening calm = SyntheticEvening.calm();
        final Evening evening = new Evening(
                new Evening.Run("<b>Cave</b>", "a&b", 1, StartedAt.UNKNOWN, SyntheticEvening.H_NS, 1, 1),
                calm.visits(),
                List.of(),
                new Evening.Tallies(Map.of("<i>", 1L), Map.of(), Map.of(), Map.of(), List.of(), 1),
                List.of(new Evening.Violation("<u>", "<s>", 0, "\"")),
                "00");
        final String page = page(evening, new LaneRecorder(List.of()).until(0));
        assertThat(page).doesNotContain("<b>", "<i>", "<u>", "<s>").contains("Nothing was recorded.");
    }
}
