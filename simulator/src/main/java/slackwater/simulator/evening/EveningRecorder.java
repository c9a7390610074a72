package slackwater.simulator.evening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import slackwater.model.Cue;
import slackwater.model.Mode;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.event.Event;
import slackwater.model.kind.Family;
import slackwater.simulator.bench.BenchListener;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.report.Lane;
import slackwater.simulator.report.LaneRecorder;
import slackwater.simulator.report.Lanes;
import slackwater.simulator.visitor.Being;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.visitor.Visitor;

/** Writes an evening down as lanes, and counts what a person wants to know the next morning. */
final class EveningRecorder implements BenchListener {
    private static final long GAUGE_EVERY_NS = 1_000_000_000L;
    private static final double PA_PER_BAR = 100_000;

    private final Rig rig;
    private final Show show;
    private final Near near;
    private final VirtualBench bench;
    private final List<Lane> lanes = new ArrayList<>();
    private final Map<String, Integer> inputLane = new LinkedHashMap<>();
    private final int[] outputLane;
    private final Map<String, Integer> cueLane = new LinkedHashMap<>();
    private final Map<String, Integer> modeLane = new LinkedHashMap<>();
    private final int tankLane;
    private final LaneRecorder recorder;
    private final Map<String, Long> cuesStarted = new LinkedHashMap<>();
    private final Map<String, Long> startsLost = new LinkedHashMap<>();
    private final Map<String, Long> refusals = new LinkedHashMap<>();
    private final Map<String, Long> actuations = new LinkedHashMap<>();
    private final Set<Integer> greeted = new TreeSet<>();
    private final boolean[] isEnergised;
    /** What startled at this moment, until the cues that began in it are known too. */
    private final List<String> bangs = new ArrayList<>();
    /** Cues that play and have not startled anybody yet. */
    private final Set<String> quietSoFar = new TreeSet<>();

    private long startledByMistake;
    private long allAtRestNs;
    private long restSinceNs;
    private int energisedCount;
    private long nextGaugeNs;

    EveningRecorder(final Rig rig, final Show show, final Crowd crowd, final VirtualBench bench) {
        this.rig = rig;
        this.show = show;
        this.bench = bench;
        near = new Near(rig, crowd);
        outputLane = new int[rig.outputs().size()];
        isEnergised = new boolean[rig.outputs().size()];
        rig.zones().forEach(zone -> modeLane.put(zone.name(), add(modes(zone.name()))));
        show.cues().forEach(cue -> {
            cueLane.put(cue.name(), add(Lane.bit(cue.zone(), cue.name(), Lane.Sort.CUE)));
            cuesStarted.put(cue.name(), 0L);
        });
        rig.controllers().forEach(controller -> {
            rig.inputsOf(controller.name())
                    .forEach(input -> inputLane.put(
                            key(rig.inputs().indexOf(input), rig.controllers().indexOf(controller)),
                            add(Lane.bit(controller.name(), input.name(), Lane.Sort.INPUT))));
            rig.outputsOf(controller.name())
                    .forEach(output -> outputLane[rig.outputs().indexOf(output)] =
                            add(Lane.bit(controller.name(), output.name(), Lane.Sort.PIN)));
        });
        rig.outputs().forEach(output -> actuations.put(output.name(), 0L));
        tankLane = rig.surroundings().air().isPresent() ? add(Lane.gauge("air", "tank", "bar")) : -1;
        recorder = new LaneRecorder(lanes);
        begin();
    }

    @Override
    public void input(final long atNs, final int input, final int controller, final boolean isActive) {
        recorder.bit(lane(inputLane, key(input, controller)), atNs, isActive);
    }

    @Override
    public void output(final long atNs, final int output, final boolean isOn) {
        recorder.bit(outputLane[output], atNs, isOn);
        if (isOn) {
            actuations.merge(rig.outputs().get(output).name(), 1L, Long::sum);
            if (startles(rig.outputs().get(output))) {
                bangs.add(rig.outputs().get(output).name());
            }
        }
        count(atNs, output, isOn);
    }

    @Override
    public void event(final int controller, final Event event) {
        if (event instanceof Event.CueStarted started) {
            recorder.bit(lane(cueLane, started.cue()), event.atNs(), true);
            cuesStarted.merge(started.cue(), 1L, Long::sum);
            greet(started);
        } else if (event instanceof Event.CueEnded ended) {
            recorder.bit(lane(cueLane, ended.cue()), event.atNs(), false);
            quietSoFar.remove(ended.cue());
        } else if (event instanceof Event.StartLost lost) {
            startsLost.merge(withoutFigures(lost.why()), 1L, Long::sum);
        } else if (event instanceof Event.Refused refused) {
            refusals.merge(refused.refusal().rule(), 1L, Long::sum);
            recorder.refused(outputLane(refused.refusal().output()), event.atNs(), event.text());
        } else if (event instanceof Event.ModeChanged changed) {
            recorder.word(lane(modeLane, changed.zone()), event.atNs(), position(changed.to()));
        }
    }

