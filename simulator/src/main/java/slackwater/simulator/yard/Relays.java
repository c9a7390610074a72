package slackwater.simulator.yard;

import java.util.List;

/** All contacts that take their time; the first of the plants, so that loads follow a contact in the same step. */
record Relays(List<Relay> relays, Feeds feeds) implements Plant {
    @Override
    public void step(final State state) {
        boolean hasMoved = false;
        for (int i = 0; i < relays.size(); i++) {
            hasMoved |= relays.get(i).step(state);
        }
        if (hasMoved) {
            feeds.feed(state);
        }
    }

    @Override
    public long wakesNs(final State state) {
        long wakesNs = ASLEEP;
        for (int i = 0; i < relays.size(); i++) {
            wakesNs = Math.min(wakesNs, relays.get(i).wakesNs(state));
        }
        return wakesNs;
    }
}
