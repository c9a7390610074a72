package slackwater.simulator.visitor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** All visitors of an evening, in the order in which they arrive; who arrive together, in the order of their ids. */
public final class Crowd {
    /** The answer where nobody arrives any more. */
    public static final long NEVER = Long.MAX_VALUE;

    public static final Crowd NOBODY = new Crowd(List.of());

    private static final Comparator<Visitor> BY_ARRIVAL =
            Comparator.comparingLong(Visitor::arrivesNs).thenComparingInt(Visitor::id);

    private final Visitor[] visitors;
    private final long lastLeavesNs;

    private Crowd(final List<Visitor> sorted) {
        this.visitors = sorted.toArray(new Visitor[0]);
        long lastNs = Long.MIN_VALUE;
        for (final Visitor visitor : visitors) {
            lastNs = Math.max(lastNs, visitor.leavesNs());
        }
        this.lastLeavesNs = lastNs;
    }

    public static Crowd of(final List<Visitor> visitors) {
        return new Crowd(visitors.stream().sorted(BY_ARRIVAL).toList());
    }

    public int size() {
        return visitors.length;
    }

    public boolean isEmpty() {
        return visitors.length == 0;
    }

    /**
     * One of the crowd.
     *
     * @param index counted in the order of arrival, from 0
     */
    public Visitor visitor(final int index) {
        return visitors[index];
    }

    public List<Visitor> visitors() {
        return List.of(visitors);
    }

    /** Index of the first who arrives later than a moment; {@link #size} where there is none. */
    public int firstAfter(final long afterNs) {
        int low = 0;
        int high = visitors.length;
        while (low < high) {
            final int middle = (low + high) >>> 1;
            if (visitors[middle].arrivesNs() > afterNs) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** When the next one arrives, later than a moment; {@link #NEVER} where nobody does. */
    public long nextArrivalNs(final long afterNs) {
        final int next = firstAfter(afterNs);
        return next == visitors.length ? NEVER : visitors[next].arrivesNs();
    }

    /** When the last one has left; only where there is anybody. */
    public long lastLeavesNs() {
        if (isEmpty()) {
            throw new IllegalStateException("an empty crowd has no last visitor");
        }
        return lastLeavesNs;
    }

    public Crowd only(final Predicate<Visitor> wanted) {
        return new Crowd(visitors().stream().filter(wanted).toList());
    }

    /** The same crowd earlier or later. */
    public Crowd movedBy(final long byNs) {
        return new Crowd(visitors().stream()
                .map(visitor -> visitor.moved(bodyOf(visitor, 0, 0), byNs))
                .toList());
    }

    /** This crowd, and when all have left and a gap has passed, another; its ids and groups count on from here. */
    public Crowd then(final Crowd next, final long gapNs) {
        if (isEmpty() || next.isEmpty()) {
            return isEmpty() ? next : this;
        }
        final long byNs = Math.addExact(lastLeavesNs, gapNs) - next.visitors[0].arrivesNs();
        final int idsFrom = 1 + visitors().stream().mapToInt(Visitor::id).max().orElse(-1);
        final int groupsFrom =
                1 + visitors().stream().mapToInt(Visitor::group).max().orElse(-1);
        final List<Visitor> both = new ArrayList<>(visitors());
        for (final Visitor visitor : next.visitors) {
            both.add(visitor.moved(bodyOf(visitor, idsFrom, groupsFrom), byNs));
        }
        return of(both);
    }

    private static Visitor.Body bodyOf(final Visitor visitor, final int idsFrom, final int groupsFrom) {
        return new Visitor.Body(
                Math.addExact(visitor.id(), idsFrom),
                Math.addExact(visitor.group(), groupsFrom),
                visitor.being(),
                visitor.heightM());
    }

    @Override
    public boolean equals(final Object other) {
        return other instanceof Crowd that && visitors().equals(that.visitors());
    }

    @Override
    public int hashCode() {
        return visitors().hashCode();
    }

    @Override
    public String toString() {
        return visitors.length + " visitors";
    }
}
