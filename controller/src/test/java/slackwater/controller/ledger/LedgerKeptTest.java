package slackwater.controller.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slackwater.controller.command.Request;
import slackwater.controller.latch.Kept;
import slackwater.controller.latch.LatchStore;
import slackwater.controller.mode.TestYard;
import slackwater.controller.mode.Wall;
import slackwater.controller.pins.VirtualPins;
import slackwater.controller.scan.Ports;
import slackwater.controller.scan.Scan;
import slackwater.controller.watchdog.BoardWatchdog;
import slackwater.controller.watchdog.SampleAge;

/** The ledger in a whole scan: over a restart, with stops, by commands, and in a fork. 10 ml of fluid last 51.5 s. */
class LedgerKeptTest {
    private static final String RIG = """
            [controller.quay]
            board = "pi-4"
            [zone.quay]
            [arming]
            warning = "0 s"
            [input.stop-loop]
            kind = "stop-loop"
            [input.reset]
            kind = "button"
            use = "reset"
            [input.arm-key]
            kind = "key"
            use = "arm"
            [input.refill]
            kind = "button"
            use = "refill"
            of = "fog"
            [input.ask]
            kind = "button"
            [output.fog]
            kind = "pump"
            flow = "12 g/min"
            holds = "10 ml"
            longest-on = "5 s"
            [output.glow]
            kind = "lamp"
            """;
    private static final String SHOW = """
            [cue.fog]
            starts = "ask"
            steps = [ { energise = "glow", for = "200 s" }, { at = "0 s", energise = "fog", for = "5 s" } ]
            """;

    /** Remembers how often it was asked to keep, and breaks when it is told to. */
    private static final class Shelf implements LedgerStore {
        private final List<KeptLedger> kept = new ArrayList<>();
        private boolean isReadable = true;
        private boolean isBroken;

        @Override
        public Optional<KeptLedger> read() {
            return isReadable
                    ? Optional.of(kept.isEmpty() ? KeptLedger.NOTHING : kept.get(kept.size() - 1))
                    : Optional.empty();
        }

        @Override
        public void keep(final KeptLedger next) {
            if (isBroken) {
                throw new IllegalStateException("no space left");
            }
            kept.add(next);
        }
    }

    private static TestYard armed(final TestYard yard) {
        yard.set("arm-key", false)
                .set("stop-loop", false)
                .scan(100)
                .set("stop-loop", true)
                .scan(500);
        return yard.press("reset", 100).set("arm-key", true).scan(100);
    }

    private static TestYard armed(final LedgerStore store) {
        return armed(TestYard.of(RIG, SHOW, store));
    }

    private static LedgerEntry fog(final TestYard yard) {
        return yard.scanner().ledger().get(0);
    }

    @Test
    void itIsKeptWhenThePumpComesToRestAndOnceAMinuteWhileALampGoesOn() {
        final Shelf shelf = new Shelf();
        final TestYard yard = armed(shelf).press("ask", 100);
        assertThat(yard.isEnergised("fog")).isTrue();
        assertThat(shelf.kept).isEmpty();
        yard.scan(5_000);
        assertThat(shelf.kept).hasSize(1);
        yard.scan(59_000);
        assertThat(shelf.kept).hasSize(1);
        yard.scan(2_000);
        assertThat(shelf.kept).hasSize(2);
        yard.scan(200_000);
        assertThat(shelf.kept).hasSize(5);
        assertThat(yard.isEnergised("glow")).isFalse();
        assertThat(shelf.kept.get(4).lines().get(1).onNs()).isEqualTo(200_000_000_000L);
        yard.scan(200_000);
        assertThat(shelf.kept).hasSize(5);
    }

    @Test
    void aScanThatChangesNothingWakesToKeepTheLedger() {
        final TestYard yard = armed(new Shelf()).press("ask", 100).scan(10_000);
        final long nowNs = yard.nowMs() * TestYard.MS;
        final long wakeNs = yard.scanner().once(nowNs, Wall.UNKNOWN);
        assertThat(yard.scanner().run().wakeNs()).isGreaterThan(nowNs + 100_000_000_000L);
        assertThat(wakeNs).isBetween(nowNs + 50_000_000_000L, nowNs + 60_000_000_000L);
    }

