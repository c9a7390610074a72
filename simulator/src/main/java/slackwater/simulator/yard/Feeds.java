package slackwater.simulator.yard;

import java.util.List;
import java.util.Optional;
import slackwater.model.Contact;
import slackwater.model.Controller;
import slackwater.model.Output;
import slackwater.model.Rig;

/** Which loads have power: pin, relay, output supply, faults, and what comes before them, circuit and power supply. */
final class Feeds {
    private static final List<OutputOverlay> OVERLAYS = List.of(OutputOverlay.values());

    private final List<Output> outputs;
    private final int[] controllerOf;
    private final boolean[] hasHoldUp;
    private final List<Optional<Relay>> relays;
    private final Sources sources;

    Feeds(final Rig rig, final List<Optional<Relay>> relays, final Sources sources) {
        outputs = rig.outputs();
        final List<String> names =
                rig.controllers().stream().map(Controller::name).toList();
        controllerOf = outputs.stream()
                .mapToInt(output -> names.indexOf(output.controller()))
                .toArray();
        hasHoldUp = new boolean[names.size()];
        for (int i = 0; i < hasHoldUp.length; i++) {
            hasHoldUp[i] = rig.controllers().get(i).holdUp().isPresent();
        }
        this.relays = List.copyOf(relays);
        this.sources = sources;
    }

    /** The code of a fault that is laid over an output, 0 for none. */
    static long code(final Optional<OutputOverlay> overlay) {
        return overlay.map(fault -> OVERLAYS.indexOf(fault) + 1L).orElse(0L);
    }

    boolean isSupplied(final State state, final int controller) {
        return !state.isStopLoopOpen() && (!hasHoldUp[controller] || state.isPulledIn(controller));
    }

    /** Works out afresh which loads have power. */
    void feed(final State state) {
        for (int i = 0; i < outputs.size(); i++) {
            state.setPowered(i, isFed(state, i));
        }
    }

    private boolean isFed(final State state, final int output) {
        final long overlay = state.outputOverlay(output);
        final boolean isSupplied = isSupplied(state, controllerOf[output]);
        final Output wired = outputs.get(output);
        final boolean isEnergised =
                isSupplied && state.isPinHigh(output) == wired.energisedLevel().isHigh();
        final boolean isClosed = isClosed(state, output, isEnergised);
        if (!sources.isLive(state, output)) {
            return overlay != 0 && OVERLAYS.get((int) overlay - 1) == OutputOverlay.FED_ELSEWHERE;
        }
        if (overlay != 0) {
            return switch (OVERLAYS.get((int) overlay - 1)) {
                case WELDED -> isSupplied;
                case FED_ELSEWHERE -> true;
                case DEAD -> false;
            };
        }
        // A load that is on at rest hangs on a contact outside the hold-up power (S15).
        return wired.contact() == Contact.NORMALLY_OPEN ? isSupplied && isClosed : !isClosed;
    }

    private boolean isClosed(final State state, final int output, final boolean isEnergised) {
        final Optional<Relay> relay = relays.get(output);
        if (relay.isEmpty()) {
            return isEnergised;
        }
        relay.get().drive(state, isEnergised);
        return relay.get().isClosed(state);
    }
}
