package slackwater.controller.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import slackwater.controller.cue.Asking;
import slackwater.controller.cue.CueStage;
import slackwater.controller.image.Image;
import slackwater.controller.pins.Gate;
import slackwater.controller.pins.VirtualPins;
import slackwater.controller.run.RunState;
import slackwater.model.Mode;
import slackwater.model.event.Event;

/**
 * Cues, guards and drivers of a plan, with proven views, modes and demands set by hand: what inputs and latches would say is
 * given, and nothing is proved over time. The steps come in the order of a scan.
 */
public final class LogicBench {
    /** 10 ms unless a rig says otherwise. */
    public static final long SCAN_MS = 10;

    private static final long NS_PER_MS = 1_000_000L;

    private final Plan plan;
    private final RunState run;
    private final Image image;
    private final Asking asking;
    private final Gate gate;
    private final boolean[] wished;
    private final boolean[] isNewWish;
    private final boolean[] isRising;
    private final List<Event> events = new ArrayList<>();
    private final List<String> edges = new ArrayList<>();
    private boolean wantsHeat;
    private long nowMs;
    private long lastMs;

    private LogicBench(final Plan plan) {
        this.plan = plan;
        run = plan.newRun();
        image = plan.places().newImage();
        asking = CueStage.asking(image);
        final int outputs = plan.places().outputs().size();
        final int inputs = plan.places().inputs().size();
        gate = new Gate(new VirtualPins(new boolean[inputs], new boolean[outputs]), new boolean[outputs]);
        wished = new boolean[outputs];
        isNewWish = new boolean[outputs];
        isRising = new boolean[inputs];
        mode(Mode.ARMED);
        Arrays.fill(image.mayGreet, true);
    }

    public static LogicBench of(final Plan plan) {
        return new LogicBench(plan);
    }

    /** One controller called {@code yard}, and no cues. */
    public static LogicBench of(final String tables) {
        return of(tables, "");
    }

    /** One controller called {@code yard}. */
    public static LogicBench of(final String tables, final String show) {
        final RigText text = RigText.of(RigText.yard(tables), show);
        return of(Plan.compile(text.rig(), text.show(), "yard", Options.plain(1)));
    }

    /** A scan at the next moment of the period; the first is at 0. */
    public LogicBench step() {
        run.begin(nowMs * NS_PER_MS);
        image.begin();
        System.arraycopy(isRising, 0, image.rose, 0, isRising.length);
        Arrays.fill(isRising, false);
        plan.ledger().update(run, image);
        plan.cues().update(run, image, asking);
        for (int output = 0; output < wished.length; output++) {
            image.demand[output] |= wished[output];
            image.renewed[output] |= wished[output] && isNewWish[output];
            isNewWish[output] = false;
        }
        plan.standing().update(run, image, (state, output) -> wantsHeat);
        plan.drivers().renew(run, image);
        plan.guards().judge(run, image);
        plan.drivers().update(run, image);
        plan.pins().commit(run, image, gate, this::changed);
        events.addAll(image.events());
        image.events().clear();
        lastMs = nowMs;
        nowMs += SCAN_MS;
        return this;
    }

    private void changed(final int output, final boolean isEnergised) {
        plan.guards().observe(run, output, isEnergised);
        plan.ledger().observe(run, output, isEnergised);
        edges.add(nowMs + (isEnergised ? " +" : " -") + outputName(output));
    }

    /** Scans up to and including the one at a moment. */
    public LogicBench until(final long atMs) {
        if (atMs < lastMs) {
            throw new IllegalArgumentException("atMs=" + atMs + " < lastMs=" + lastMs);
        }
        while (nowMs <= atMs) {
            step();
        }
        return this;
    }

    /** Before the first scan: the scans of this bench come so much later than those of another. */
    public LogicBench offset(final long laterMs) {
        nowMs = laterMs;
        return this;
    }

    /** Proves an input active, as a rise where it was not. */
    public LogicBench active(final String input) {
        final int at = plan.places().input(input);
        isRising[at] = !image.provenActive[at];
        image.provenActive[at] = true;
        image.provenInactive[at] = false;
        return this;
    }

