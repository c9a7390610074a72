package slackwater.model.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Handbook 3.7 (UL 248-14 and IEC 60127 from memory; the rule of thumb is common practice). */
class FuseTest {
    private static final Map<String, Supplier<String>> TEXTS = new LinkedHashMap<>();

    static {
        TEXTS.put("3.7.1", () -> CheckText.number(Fuse.UL.leastA(1.5)));
        TEXTS.put("3.7.2", () -> CheckText.number(Fuse.IEC.carries() * 100));
        TEXTS.put("3.7.3", () -> CheckText.range(Fuse.RULE_OF_THUMB));
    }

    static Stream<CheckValue> cases() {
        return CheckText.stated("3.7", TEXTS);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFigureIsTheHandbooks(final CheckValue value) {
        assertThat(Objects.requireNonNull(TEXTS.get(value.id()), value.id()).get())
                .isEqualTo(value.expected());
    }

    @Test
    void theNextUsualRatingIsTaken() {
        assertThat(Fuse.UL.choiceA(1.5, 10)).hasValue(2);
        assertThat(Fuse.UL.choiceA(1.51, 10)).hasValue(2.5);
        assertThat(Fuse.IEC.choiceA(1.6, 10)).hasValue(2);
        assertThat(Fuse.IEC.choiceA(1.61, 10)).hasValue(2.5);
    }

    @Test
    void aFuseThatWouldNotProtectTheWireIsNoChoice() {
        assertThat(Fuse.UL.choiceA(1.5, 2)).hasValue(2);
        assertThat(Fuse.UL.choiceA(1.5, 1.99)).isEmpty();
        assertThat(Fuse.UL.choiceA(15.1, 100)).isEmpty();
    }

    @Test
    void figuresThatNoCircuitHasAreNamed() {
        assertThatThrownBy(() -> Fuse.UL.leastA(-1)).hasMessage("continuousA=-1.0 is not 0 or more");
        assertThatThrownBy(() -> Fuse.IEC.choiceA(1, 0)).hasMessage("wireA=0.0 is not above 0");
    }
}
