package slackwater.controller.command;

import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicLongArray;
import org.jspecify.annotations.Nullable;
import slackwater.controller.image.Places;
import slackwater.controller.latch.LockoutNames;

/**
 * The way in for commands. Stop, stand-down and lockout set a slot of their own each: no queue, no expiry, no order, so that
 * no amount of junk delays them (S3, S22). Everything else goes through a bounded queue; what finds it full is refused and
 * counted. Callable from any thread; the scan takes without waiting.
 */
public final class Commands {
    /** Requests that may wait for a scan. */
    public static final int QUEUE_MAX = 64;

    private final Places places;
    private final LockoutNames names;
    private final AtomicInteger stop = new AtomicInteger();
    private final AtomicLong standDown = new AtomicLong();
    private final AtomicInteger linkLost = new AtomicInteger();
    private final AtomicLongArray zoneLockout;
    private final AtomicLongArray outputLockout;
    private final AtomicInteger lockoutNews = new AtomicInteger();
    private final Queue<Request> requests = new ConcurrentLinkedQueue<>();
    private final AtomicInteger waiting = new AtomicInteger();
    private final AtomicLong refused = new AtomicLong();

    public Commands(final Places places, final LockoutNames names) {
        this.places = places;
        this.names = names;
        zoneLockout = new AtomicLongArray(places.zones().size());
        outputLockout = new AtomicLongArray(places.outputs().size());
    }

    /** Stops the rig as far as this controller reaches. A convenience: the hard-wired stop is the stop. */
    public void stop() {
        stop.set(1);
    }

    /** Stands a zone down. */
    public void standDown(final String zone) {
        final long bit = 1L << places.zone(zone);
        standDown.accumulateAndGet(bit, (now, add) -> now | add);
    }

    /** Locks a zone out in somebody's name. */
    public void lockOutZone(final String zone, final String person) {
        add(zoneLockout, places.zone(zone), person);
    }

    /** Locks an output out in somebody's name. */
    public void lockOutOutput(final String output, final String person) {
        add(outputLockout, places.output(output), person);
    }

    /** Tells that the network is gone: zones that do not go on alone rest (S24). */
    public void linkLost() {
        linkLost.set(1);
    }

    /** Asks; false when too many requests wait, and then the asker must be told. */
    public boolean ask(final Request request) {
        if (waiting.incrementAndGet() > QUEUE_MAX) {
            waiting.decrementAndGet();
            refused.incrementAndGet();
            return false;
        }
        requests.add(request);
        return true;
    }

    /** Whether a scan would find anything. */
    public boolean hasNews() {
        return stop.get() != 0
                || standDown.get() != 0
                || linkLost.get() != 0
                || lockoutNews.get() != 0
                || waiting.get() != 0;
    }

    /** How many requests found the queue full, ever. */
    public long refusedCount() {
        return refused.get();
    }

    /** Takes the stop, if somebody sent one. */
    public boolean takeStop() {
        return stop.getAndSet(0) != 0;
    }

    /** Takes the loss of the network, if it was told. */
    public boolean takeLinkLost() {
        return linkLost.getAndSet(0) != 0;
    }

    /** Takes the zones to stand down, as a mask. */
    public long takeStandDown() {
        return standDown.getAndSet(0);
    }

    /** Whether somebody has locked anything out since this was last asked; ask before taking. */
    public boolean takeLockoutNews() {
        return lockoutNews.getAndSet(0) != 0;
    }

    /** Takes the people who lock a zone out, as a mask. */
    public long takeZoneLockout(final int zone) {
        return zoneLockout.getAndSet(zone, 0);
    }

    /** Takes the people who lock an output out, as a mask. */
    public long takeOutputLockout(final int output) {
        return outputLockout.getAndSet(output, 0);
    }

    /** Takes the next request. */
    public Optional<Request> takeRequest() {
        final @Nullable Request next = requests.poll();
        if (next == null) {
            return Optional.empty();
        }
        waiting.decrementAndGet();
        return Optional.of(next);
    }

    private void add(final AtomicLongArray slots, final int at, final String person) {
        slots.accumulateAndGet(at, names.maskOf(person), (now, add) -> now | add);
        lockoutNews.set(1);
    }
}
