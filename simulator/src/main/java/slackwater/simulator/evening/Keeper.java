package slackwater.simulator.evening;

import java.time.Duration;
import java.util.List;
import slackwater.controller.command.Request;
import slackwater.controller.command.Request.Seen;
import slackwater.controller.command.Request.Wants;
import slackwater.controller.image.Places;
import slackwater.controller.scan.Scan;
import slackwater.model.Controller;
import slackwater.model.Input;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.Zone;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.referee.Act;

/**
 * The person who opens the yard: tries the stop, resets, walks through every reach curtain, and then leaves it to the
 * schedule, or arms with the key, or, where there is neither, asks for it.
 */
public final class Keeper {
    private static final Duration STOP_PRESSED = Duration.ofSeconds(2);
    private static final Duration STOP_RELEASED = Duration.ofSeconds(4);
    private static final Duration RESET_PRESSED = Duration.ofSeconds(6);
    private static final Duration RESET_RELEASED = Duration.ofSeconds(7);
    private static final Duration FIRST_REACH = Duration.ofSeconds(10);
    private static final Duration IN_REACH = Duration.ofSeconds(1);
    private static final Duration NEXT_REACH = Duration.ofSeconds(3);
    private static final Duration PAUSE = Duration.ofSeconds(5);
    private static final long BOOT_ID = 1;
    private static final String NAME = "keeper";

    private final Rig rig;
    private final Show show;

    public Keeper(final Rig rig, final Show show) {
        this.rig = rig;
        this.show = show;
    }

    /** Puts the opening into the bench's script. Returns the moment at which the keeper has done everything. */
    public Duration open(final VirtualBench bench) {
        final boolean hasStop = hasInput(input -> input.family() == slackwater.model.kind.InputFamily.STOP_LOOP);
        if (hasStop) {
            bench.at(STOP_PRESSED, yard -> yard.pressStop(true));
            bench.at(STOP_RELEASED, yard -> yard.pressStop(false));
        }
        for (final Input reset : inputs(Input.Use.RESET)) {
            bench.at(RESET_PRESSED, yard -> yard.set(reset.name(), true));
            bench.at(RESET_RELEASED, yard -> yard.set(reset.name(), false).leave(reset.name()));
        }
        final Duration walked = walkThroughReaches(bench);
        return show.schedule().isPresent() && rig.place().isPresent() ? walked : arm(bench, walked);
    }

    /** When the keeper arms by hand: after everything was tried and every sensor is warm. */
    private Duration arm(final VirtualBench bench, final Duration walked) {
        Duration warm = walked;
        for (final Input input : rig.inputs()) {
            warm = input.proving().warmUp().compareTo(warm) > 0
                    ? input.proving().warmUp()
                    : warm;
        }
        final Duration moment = warm.plus(PAUSE);
        final List<Input> keys = inputs(Input.Use.ARM);
        if (keys.isEmpty()) {
            bench.at(moment, this::ask);
        }
        for (final Input key : keys) {
            bench.at(moment, yard -> yard.set(key.name(), true));
        }
        return moment;
    }

    private void ask(final VirtualBench bench) {
        for (final Controller controller : rig.controllers()) {
            final Scan scan = bench.scan(controller.name());
            final Seen seen = new Seen(BOOT_ID, scan.latchGeneration());
            for (final Zone zone : Places.of(rig, controller.name()).zones()) {
                bench.commands(controller.name()).ask(new Request(Wants.ARM, zone.name(), NAME, "", seen));
                bench.tell(new Act.Arm(zone.name(), NAME));
            }
        }
    }

    private Duration walkThroughReaches(final VirtualBench bench) {
        Duration moment = FIRST_REACH;
        for (final Input input : rig.inputs()) {
            if (!input.reachOf().isEmpty()) {
                bench.at(moment, yard -> yard.set(input.name(), true));
                bench.at(moment.plus(IN_REACH), yard -> yard.leave(input.name()));
                moment = moment.plus(NEXT_REACH);
            }
        }
        return moment;
    }

    private List<Input> inputs(final Input.Use use) {
        return rig.inputs().stream().filter(input -> input.use() == use).toList();
    }

    private boolean hasInput(final java.util.function.Predicate<Input> wanted) {
        return rig.inputs().stream().anyMatch(wanted);
    }
}
