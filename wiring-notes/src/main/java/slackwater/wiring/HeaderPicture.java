package slackwater.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.wiring.WiringFacts.Line;

/** The header as it is seen from above, pin 1 at the upper left: what stands on each pin, and what is wired to it. */
final class HeaderPicture {
    private static final int NAME_WIDTH_MAX = 36;
    private static final int SIGNAL_WIDTH = 6;

    private final WiringFacts facts;

    HeaderPicture(final WiringFacts facts) {
        this.facts = facts;
    }

    List<String> lines() {
        final List<String> signals = facts.controller().board().signals();
        int width = 0;
        for (int pin = 1; pin <= signals.size(); pin += 2) {
            width = Math.max(width, name(pin).length());
        }
        final List<String> lines = new ArrayList<>();
        for (int pin = 1; pin < signals.size(); pin += 2) {
            lines.add(row(pin, width));
        }
        return lines;
    }

    private String row(final int oddPin, final int width) {
        final List<String> signals = facts.controller().board().signals();
        final String left = name(oddPin);
        final String row = "  " + " ".repeat(width - left.length()) + left + "  "
                + padded(signals.get(oddPin - 1)) + "  " + number(oddPin) + mark(oddPin) + "|" + mark(oddPin + 1)
                + number(oddPin + 1) + "  " + padded(signals.get(oddPin)) + "  " + name(oddPin + 1);
        return row.stripTrailing();
    }

    private String mark(final int pin) {
        return facts.on(pin).isPresent() ? "*" : " ";
    }

    private String name(final int pin) {
        final Optional<Line> line = facts.on(pin);
        final String name = line.map(each -> each.thing().name()).orElse("");
        return name.length() <= NAME_WIDTH_MAX ? name : name.substring(0, NAME_WIDTH_MAX - 3) + "...";
    }

    private static String number(final int pin) {
        return pin < 10 ? " " + pin : String.valueOf(pin);
    }

    private static String padded(final String signal) {
        return signal + " ".repeat(SIGNAL_WIDTH - signal.length());
    }
}
