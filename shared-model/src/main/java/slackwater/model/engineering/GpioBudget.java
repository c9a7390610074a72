package slackwater.model.engineering;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The current that outputs draw from a board's pins (handbook 3.8): each pin against its pad, all together against the
 * 3.3 V supply.
 *
 * @param pads of the board
 * @param pinA current of each output while it is high, amperes, in the rig's order
 */
public record GpioBudget(GpioPads pads, List<Double> pinA) {

    public GpioBudget {
        pinA = List.copyOf(pinA);
        pinA.forEach(amps -> Given.notNegative("pinA", amps));
    }

    /** Places in the list of the pins that draw more than their pad stands. */
    public List<Integer> overloadedPins() {
        return IntStream.range(0, pinA.size())
                .filter(index -> pinA.get(index) > pads.safePadA())
                .boxed()
                .toList();
    }

    /** All pins at once, amperes. */
    public double totalA() {
        return pinA.stream().mapToDouble(Double::doubleValue).sum();
    }

    /**
     * What the supply gives to all pins, amperes: the design figure of the first boards, since no other sum is
     * documented.
     */
    public static double availableA() {
        return GpioPads.supplyA(GpioPads.FIRST_BOARDS_PINS);
    }

    public boolean fits() {
        return overloadedPins().isEmpty() && totalA() <= availableA();
    }
}
