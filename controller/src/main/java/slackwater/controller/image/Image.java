package slackwater.controller.image;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slackwater.model.Mode;
import slackwater.model.event.Event;

/**
 * What the steps of one scan pass to each other; made anew by each scan, except {@link #energised}, which is what the pins
 * were last told. Inputs, outputs and zones are counted in the order of the rig, those of this controller only.
 */
public final class Image {
    private static final int EVENTS_MAX = 256;

    /** Proven active: has been active without a break for its time. */
    public final boolean[] provenActive;
    /** Proven inactive: has been inactive without a break for its time. Unknown or warming up is neither (S7). */
    public final boolean[] provenInactive;
    /** Became proven active in this scan, or pulsed between two samples where it needs no proving. */
    public final boolean[] rose;
    /** Became proven inactive in this scan. */
    public final boolean[] fell;
    /** Was active at some moment since the last sample. */
    public final boolean[] sawActive;
    /** Was inactive at some moment since the last sample. */
    public final boolean[] sawInactive;
    /** Has been both proven active and proven inactive since boot. */
    public final boolean[] exercised;

    /** What each output's surroundings allow. */
    public final Mode[] mode;
    /** What each zone as a whole allows. */
    public final Mode[] zoneMode;
    /** Whether cues of the zone may begin: armed, and the air has settled. */
    public final boolean[] mayGreet;

    /** Wished by a cue or by the rig itself. */
    public final boolean[] demand;
    /** A step began to wish it in this scan, which renews a used-up demand (S11). */
    public final boolean[] renewed;
    /** Demanded, and nothing refuses. */
    public final boolean[] permitted;
    /** What the pins are told. */
    public final boolean[] energised;
    /** The scan's outcome so far: for outputs not yet judged, what they are now. */
    public final boolean[] next;

    /** Whether the watchdogs agree that a fault may be cleared now: outputs at rest, hold-up relay seen open (S2). */
    public boolean mayResetFault;
    /** Whether the hold-up relay's drop test was passed, or there is none (S6). */
    public boolean hasPassedDropTest;

    private final List<Event> events = new ArrayList<>();
    private long eventsLost;

    public Image(final int inputCount, final int outputCount, final int zoneCount) {
        provenActive = new boolean[inputCount];
        provenInactive = new boolean[inputCount];
        rose = new boolean[inputCount];
        fell = new boolean[inputCount];
        sawActive = new boolean[inputCount];
        sawInactive = new boolean[inputCount];
        exercised = new boolean[inputCount];
        mode = new Mode[outputCount];
        Arrays.fill(mode, Mode.RESTING);
        zoneMode = new Mode[zoneCount];
        Arrays.fill(zoneMode, Mode.RESTING);
        mayGreet = new boolean[zoneCount];
        demand = new boolean[outputCount];
        renewed = new boolean[outputCount];
        permitted = new boolean[outputCount];
        energised = new boolean[outputCount];
        next = new boolean[outputCount];
    }

    /** An image that goes on from here by itself. */
    public Image copy() {
        final Image copy = new Image(provenActive.length, energised.length, zoneMode.length);
        copyInto(provenActive, copy.provenActive);
        copyInto(provenInactive, copy.provenInactive);
        copyInto(rose, copy.rose);
        copyInto(fell, copy.fell);
        copyInto(sawActive, copy.sawActive);
        copyInto(sawInactive, copy.sawInactive);
        copyInto(exercised, copy.exercised);
        copyInto(mayGreet, copy.mayGreet);
        copyInto(demand, copy.demand);
        copyInto(renewed, copy.renewed);
        copyInto(permitted, copy.permitted);
        copyInto(energised, copy.energised);
        copyInto(next, copy.next);
        copy.mayResetFault = mayResetFault;
        copy.hasPassedDropTest = hasPassedDropTest;
        System.arraycopy(mode, 0, copy.mode, 0, mode.length);
        System.arraycopy(zoneMode, 0, copy.zoneMode, 0, zoneMode.length);
        return copy;
    }

    /** Begins a scan: nobody has wished or permitted anything yet. */
    public void begin() {
        Arrays.fill(demand, false);
        Arrays.fill(renewed, false);
        Arrays.fill(permitted, false);
        System.arraycopy(energised, 0, next, 0, energised.length);
    }

    /** Notes something for the record; beyond {@value #EVENTS_MAX} a scan they are only counted. */
    public void note(final Event event) {
        if (events.size() < EVENTS_MAX) {
            events.add(event);
        } else {
            eventsLost++;
        }
    }

    /** This scan's notes so far. */
    public List<Event> events() {
        return events;
    }

    /** Takes the count of notes that found no room. */
    public long takeEventsLost() {
        final long lost = eventsLost;
        eventsLost = 0;
        return lost;
    }

    private static void copyInto(final boolean[] from, final boolean[] to) {
        System.arraycopy(from, 0, to, 0, from.length);
    }
}
