package slackwater.simulator.referee;

import java.util.ArrayList;
import java.util.List;
import slackwater.model.Rig;
import slackwater.simulator.yard.Truth;

/**
 * Judges a run from the pins and the plants alone (S20). Allowance: one scan period to end, none to start. Levels
 * hold from one look until the next, so it must be told of every change, inputs no later than the outputs that follow
 * from them; and it must be shown the yard at {@link #wakeNs()} even if nothing changed. Not safe for several
 * threads.
 */
public final class Referee {
    private final Wiring wiring;
    private final Levels levels;
    private final Log log;
    private final Buttons buttons;
    private final Harm harm;
    private final StopAndArm stopAndArm;
    private final Tally tally;
    private final Rule[] rules;
    private final int[] changed;

    private Referee(
            final Wiring wiring, final Levels levels, final Log log, final Buttons buttons, final Rule[] rules) {
        this.wiring = wiring;
        this.levels = levels;
        this.log = log;
        this.buttons = buttons;
        this.rules = rules;
        harm = only(Harm.class, rules);
        stopAndArm = only(StopAndArm.class, rules);
        tally = only(Tally.class, rules);
        changed = new int[wiring.senses().size()];
    }

    /** A referee for a rig at power-on; its first look is the moment of power-on. */
    public static Referee of(final Rig rig) {
        final Wiring wiring = new Wiring(rig);
        final List<Rule> rules = new ArrayList<>();
        rules.add(new StopAndArm(wiring));
        rules.add(new SupplyLoss(wiring));
        rules.add(new Lockouts(wiring));
        rules.add(new OwnLimits(wiring));
        rules.addAll(new RuleBook(rig, wiring).rules());
        rules.add(new Harm(wiring));
        rules.add(new DryPump(wiring));
        rules.add(new Tally(wiring));
        return new Referee(wiring, new Levels(wiring), new Log(), new Buttons(wiring), rules.toArray(Rule[]::new));
    }

    private static <T extends Rule> T only(final Class<T> type, final Rule[] rules) {
        for (final Rule rule : rules) {
            if (type.isInstance(rule)) {
                return type.cast(rule);
            }
        }
        throw new IllegalStateException("no " + type.getSimpleName() + " among the rules");
    }

    /**
     * Looks at the yard.
     *
     * @param atNs from the run's start; never before the last look or act
     */
    public void look(final long atNs, final Truth truth) {
        pass(atNs);
        if (levels.hasBegun()) {
            lookAtInputs(truth);
        } else {
            levels.begin(truth);
            for (final Rule rule : rules) {
                rule.begun(levels);
            }
        }
        lookAtOutputs(truth);
        for (final Rule rule : rules) {
            rule.plants(truth, levels, log);
        }
    }

    private void pass(final long atNs) {
        if (atNs < levels.nowNs()) {
            throw new IllegalArgumentException("time ran back from " + levels.nowNs() + " ns to " + atNs + " ns");
        }
        for (final Rule rule : rules) {
            rule.passed(atNs, levels, log);
        }
        levels.moveTo(atNs);
    }

    /** All levels are taken before any rule hears of one, so that rules see one moment and not half of it. */
    private void lookAtInputs(final Truth truth) {
        int count = 0;
        for (int index = 0; index < changed.length; index++) {
            if (levels.takeSense(wiring.senses().get(index), truth)) {
                changed[count] = index;
                count++;
            }
        }
        for (int index = 0; index < count; index++) {
            for (final Rule rule : rules) {
                rule.sensed(changed[index], levels);
            }
        }
        for (int index = 0; index < count; index++) {
            buttons.sensed(changed[index], levels, rules);
        }
    }

    /** Rests before starts: what rests at this moment makes room at this moment (S9). */
    private void lookAtOutputs(final Truth truth) {
        final int outputs = wiring.outputs().size();
        for (int output = 0; output < outputs; output++) {
            if (levels.isEnergised(output) && !levels.isEnergisedIn(truth, output)) {
                levels.rest(output);
                for (final Rule rule : rules) {
                    rule.rested(output, levels);
                }
            }
        }
        for (int output = 0; output < outputs; output++) {
            if (!levels.isEnergised(output) && levels.isEnergisedIn(truth, output)) {
                levels.start(output);
                for (final Rule rule : rules) {
                    rule.started(output, levels, log);
                }
            }
        }
    }

    /**
     * Hears what a person did that no pin shows. It holds from this moment: a start in a later look at the same time is
     * judged by it.
     *
     * @throws IllegalArgumentException if it names something that is not in the rig
     */
    public void act(final long atNs, final Act act) {
        pass(atNs);
        for (final Rule rule : rules) {
            rule.acted(act, levels);
        }
        if (act instanceof Act.Arm arm) {
            Buttons.arm(wiring.zoneIndex(arm.zone()), levels, rules);
        } else if (act instanceof Act.ScheduleOpens) {
            for (int zone = 0; zone < wiring.zones(); zone++) {
                Buttons.arm(zone, levels, rules);
            }
        } else if (act instanceof Act.StandDown standDown) {
            Buttons.standDown(wiring.zoneIndex(standDown.zone()), atNs, levels, rules);
        } else if (act instanceof Act.ScheduleCloses) {
            for (int zone = 0; zone < wiring.zones(); zone++) {
                Buttons.standDown(zone, atNs, levels, rules);
            }
        }
    }

    /** When it needs a look although nothing changes, or {@link Long#MAX_VALUE}. */
    public long wakeNs() {
        long first = Dues.NEVER;
        for (final Rule rule : rules) {
            first = Math.min(first, rule.wakeNs(levels));
        }
        return first;
    }

    /** What was found so far, in the order in which it was found. */
    public List<Violation> violations() {
        return log.violations();
    }

    /** Times and counts up to the last look. */
    public Figures figures() {
        final List<Figures.OfOutput> outputs = new ArrayList<>();
        for (int output = 0; output < wiring.outputs().size(); output++) {
            outputs.add(tally.of(output, levels, harm));
        }
        return new Figures(outputs, stopAndArm.worstStopToRestNs());
    }

    /** An independent referee with the same past, for a run that forks. */
    public Referee copy() {
        final Rule[] copies = new Rule[rules.length];
        for (int index = 0; index < copies.length; index++) {
            copies[index] = rules[index].copy();
        }
        return new Referee(wiring, levels.copy(), log.copy(), buttons.copy(), copies);
    }
}
