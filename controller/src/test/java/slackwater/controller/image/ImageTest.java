package slackwater.controller.image;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.model.Mode;
import slackwater.model.event.Event;

final class ImageTest {
    private static List<Field> shown() {
        return Arrays.stream(Image.class.getFields())
                .filter(field -> !Modifier.isStatic(field.getModifiers()))
                .toList();
    }

    /** Every field that there is, so that one added later and forgotten in the copy shows. */
    @Test
    void a_copy_has_every_field_and_shares_none() throws IllegalAccessException {
        final Image image = new Image(2, 3, 4);
        for (final Field field : shown()) {
            fill(image, field);
        }
        final Image copy = image.copy();
        assertThat(shown()).hasSizeGreaterThanOrEqualTo(17);
        for (final Field field : shown()) {
            assertThat(field.get(copy)).as(field.getName()).isEqualTo(field.get(image));
            if (field.getType().isArray()) {
                assertThat(field.get(copy)).as(field.getName()).isNotSameAs(field.get(image));
            }
        }
    }

    private static void fill(final Image image, final Field field) throws IllegalAccessException {
        if (field.getType() == boolean.class) {
            field.setBoolean(image, true);
            return;
        }
        final Object array = field.get(image);
        for (int i = 0; i < Array.getLength(array); i++) {
            Array.set(array, i, field.getType() == Mode[].class ? Mode.ARMED : (Object) true);
        }
    }

    @Test
    void a_scan_begins_with_no_wishes_no_permissions_and_outputs_as_they_are() {
        final Image image = new Image(0, 2, 0);
        Arrays.fill(image.demand, true);
        Arrays.fill(image.renewed, true);
        Arrays.fill(image.permitted, true);
        image.energised[1] = true;
        image.next[0] = true;
        image.begin();
        assertThat(image.demand).containsOnly(false);
        assertThat(image.renewed).containsOnly(false);
        assertThat(image.permitted).containsOnly(false);
        assertThat(image.energised).containsExactly(false, true);
        assertThat(image.next).containsExactly(false, true);
    }

    @Test
    void everything_rests_to_begin_with() {
        final Image image = new Image(1, 1, 1);
        assertThat(image.mode).containsOnly(Mode.RESTING);
        assertThat(image.zoneMode).containsOnly(Mode.RESTING);
        assertThat(image.energised).containsOnly(false);
        assertThat(image.provenActive).containsOnly(false);
        assertThat(image.provenInactive).containsOnly(false);
    }

    @Test
    void notes_beyond_256_a_scan_are_counted_and_the_count_is_taken_once() {
        final Image image = new Image(0, 0, 0);
        for (int i = 0; i < 258; i++) {
            image.note(new Event.Dropped(i, 1));
        }
        assertThat(image.events()).hasSize(256);
        assertThat(image.takeEventsLost()).isEqualTo(2);
        assertThat(image.takeEventsLost()).isZero();
    }
}
