package slackwater.controller.latch;

import java.util.ArrayList;
import java.util.List;

/**
 * Gives every person who locks something out a place in a small set. Bounded: the last place is shared by everybody who
 * comes when the others are taken, and is then released by key override only, so that no lockout is ever lost.
 */
public final class LockoutNames {
    /** Who holds the lock when what was kept could not be read. */
    public static final String UNREADABLE = "store could not be read";

    static final int MOST = 63;

    private final List<String> names = new ArrayList<>();

    /** The person's member of the set, as a mask of one bit. Any thread. */
    public synchronized long maskOf(final String name) {
        int at = names.indexOf(name);
        if (at < 0 && names.size() < MOST) {
            names.add(name);
            at = names.size() - 1;
        }
        return 1L << (at < 0 ? MOST : at);
    }

    /** Whether the person shares the last place with others. */
    public synchronized boolean isShared(final String name) {
        return !names.contains(name) && names.size() >= MOST;
    }

    /** The people in a set, in the order in which they first came. */
    public synchronized List<String> namesOf(final long mask) {
        final List<String> members = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            if ((mask & 1L << i) != 0) {
                members.add(names.get(i));
            }
        }
        if (mask < 0) {
            members.add("others");
        }
        return members;
    }
}
