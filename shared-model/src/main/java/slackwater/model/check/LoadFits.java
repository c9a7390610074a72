package slackwater.model.check;

import java.util.Optional;
import slackwater.model.Interlock;
import slackwater.model.Load;
import slackwater.model.Output;
import slackwater.model.finding.Findings;

/** What is over a load limit all alone never runs; what starts with less than it draws was written down wrongly. */
final class LoadFits implements Rule {

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Output output : draft.rig().outputs()) {
            inrush(draft, output, findings);
        }
        for (final Interlock interlock : draft.rig().interlocks()) {
            if (interlock instanceof Interlock.LoadLimit limit) {
                limit.outputs().stream()
                        .flatMap(name -> draft.rig().output(name).stream())
                        .forEach(output -> limit(draft, limit, output, findings));
            }
        }
    }

    private static void inrush(final Draft draft, final Output output, final Findings findings) {
        final Load load = output.load();
        if (load.inrushAmps() < load.amps()) {
            findings.error(
                    "inrush-below-current",
                    draft.at(Say.table(output), "inrush"),
                    Say.words(
                            "inrush=" + Say.amps(load.inrushAmps()) + " < current=" + Say.amps(load.amps()),
                            Say.quoted(output.name()) + " would start with less than it draws afterwards, and the load"
                                    + " limits would be too trusting",
                            "write the current while it starts, at least " + Say.amps(load.amps())
                                    + ", or leave inrush out"));
        }
    }

    private static void limit(
            final Draft draft, final Interlock.LoadLimit limit, final Output output, final Findings findings) {
        final Optional<Double> share = Optional.ofNullable(limit.shares().get(output.controller()));
        final double mostA = share.orElse(limit.amps());
        final double drawsA = Math.max(output.load().amps(), output.load().inrushAmps());
        if (drawsA > mostA) {
            final String what = share.isPresent() ? "share" : "limit";
            findings.error(
                    "over-load-limit",
                    draft.at(Say.table(limit), share.isPresent() ? "shares" : "limit"),
                    Say.words(
                            Say.quoted(output.name()) + " alone draws " + Say.amps(drawsA) + ", more than the " + what
                                    + " of " + Say.amps(mostA),
                            "it would be refused at every start",
                            "raise the " + what
                                    + " if supply and fuse allow it, or take the output to another supply"));
        }
    }
}