    @Override
    public void moment(final long atNs) {
        bangs.forEach(output -> startle(output, atNs));
        bangs.clear();
        if (tankLane >= 0 && atNs >= nextGaugeNs) {
            nextGaugeNs = atNs + GAUGE_EVERY_NS;
            recorder.number(tankLane, atNs, Math.round(bench.yard().tankPa() / PA_PER_BAR * 100) / 100.0);
        }
    }

    Lanes lanes(final long untilNs) {
        return recorder.until(untilNs);
    }

    Map<String, Long> cuesStarted() {
        return cuesStarted;
    }

    Map<String, Long> startsLost() {
        return startsLost;
    }

    Map<String, Long> refusals() {
        return refusals;
    }

    Map<String, Long> actuations() {
        return actuations;
    }

    long greeted() {
        return greeted.size();
    }

    long startledByMistake() {
        return startledByMistake;
    }

    /** Share of the time up to a moment in which every output was at rest. */
    double restShare(final long untilNs) {
        final long rest = allAtRestNs + (energisedCount == 0 ? untilNs - restSinceNs : 0);
        return untilNs == 0 ? 1 : (double) rest / untilNs;
    }

    private void begin() {
        inputLane.values().forEach(lane -> recorder.bit(lane, 0, false));
        Arrays.stream(outputLane).forEach(lane -> recorder.bit(lane, 0, false));
        cueLane.values().forEach(lane -> recorder.bit(lane, 0, false));
        modeLane.values().forEach(lane -> recorder.word(lane, 0, position(Mode.RESTING)));
        for (int controller = 0; controller < rig.controllers().size(); controller++) {
            for (final slackwater.model.Input input :
                    rig.inputsOf(rig.controllers().get(controller).name())) {
                final int index = rig.inputs().indexOf(input);
                final boolean isActive = bench.yard().isInputHigh(index, controller)
                        == input.activeLevel().isHigh();
                recorder.bit(lane(inputLane, key(index, controller)), 0, isActive);
            }
        }
    }

    private void greet(final Event.CueStarted started) {
        final Cue cue = show.cues().stream()
                .filter(each -> each.name().equals(started.cue()))
                .findFirst()
                .orElseThrow();
        final List<Visitor> people = near.whoStarted(cue, started.atNs());
        people.forEach(visitor -> greeted.add(visitor.group()));
        quietSoFar.add(cue.name());
    }

    /** A cue that waits for somebody tall may start for a child; it startles only once something startling happens. */
    private void startle(final String output, final long atNs) {
        for (final Cue cue : show.cues()) {
            if (CueOutputs.of(cue).contains(output) && quietSoFar.remove(cue.name())) {
                final List<Visitor> people = near.whoStarted(cue, atNs);
                final boolean hasTall = people.stream()
                        .anyMatch(visitor -> visitor.being() != Being.SMALL_CHILD && visitor.being() != Being.DOG);
                startledByMistake += people.isEmpty() || hasTall ? 0 : 1;
            }
        }
    }

    private static boolean startles(final Output output) {
        return output.family() == Family.STROBE
                || output.family() == Family.RELEASE
                || (output.family() == Family.VALVE && output.reachM() > 0);
    }

    private void count(final long atNs, final int output, final boolean isOn) {
        if (isEnergised[output] == isOn) {
            return;
        }
        isEnergised[output] = isOn;
        if (isOn) {
            allAtRestNs += energisedCount == 0 ? atNs - restSinceNs : 0;
            energisedCount++;
        } else {
            energisedCount--;
            restSinceNs = atNs;
        }
    }

    private int outputLane(final String output) {
        return outputLane[rig.outputs().indexOf(rig.output(output).orElseThrow())];
    }

    private int add(final Lane lane) {
        lanes.add(lane);
        return lanes.size() - 1;
    }

    private static int lane(final Map<String, Integer> lanes, final String name) {
        return Optional.ofNullable(lanes.get(name))
                .orElseThrow(() -> new IllegalArgumentException("no lane is called " + name));
    }

    private static Lane modes(final String zone) {
        final List<String> words = Arrays.stream(Mode.values())
                .map(mode -> mode.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '))
                .toList();
        return Lane.words(zone, "mode", Lane.Sort.MODE, words);
    }

    private static int position(final Mode mode) {
        return Arrays.asList(Mode.values()).indexOf(mode);
    }

    private static String key(final int input, final int controller) {
        return input + "@" + controller;
    }

    /** Reasons are counted without the time that was left, or every one would be different. */
    private static String withoutFigures(final String why) {
        return why.startsWith("hold-off") ? "hold-off" : why;
    }
}
