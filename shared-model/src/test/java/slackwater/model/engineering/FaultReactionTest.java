package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slackwater.model.engineering.DiagnosticCoverage.Monitoring;

/** Handbook 6.8 (IEC 61508-2 Table A.10; case 6 from memory). */
class FaultReactionTest {
    private static final Map<String, Supplier<String>> SAID = new LinkedHashMap<>();

    static {
        SAID.put("6.8.1", () -> lower(Monitoring.WATCHDOG.atMost()));
        SAID.put("6.8.2", () -> lower(Monitoring.WINDOWED_WATCHDOG.atMost()));
        SAID.put("6.8.3", () -> lower(Monitoring.PROGRAM_ORDER.atMost()) + " (depends on quality)");
        SAID.put("6.8.4", () -> lower(Monitoring.ORDER_AND_TIME.atMost()));
        SAID.put(
                "6.8.5",
                () -> Stream.of(DiagnosticCoverage.LOW, DiagnosticCoverage.MEDIUM, DiagnosticCoverage.HIGH)
                        .map(coverage -> CheckWords.plain(100 * coverage.fromShare()))
                        .collect(Collectors.joining(" / ")));
        SAID.put("6.8.6", () -> verdict(new FaultReaction(2.0, 0.3, 3.0)));
    }

    private static String lower(final DiagnosticCoverage coverage) {
        return coverage.name().toLowerCase(Locale.ROOT);
    }

    private static String verdict(final FaultReaction reaction) {
        final String margin = String.format(Locale.ROOT, "%.1f", reaction.marginS());
        return (reaction.isInTime() ? "ok" : "too late") + ", margin " + margin + " s";
    }

    private static Stream<CheckValue> cases() {
        return CheckWords.of("6.8", SAID.keySet());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theAnswersAreTheHandbooks(final CheckValue value) {
        CheckWords.agrees(value, CheckWords.of(SAID, value));
    }

    @Test
    void anAnswerAtTheMomentOfHarmIsTooLate() {
        assertThat(new FaultReaction(2, 0.5, 2.5).isInTime()).isFalse();
        assertThat(new FaultReaction(2, 0.5, 2.5001).isInTime()).isTrue();
        assertThat(new FaultReaction(2, 1, 2.5).marginS()).isEqualTo(-0.5);
    }

    @Test
    void figuresOutsideTheirRangeAreNamed() {
        assertThatThrownBy(() -> new FaultReaction(-1, 0, 1)).hasMessage("foundInS=-1.0 is not 0 or more");
        assertThatThrownBy(() -> new FaultReaction(1, -1, 1)).hasMessage("answeredInS=-1.0 is not 0 or more");
        assertThatThrownBy(() -> new FaultReaction(1, 1, 0)).hasMessage("harmsInS=0.0 is not above 0");
    }
}
