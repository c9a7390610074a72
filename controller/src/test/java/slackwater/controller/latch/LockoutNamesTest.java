package slackwater.controller.latch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Everybody who locks something out has a place, and nobody's lock is lost when the places are taken (S3, S5). */
class LockoutNamesTest {
    private final LockoutNames names = new LockoutNames();

    @Test
    void theFirstSixtyThreePeopleHaveAPlaceOfTheirOwn() {
        final Set<Long> masks = new HashSet<>();
        for (int i = 0; i < 63; i++) {
            final String name = "person " + i;
            masks.add(names.maskOf(name));
            assertThat(names.isShared(name)).isFalse();
            assertThat(Long.bitCount(names.maskOf(name))).isOne();
            assertThat(names.namesOf(names.maskOf(name))).containsExactly(name);
        }
        assertThat(masks).hasSize(63).doesNotContain(1L << 63);
    }

    @Test
    void whoeverComesLaterSharesTheLastPlace() {
        IntStream.range(0, 63).forEach(i -> names.maskOf("person " + i));

        assertThat(names.isShared("late")).isTrue();
        assertThat(names.maskOf("late")).isEqualTo(1L << 63);
        assertThat(names.maskOf("later")).isEqualTo(1L << 63);
        assertThat(names.isShared("person 62")).isFalse();
        assertThat(names.namesOf(1L << 63 | 1)).isEqualTo(List.of("person 0", "others"));
    }

    @Test
    void justBeforeThePlacesAreTakenANewNameIsNotShared() {
        IntStream.range(0, 62).forEach(i -> names.maskOf("person " + i));

        assertThat(names.isShared("number 63")).isFalse();
        assertThat(names.maskOf("number 63")).isEqualTo(1L << 62);
        assertThat(names.isShared("number 64")).isTrue();
    }

    @Test
    void namesComeInTheOrderInWhichPeopleFirstCame() {
        final long both = names.maskOf("Ole") | names.maskOf("Maren");

        assertThat(names.namesOf(both)).containsExactly("Ole", "Maren");
        assertThat(names.namesOf(0)).isEmpty();
    }
}
