package slackwater.simulator.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** WCAG 2.1: relative luminance and contrast ratio as its glossary defines them. */
class PageColoursTest {
    private static double luminance(final String colour) {
        final int rgb = Integer.parseInt(colour.substring(1), 16);
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8 & 0xff) + 0.0722 * linear(rgb & 0xff);
    }

    private static double linear(final int channel) {
        final double value = channel / 255.0;
        return value <= 0.03928 ? value / 12.92 : StrictMath.pow((value + 0.055) / 1.055, 2.4);
    }

    private static double contrast(final String one, final String other) {
        final double lighter = Math.max(luminance(one), luminance(other));
        final double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    @Test
    void blackOnWhiteHasTheContrastOf21ThatTheGlossaryGives() {
        assertThat(contrast("#000000", "#ffffff")).isCloseTo(21, Offset.offset(1e-9));
    }

    @Test
    void everyWordIsReadableOnTheGroundAndEveryShapeSeenInLightAndDark() {
        for (final PageColours colours : List.of(PageColours.LIGHT, PageColours.DARK)) {
            for (final String words :
                    List.of(colours.text(), colours.quiet(), colours.violation(), colours.refusal())) {
                assertThat(contrast(words, colours.ground())).as(words).isGreaterThanOrEqualTo(4.5);
            }
            assertThat(contrast(colours.shape(), colours.ground())).isGreaterThanOrEqualTo(3);
        }
    }
}
