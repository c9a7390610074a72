package slackwater.controller.live;

import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.jspecify.annotations.Nullable;
import slackwater.model.event.Event;

/** A bounded queue from one thread to one other, without a lock that the scan could wait for. */
final class Ring {
    private final AtomicReferenceArray<@Nullable Event> slots;
    private final AtomicLong put = new AtomicLong();
    private final AtomicLong taken = new AtomicLong();

    Ring(final int size) {
        slots = new AtomicReferenceArray<>(size);
    }

    /** False when there is no room. */
    boolean offer(final Event event) {
        final long at = put.get();
        if (at - taken.get() >= slots.length()) {
            return false;
        }
        slots.set((int) (at % slots.length()), event);
        put.set(at + 1);
        return true;
    }

    @Nullable
    Event poll() {
        final long at = taken.get();
        if (at == put.get()) {
            return null;
        }
        final @Nullable Event event = slots.getAndSet((int) (at % slots.length()), null);
        taken.set(at + 1);
        return event;
    }
}
