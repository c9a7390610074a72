package slackwater.controller.disk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import slackwater.controller.latch.Kept;

/** The text of the latches: whole, or unreadable (S5). */
final class KeptTextTest {
    private static final Kept KEPT = new Kept(
            List.of("stop", "trip tray-dry"),
            new TreeMap<>(Map.of("zone north", List.of("Maren", "Ole"), "output lid", List.of("Zoë\t\\n\nsum"))),
            List.of("gull"),
            20_000);

    @Test
    void whatIsWrittenIsRead() {
        assertThat(KeptText.read(KeptText.write(KEPT))).contains(KEPT);
        assertThat(KeptText.read(KeptText.write(Kept.NOTHING))).contains(Kept.NOTHING);
    }

    @Test
    void aTextCutOffAtAnyByteIsUnreadable() {
        final byte[] whole = KeptText.write(KEPT);
        for (int length = 0; length < whole.length; length++) {
            assertThat(KeptText.read(Arrays.copyOf(whole, length)))
                    .as("the first %d of %d bytes", length, whole.length)
                    .isEmpty();
        }
    }

    @Test
    void aTextWithAnyBitTurnedIsUnreadable() {
        final byte[] whole = KeptText.write(KEPT);
        for (int at = 0; at < whole.length * Byte.SIZE; at++) {
            final byte[] torn = whole.clone();
            torn[at / Byte.SIZE] ^= (byte) (1 << at % Byte.SIZE);
            assertThat(KeptText.read(torn)).as("bit %d", at).isEmpty();
        }
    }

    @Test
    void zerosWhereTheNewBytesShouldBeAreUnreadable() {
        final byte[] whole = KeptText.write(KEPT);
        for (int from = 0; from < whole.length; from++) {
            final byte[] torn = whole.clone();
            Arrays.fill(torn, from, torn.length, (byte) 0);
            assertThat(KeptText.read(torn)).as("zeros from byte %d", from).isEmpty();
        }
    }

    @Test
    void aPersonCanReadIt() {
        final Kept kept = new Kept(List.of("stop"), new TreeMap<>(Map.of("zone a", List.of("Ole"))), List.of(), -1);
        assertThat(new String(KeptText.write(kept), StandardCharsets.UTF_8))
                .startsWith("slackwater latches 1\nlatched\tstop\nlockout\tzone a\tOle\nopened-day\t-1\nsum\t");
    }
}
