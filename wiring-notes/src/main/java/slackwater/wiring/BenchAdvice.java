package slackwater.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What every sheet says, whatever is wired. */
final class BenchAdvice {

    /** A guide written by hand, beside the sheet. */
    record Guide(String file, String about) {
        String path() {
            return "wiring-notes/guides/" + file;
        }
    }

    /** The second is S16 in plain words. */
    private static final List<String> CAUTIONS = List.of(
            "Mains is work for licensed people and goes by the local code; outdoors it is ground-fault protected.",
            "Unplug the supplies, shut off and vent the air, block what can fall."
                    + " A lockout in software is not isolation.",
            "Wire the stop loop first, through every output supply, and try it before any load is connected.",
            "First power-on without loads: measure each output's pin from power-on until the program runs.",
            "Header pins are for signals of 3.3 V; 5 V on one can destroy the board."
                    + " No load hangs on a pin: a driver stands between.");

    private static final List<Guide> GUIDES = List.of(
            new Guide("boot-states.md", "relay and transistor boards, and what they do while the board boots"),
            new Guide("flyback-diodes.md", "coils and motors, and what they do when switched off"),
            new Guide("air.md", "dump valve, throttled return, pressure that stays behind"),
            new Guide("mains-outdoors.md", "what is left to licensed people, and ground-fault protection"),
            new Guide("strobes-and-people.md", "how fast, how announced, and for whom not"),
            new Guide("stop-loop.md", "the hard-wired stop through the output supplies"));

    private BenchAdvice() {}

    static List<String> cautions(final List<WiringFacts> sheets) {
        final List<String> all = new ArrayList<>(CAUTIONS);
        sheets.stream()
                .map(facts -> facts.controller().board())
                .distinct()
                .filter(board -> !board.caveat().isEmpty())
                .forEach(board -> all.add(board.word() + ": " + board.caveat()));
        return all;
    }

    static List<Guide> guides() {
        return GUIDES;
    }

    /** Where supply and ground are on the header, one sentence each. */
    static List<String> supplies(final WiringFacts facts) {
        return List.of(
                "3.3 V on pins " + pins(facts, "3V3") + ": a few mA for pull-ups and signals.",
                "5 V on pins " + pins(facts, "5V") + ": never onto a signal pin; loads have a supply of their own.",
                "Ground on pins " + pins(facts, "GND") + ": joined to the drivers' ground.");
    }

    private static String pins(final WiringFacts facts, final String signal) {
        return facts.headerPinsOf(signal).stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
