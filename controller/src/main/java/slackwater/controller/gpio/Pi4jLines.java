package slackwater.controller.gpio;

import com.pi4j.library.gpiod.internal.GpioDContext;
import com.pi4j.library.gpiod.internal.GpioDException;
import com.pi4j.library.gpiod.internal.GpioLine;
import com.pi4j.library.gpiod.internal.GpioLineEvent;
import com.pi4j.library.gpiod.internal.LineRequestFlag;
import slackwater.model.Pull;

/**
 * Lines through the GPIO library's own line layer. Its providers are passed by, each for a reason: they request an output
 * without a first level as low, which energises an active-low relay; they answer with the last write; they debounce inputs so
 * that a chattering one is never reported; they start a thread for each input; closing one closes the chip for all; and on a
 * board that they do not know they say that all is well. Here a line is requested once, with its level, and edges are
 * taken from the kernel's own queue by the scan's thread.
 */
public final class Pi4jLines implements Lines {
    private static final String CONSUMER = "slackwater ";
    private static final long AT_ONCE_NS = 0;

    private final GpioDContext context;
    private final Clock clock;

    /** Monotonic nanoseconds, the clock of the kernel's edge events. */
    interface Clock {
        long ns();
    }

    private Pi4jLines(final GpioDContext context, final Clock clock) {
        this.context = context;
        this.clock = clock;
    }

    /**
     * Opens the board's chip. The library takes the first chip whose label says "pinctrl": {@link BoardHere} has made sure
     * before that there is exactly one, the right one.
     */
    public static Lines open() {
        try {
            final GpioDContext context = GpioDContext.getInstance();
            context.initialize();
            return new Pi4jLines(context, System::nanoTime);
        } catch (final RuntimeException | LinkageError refused) {
            throw new LineRefusedException("the GPIO chip cannot be opened: " + inOneLine(refused), refused);
        }
    }

    @Override
    public Out claimOutput(final Wire wire, final boolean isHigh) {
        final GpioLine line = free(wire);
        try {
            line.requestOutputFlags(CONSUMER + wire.name(), 0, isHigh ? 1 : 0);
        } catch (final GpioDException refused) {
            throw refused(wire, refused);
        }
        return new Driven(line);
    }

    @Override
    public In claimInput(final Wire wire, final Pull pull) {
        final GpioLine line = free(wire);
        try {
            line.requestBothEdgeEventsFlags(CONSUMER + wire.name(), bias(pull));
        } catch (final GpioDException refused) {
            throw refused(wire, refused);
        }
        return new Sensed(line, context.openLineEvent(), clock);
    }

    @Override
    public void release() {
        context.close();
    }

    private GpioLine free(final Wire wire) {
        if (wire.gpio().isEmpty()) {
            throw new LineRefusedException(
                    wire.name() + " has no pin yet: write one into the rig (slackwater wiring --propose-pins)");
        }
        try {
            final GpioLine line = context.getOrOpenLine(wire.gpio().getAsInt());
            line.update();
            if (line.isUsed()) {
                throw new LineRefusedException(wire + " is already used by \"" + line.getConsumer()
                        + "\": end that program or wire another pin");
            }
            return line;
        } catch (final GpioDException | IllegalStateException refused) {
            throw refused(wire, refused);
        }
    }

    private static LineRefusedException refused(final Wire wire, final RuntimeException refused) {
        return new LineRefusedException(wire + " is refused by the kernel: " + inOneLine(refused), refused);
    }

    private static String inOneLine(final Throwable refused) {
        return String.valueOf(refused.getMessage()).lines().findFirst().orElse("");
    }

    private static int bias(final Pull pull) {
        return switch (pull) {
            case UP -> LineRequestFlag.BIAS_PULL_UP.getVal();
            case DOWN -> LineRequestFlag.BIAS_PULL_DOWN.getVal();
            case NONE -> LineRequestFlag.BIAS_DISABLE.getVal();
        };
    }

    private record Driven(GpioLine line) implements Out {
        @Override
        public void write(final boolean isHigh) {
            line.setValue(isHigh ? 1 : 0);
        }

        @Override
        public boolean isPadHigh() {
            return line.getValue() != 0;
        }
    }

    private static final class Sensed implements In {
        private final GpioLine line;
        private final GpioLineEvent event;
        private final Clock clock;
        private long lookedAtNs;

        Sensed(final GpioLine line, final GpioLineEvent event, final Clock clock) {
            this.line = line;
            this.event = event;
            this.clock = clock;
            lookedAtNs = clock.ns();
        }

        @Override
        public boolean isHigh() {
            lookedAtNs = clock.ns();
            return line.getValue() != 0;
        }

        /** An event older than the last look tells of a change that the look has seen already. */
        @Override
        public boolean takeEdges() {
            boolean isNew = false;
            while (line.eventWait(AT_ONCE_NS)) {
                isNew |= line.eventRead(event).getTimeNs() > lookedAtNs;
            }
            return isNew;
        }
    }
}