    public LogicBench inactive(final String input) {
        final int at = plan.places().input(input);
        image.provenActive[at] = false;
        image.provenInactive[at] = true;
        return this;
    }

    /** Neither: warming up, stuck, or between two levels (S7). */
    public LogicBench unknown(final String input) {
        final int at = plan.places().input(input);
        image.provenActive[at] = false;
        image.provenInactive[at] = false;
        return this;
    }

    /** Somebody comes and is gone before the next scan. */
    public LogicBench blip(final String input) {
        active(input);
        return inactive(input);
    }

    /** Wishes it from the next scan on, as a step that begins there. */
    public LogicBench wish(final String... outputs) {
        for (final String output : outputs) {
            wished[plan.places().output(output)] = true;
            isNewWish[plan.places().output(output)] = true;
        }
        return this;
    }

    /** Wishes it from the next scan on, without saying that a step begins. */
    public LogicBench hold(final String output) {
        wished[plan.places().output(output)] = true;
        return this;
    }

    public LogicBench unwish(final String... outputs) {
        for (final String output : outputs) {
            wished[plan.places().output(output)] = false;
        }
        return this;
    }

    /** The mode of every zone and output; cues may greet when it is armed. */
    public LogicBench mode(final Mode mode) {
        Arrays.fill(image.mode, mode);
        Arrays.fill(image.zoneMode, mode);
        Arrays.fill(image.mayGreet, mode == Mode.ARMED);
        return this;
    }

    /** The mode of one output, whatever its zone does. */
    public LogicBench mode(final String output, final Mode mode) {
        image.mode[plan.places().output(output)] = mode;
        return this;
    }

    public LogicBench wantsHeat(final boolean wants) {
        wantsHeat = wants;
        return this;
    }

    /** Tells what the pins did, without a driver: for guards that look at what is. */
    public LogicBench pinsSay(final String output, final boolean isEnergised) {
        final int at = plan.places().output(output);
        run.begin(nowMs * NS_PER_MS);
        image.energised[at] = isEnergised;
        image.next[at] = isEnergised;
        plan.guards().observe(run, at, isEnergised);
        return this;
    }

    public boolean isOn(final String output) {
        return image.energised[plan.places().output(output)];
    }

    public boolean isAsked(final String output) {
        return image.demand[plan.places().output(output)];
    }

    /** Names of what is energised, in the order of the rig. */
    public List<String> on() {
        return IntStream.range(0, wished.length)
                .filter(output -> image.energised[output])
                .mapToObj(this::outputName)
                .toList();
    }

    /** Every reason now, in words, as {@link slackwater.model.event.Refusal#text}. */
    public List<String> whyNot(final String output) {
        return plan.guards().whyNot(run, image, plan.places().output(output)).stream()
                .map(refusal -> refusal.text(run.atNs()))
                .toList();
    }

    /** Every change of an output so far, such as {@code 20 +lid} and {@code 1520 -lid}: moments in milliseconds. */
    public List<String> edges() {
        return List.copyOf(edges);
    }

    /** Changes of one output so far. */
    public List<String> edges(final String output) {
        return edges.stream()
                .filter(edge -> edge.substring(edge.indexOf(' ') + 2).equals(output))
                .toList();
    }

    public long count(final Class<? extends Event> kind) {
        return events.stream().filter(kind::isInstance).count();
    }

    /** Events of one kind so far, such as {@code 20: text}. */
    public List<String> said(final Class<? extends Event> kind) {
        return events.stream()
                .filter(kind::isInstance)
                .map(event -> event.atNs() / NS_PER_MS + ": " + event.text())
                .toList();
    }

    public long lastMs() {
        return lastMs;
    }

    public Plan plan() {
        return plan;
    }

    public RunState run() {
        return run;
    }

    public Image image() {
        return image;
    }

    private String outputName(final int output) {
        return plan.places().outputs().get(output).name();
    }
}
