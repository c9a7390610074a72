package slackwater.controller.latch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import slackwater.controller.command.Request.Wants;
import slackwater.controller.mode.TestRigs;
import slackwater.controller.mode.TestYard;
import slackwater.model.Mode;

/**
 * All orders of stop, fault, lockout, release, reset and arm, for a zone and for one of its outputs: armed only by a later
 * arm (S4). What is expected is told by the two small books at the end, which know nothing of the latches' code.
 */
class LatchOrdersTest {
    private static final String SHORT_WARNING = TestRigs.TWO_ZONES
            .replace("warning = \"5 s\"", "warning = \"50 ms\"")
            .replace("air-settles = \"3 s\"", "air-settles = \"0 s\"");
    private static final String PERSON = "Ole";

    private static TestYard first;

    /** What a person or the rig can do, in the order in which the trials begin. */
    enum Deed {
        STOP,
        FAULT,
        LOCK_OUT,
        RELEASE,
        RESET,
        ARM
    }

    @BeforeAll
    static void readTheRigOnce() {
        first = TestYard.of(SHORT_WARNING);
    }

    @Test
    void inAllOrdersOfTheSixAZoneIsArmedOnlyByALaterArm() {
        final List<List<Deed>> orders = permutations(List.of(Deed.values()));
        assertThat(orders).hasSize(720);

        orders.forEach(order -> assertFollows(order, true));
    }

    @Test
    void inAllOrdersOfTheSixAnOutputIsArmedOnlyByALaterArm() {
        permutations(List.of(Deed.values())).forEach(order -> assertFollows(order, false));
    }

    @Test
    void anyFourDeedsAfterAnArmFollowTheBooksToo() {
        final List<Deed> all = List.of(Deed.values());
        for (int code = 0; code < 6 * 6 * 6 * 6; code++) {
            final List<Deed> deeds = new ArrayList<>(List.of(Deed.ARM));
            for (int rest = code; deeds.size() < 5; rest /= 6) {
                deeds.add(all.get(rest % 6));
            }
            assertFollows(deeds, code % 2 == 0);
        }
    }

    private static void assertFollows(final List<Deed> deeds, final boolean isZone) {
        final TestYard yard = TestRigs.ready(first.another());
        final ZoneBook zone = new ZoneBook();
        final OutputBook output = new OutputBook();
        for (int i = 0; i < deeds.size(); i++) {
            doIt(yard, deeds.get(i), isZone);
            zone.note(deeds.get(i), isZone);
            output.note(deeds.get(i), isZone, zone);
            assertThat(yard.mode("front")).as("zone after %s", deeds.subList(0, i + 1)).isEqualTo(zone.mode());
            assertThat(yard.outputMode("lid"))
                    .as("lid after %s", deeds.subList(0, i + 1))
                    .isEqualTo(output.mode(zone));
            assertThat(yard.mode("back")).isEqualTo(zone.isStopped ? Mode.STOPPED : Mode.RESTING);
        }
    }

    private static void doIt(final TestYard yard, final Deed deed, final boolean isZone) {
        switch (deed) {
            case STOP -> {
                yard.scanner().commandDesk().stop();
                yard.scan();
            }
            case FAULT -> {
                fault(yard, isZone);
                yard.scan();
            }
            case LOCK_OUT -> {
                lockOut(yard, isZone);
                yard.scan();
            }
            case RELEASE -> {
                final Wants wants = isZone ? Wants.UNLOCK_ZONE : Wants.UNLOCK_OUTPUT;
                yard.send(wants, isZone ? "front" : "lid", PERSON, TestYard.secretOf(PERSON))
                        .scan();
            }
            case RESET -> yard.press("reset", 50);
            case ARM -> yard.ask(Wants.ARM, "front").scan(60);
        }
    }

    private static void fault(final TestYard yard, final boolean isZone) {
        final Latches latches = yard.plan().latches();
        if (isZone) {
            latches.faultZone(
                    yard.scanner().run(), yard.scanner().image(), yard.plan().places().zone("front"), "a test");
        } else {
            latches.faultOutput(
                    yard.scanner().run(), yard.scanner().image(), yard.plan().places().output("lid"), "a test");
        }
    }

    private static void lockOut(final TestYard yard, final boolean isZone) {
        if (isZone) {
            yard.scanner().commandDesk().lockOutZone("front", PERSON);
        } else {
            yard.scanner().commandDesk().lockOutOutput("lid", PERSON);
        }
    }

    private static List<List<Deed>> permutations(final List<Deed> of) {
        if (of.isEmpty()) {
            return List.of(List.of());
        }
        return of.stream()
                .flatMap(head -> {
                    final List<Deed> rest = new ArrayList<>(of);
                    rest.remove(head);
                    return permutations(rest).stream()
                            .map(tail -> Stream.concat(Stream.of(head), tail.stream())
                                    .toList());
                })
                .toList();
    }

    /** The zone as a person would keep book of it. */
    private static final class ZoneBook {
        private boolean isStopped;
        private boolean isFaulted;
        private boolean isLockedOut;
        private boolean isArmed;
        private boolean wasJustArmed;

        void note(final Deed deed, final boolean isZone) {
            wasJustArmed = false;
            switch (deed) {
                case STOP -> isStopped = true;
                case FAULT -> isFaulted |= isZone;
                case LOCK_OUT -> isLockedOut |= isZone;
                case RELEASE -> isLockedOut &= !isZone;
                case RESET -> {
                    isStopped = false;
                    isFaulted = false;
                }
                case ARM -> {
                    wasJustArmed = !isLatched() && !isArmed;
                    isArmed |= wasJustArmed;
                }
            }
            isArmed &= !isLatched();
        }

        private boolean isLatched() {
            return isStopped || isFaulted || isLockedOut;
        }

        Mode mode() {
            return isStopped
                    ? Mode.STOPPED
                    : isFaulted
                            ? Mode.FAULTED
                            : isLockedOut ? Mode.LOCKED_OUT : isArmed ? Mode.ARMED : Mode.RESTING;
        }
    }

    /** The output likewise: whatever was latched of its own, only an arm after its release makes it live. */
    private static final class OutputBook {
        private boolean isFaulted;
        private boolean isLockedOut;
        private boolean isLive = true;

        void note(final Deed deed, final boolean isZone, final ZoneBook zone) {
            final boolean wasLatched = isFaulted || isLockedOut;
            switch (deed) {
                case FAULT -> isFaulted |= !isZone;
                case LOCK_OUT -> isLockedOut |= !isZone;
                case RELEASE -> isLockedOut &= isZone;
                case RESET -> isFaulted = false;
                case STOP, ARM -> {}
            }
            final boolean isLatched = isFaulted || isLockedOut;
            isLive &= !isLatched;
            isLive |= zone.wasJustArmed && !wasLatched;
        }

        Mode mode(final ZoneBook zone) {
            if (zone.isStopped) {
                return Mode.STOPPED;
            }
            if (zone.isFaulted || isFaulted) {
                return Mode.FAULTED;
            }
            if (zone.isLockedOut || isLockedOut) {
                return Mode.LOCKED_OUT;
            }
            return zone.isArmed && isLive ? Mode.ARMED : Mode.RESTING;
        }
    }
}