    @Test
    void aRestartForgetsNothing() {
        final TestYard yard = armed(new Shelf());
        yard.press("ask", 100).scan(10_000);
        yard.scanner().commandDesk().ask(Request.weighing("fog", 0.0015, "Maren", yard.seen()));
        yard.scan();
        final LedgerEntry before = fog(yard);
        assertThat(before.used()).isCloseTo(1.5, within(1e-6));
        assertThat(fog(yard.restart().scan())).isEqualTo(before);
        assertThat(fog(armed(yard).press("ask", 100).scan(10_000)).startsCount())
                .isEqualTo(2);
    }

    @Test
    void itWarnsOnceAFillAlsoOverARestart() {
        final KeptLedger nearlyEmpty = new KeptLedger(
                List.of(new KeptLedger.Line("fog", 9, 45_000_000_000L, 42_000_000_000L, 0, true, false)));
        final TestYard yard =
                TestYard.of(RIG, SHOW, LedgerStore.inMemory(nearlyEmpty)).scan(100);
        assertThat(yard.news()).contains("fog is running low: 1.9 g of 10 g left; none was used in the last hour");
        final TestYard told = armed(yard).press("ask", 100).scan(6_000);
        told.news();
        assertThat(told.restart().scan(1_000).news()).noneMatch(text -> text.contains("running low"));
    }

    @Test
    void aLedgerThatCannotBeReadRefusesUntilSomebodyFillsUp() {
        final Shelf shelf = new Shelf();
        shelf.isReadable = false;
        final TestYard yard = armed(shelf);
        assertThat(yard.news())
                .contains("fog is refused until it is filled up: the ledger could not be read, so nobody knows what it"
                        + " holds");
        assertThat(fog(yard).left()).isEmpty();
        yard.press("ask", 100);
        assertThat(yard.isEnergised("fog")).isFalse();
        assertThat(yard.isEnergised("glow")).isTrue();
        assertThat(yard.refusing("fog")).isEqualTo("runs-dry");
        assertThat(yard.scanner().whyNot("fog").get(0).observed()).isEqualTo("nobody has known what it holds");

        yard.scan(300_000);
        yard.press("refill", 100).press("ask", 100);
        assertThat(yard.isEnergised("fog")).isTrue();
    }

    @Test
    void whatNobodyKnowsStaysUnknownOverAnotherRestart() {
        final Shelf shelf = new Shelf();
        shelf.isReadable = false;
        final TestYard yard = armed(shelf).press("ask", 100);
        yard.scan(300_000);
        assertThat(shelf.kept).isNotEmpty();
        shelf.isReadable = true;
        assertThat(fog(yard.restart().scan()).left()).isEmpty();
        assertThat(yard.refusing("fog")).contains("runs-dry");
        yard.scan(100).press("refill", 100);
        assertThat(fog(yard.restart().scan()).left().orElseThrow()).isCloseTo(10.3, within(1e-9));
    }

    @Test
    void aWeighingOfWhatNobodyKnowsIsRefused() {
        final Shelf shelf = new Shelf();
        shelf.isReadable = false;
        final TestYard yard = armed(shelf);
        yard.news();
        yard.send(Request.weighing("fog", 0.002, "Maren", yard.seen())).scan();
        assertThat(yard.news())
                .containsExactly("weigh fog 2.0 g by Maren refused: nobody knows what fog has used; fill it up first"
                        + " and weigh later");
    }

    @Test
    void aKeptFactorThatNobodyCouldHaveWeighedCountsAsNone() {
        final KeptLedger odd =
                new KeptLedger(List.of(new KeptLedger.Line("fog", 1, 10, 1_000_000_000L, 249_999, true, false)));
        assertThat(fog(TestYard.of(RIG, SHOW, LedgerStore.inMemory(odd)).scan()).calibration())
                .isEqualTo(1);
        final KeptLedger quarter =
                new KeptLedger(List.of(new KeptLedger.Line("fog", 1, 10, 1_000_000_000L, 250_000, true, false)));
        assertThat(fog(TestYard.of(RIG, SHOW, LedgerStore.inMemory(quarter)).scan())
                        .calibration())
                .isEqualTo(0.25);
    }

