package slackwater.model;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** What is built. Complete and consistent: a rig with a single error is never made. */
public record Rig(
        String name,
        Duration scan,
        Optional<Place> place,
        List<Controller> controllers,
        List<Zone> zones,
        List<Input> inputs,
        List<Output> outputs,
        List<Interlock> interlocks,
        Arming arming,
        List<String> people,
        Surroundings surroundings,
        LedgerRules ledger) {

    /** What stands around the rig: only simulator and budget need it. */
    public record Surroundings(
            Optional<WalkWay> way,
            Optional<Air> air,
            Optional<Walkers> walkers,
            Optional<Weather> weather,
            List<Circuit> circuits,
            List<Supply> supplies) {
        public static final Surroundings NONE = new Surroundings(
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of(), List.of());

        public Surroundings {
            circuits = List.copyOf(circuits);
            supplies = List.copyOf(supplies);
        }

        /** Where only visitors and air are told of. */
        public Surroundings(final Optional<WalkWay> way, final Optional<Air> air, final Optional<Walkers> walkers) {
            this(way, air, walkers, Optional.empty(), List.of(), List.of());
        }

        /** The same with another way through the yard. */
        public Surroundings along(final WalkWay other) {
            return new Surroundings(Optional.of(other), air, walkers, weather, circuits, supplies);
        }
    }

    /** A rig whose ledger warns as usual. */
    public Rig(
            final String name,
            final Duration scan,
            final Optional<Place> place,
            final List<Controller> controllers,
            final List<Zone> zones,
            final List<Input> inputs,
            final List<Output> outputs,
            final List<Interlock> interlocks,
            final Arming arming,
            final List<String> people,
            final Surroundings surroundings) {
        this(
                name,
                scan,
                place,
                controllers,
                zones,
                inputs,
                outputs,
                interlocks,
                arming,
                people,
                surroundings,
                LedgerRules.USUAL);
    }

    public Rig {
        controllers = List.copyOf(controllers);
        zones = List.copyOf(zones);
        inputs = List.copyOf(inputs);
        outputs = List.copyOf(outputs);
        interlocks = List.copyOf(interlocks);
        people = List.copyOf(people);
    }

    public Optional<Output> output(final String wanted) {
        return outputs.stream().filter(output -> output.name().equals(wanted)).findFirst();
    }

    public Optional<Input> input(final String wanted) {
        return inputs.stream().filter(input -> input.name().equals(wanted)).findFirst();
    }

    public List<Output> outputsOf(final String controller) {
        return outputs.stream()
                .filter(output -> output.controller().equals(controller))
                .toList();
    }

    public List<Input> inputsOf(final String controller) {
        return inputs.stream()
                .filter(input -> input.controllers().contains(controller))
                .toList();
    }
}
