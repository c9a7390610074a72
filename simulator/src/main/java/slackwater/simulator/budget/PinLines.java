package slackwater.simulator.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.model.Controller;
import slackwater.model.Feed;
import slackwater.model.Output;
import slackwater.model.engineering.GpioBudget;
import slackwater.model.engineering.GpioPads;

/** What the pins themselves give to opto-couplers, gates and transistors. */
final class PinLines {
    private PinLines() {}

    static void add(final Reckoning to) {
        for (final Controller controller : to.rig().controllers()) {
            final Optional<GpioPads> pads = GpioPads.ofBoard(controller.board().word());
            final List<Double> amps = new ArrayList<>();
            final List<Output> told = new ArrayList<>();
            for (final Output output : to.rig().outputsOf(controller.name())) {
                output.load()
                        .feed()
                        .through()
                        .map(Feed.SwitchedBy::pinA)
                        .filter(each -> each > 0)
                        .ifPresent(each -> {
                            amps.add(each);
                            told.add(output);
                        });
            }
            if (told.isEmpty()) {
                to.leaveOut("the current of " + controller.name()
                        + "'s pins: say switch = { kind = \"relay\", pin-current = \"3 mA\" } at its outputs");
            } else if (pads.isEmpty()) {
                to.leaveOut("the current of " + controller.name() + "'s pins: its pads are not documented");
            } else {
                both(to, controller, new GpioBudget(pads.get(), amps), told);
            }
        }
    }

    private static void both(
            final Reckoning to, final Controller controller, final GpioBudget budget, final List<Output> told) {
        int worst = 0;
        for (int i = 0; i < told.size(); i++) {
            worst = budget.pinA().get(i) > budget.pinA().get(worst) ? i : worst;
        }
        to.add(new Entry(Line.Group.PINS, "pin of " + told.get(worst).name())
                .asks(budget.pinA().get(worst), Measure.MILLIAMPERE)
                .has(budget.pads().safePadA(), Measure.MILLIAMPERE)
                .by("what a pad stands (handbook 3.8)")
                .advice("a transistor or a buffer between pin and switch")
                .judged());
        to.add(new Entry(Line.Group.PINS, "all pins of " + controller.name() + " at once")
                .asks(budget.totalA(), Measure.MILLIAMPERE)
                .has(GpioBudget.availableA(), Measure.MILLIAMPERE)
                .by("3 mA a pin for 17 pins (handbook 3.8)")
                .advice("a buffer with a supply of its own")
                .judged());
    }
}