    @Test
    void anOutputThatTheLedgerDoesNotKnowIsFullAndOneThatIsGoneIsForgotten() {
        final KeptLedger other = new KeptLedger(List.of(new KeptLedger.Line("old", 7, 7, 7, 0, true, false)));
        final TestYard yard =
                TestYard.of(RIG, SHOW, LedgerStore.inMemory(other)).scan();
        assertThat(yard.scanner().ledger()).extracting(LedgerEntry::output).containsExactly("fog", "glow");
        assertThat(fog(yard).left().orElseThrow()).isCloseTo(10.3, within(1e-9));
    }

    @Test
    void aStoreThatFailsIsToldOnceAndTriedAgain() {
        final Shelf shelf = new Shelf();
        shelf.isBroken = true;
        final TestYard yard = armed(shelf).press("ask", 100).scan(150_000);
        assertThat(yard.news().stream().filter(text -> text.contains("keeping the ledger")))
                .containsExactly(
                        "keeping the ledger over a restart refused: java.lang.IllegalStateException: no space left");
        shelf.isBroken = false;
        yard.scan(60_000);
        assertThat(shelf.kept).hasSize(1);
    }

    @Test
    void aStopInMidRunEndsTheCountAndARefillIsTakenWhileStopped() {
        final TestYard yard = armed(new Shelf()).press("ask", 100).scan(1_000);
        yard.set("stop-loop", false).scan(10_000);
        assertThat(yard.isEnergised("fog")).isFalse();
        final long onNs = fog(yard).onNs();
        assertThat(onNs).isBetween(1_000_000_000L, 1_300_000_000L);
        assertThat(fog(yard.scan(10_000)).onNs()).isEqualTo(onNs);
        yard.news();
        assertThat(yard.press("refill", 100).news())
                .containsExactly("fog refilled, told by refill; "
                        + String.format(java.util.Locale.ROOT, "%.1f g", onNs * 0.2e-9) + " had been used");
        assertThat(yard.refusing("fog")).isEqualTo("mode");
    }

    @Test
    void aWeighingIsARequestThatIsTakenOrRefusedInWords() {
        final TestYard yard = armed(new Shelf()).press("ask", 100).scan(10_000);
        yard.news();
        yard.send(Request.weighing("fog", 0.0012, "Ole", yard.seen())).scan();
        assertThat(yard.news())
                .containsExactly(
                        "fog calibrated by Ole: 1.2 g weighed, 1.0 g by the rig, a factor of 1.2000",
                        "weigh fog 1.2 g by Ole taken");
        yard.send(Request.weighing("fog", 0.1, "Ole", yard.seen())).scan();
        yard.send(Request.weighing("frog", 0.1, "Ole", yard.seen())).scan();
        yard.send(Request.weighing("fog", 0.0012, "Ole", new Request.Seen(7, 0)))
                .scan();
        assertThat(yard.news())
                .containsExactly(
                        "weigh fog 100.0 g by Ole refused: 100 g weighed, 1.0 g by the rig, a factor of 100.0000; only"
                                + " 0.25 to 4 is believed: weigh again, or correct the rig",
                        "weigh frog 100.0 g by Ole refused: no output here is called frog",
                        "weigh fog 1.2 g by Ole refused: it was meant for an earlier start of this controller; look again"
                                + " and ask again");
        assertThat(fog(yard).calibration()).isEqualTo(1.2);
    }

    @Test
    void aForkGoesOnWithTheLedgerAndByItself() {
        final TestYard yard = armed(new Shelf()).press("ask", 100).scan(1_000);
        final VirtualPins pins = new VirtualPins(new boolean[5], new boolean[2]);
        final Scan fork = yard.scanner()
                .fork(new Ports(
                        pins, LatchStore.inMemory(Kept.NOTHING), event -> true, BoardWatchdog.NONE, SampleAge.NONE));
        assertThat(fork.ledger()).isEqualTo(yard.scanner().ledger());
        final List<LedgerEntry> before = yard.scanner().ledger();
        fork.once(yard.nowMs() * TestYard.MS, Wall.UNKNOWN);
        fork.once((yard.nowMs() + 500) * TestYard.MS, Wall.UNKNOWN);
        assertThat(fork.ledger()).isNotEqualTo(before);
        assertThat(yard.scanner().ledger()).isEqualTo(before);
    }
}
