package slackwater.model.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import slackwater.model.Interlock;
import slackwater.model.finding.Findings;

/** A limit over several controllers is divided into fixed shares that add up to it (S13). */
final class SharedLimits implements Rule {

    /** A limit of either kind, with its numbers exact. */
    private record Limit(
            Interlock interlock, String key, BigDecimal whole, Map<String, BigDecimal> shares, String unit) {}

    @Override
    public void look(final Draft draft, final Findings findings) {
        for (final Interlock interlock : draft.rig().interlocks()) {
            if (interlock instanceof Interlock.LoadLimit load) {
                look(
                        draft,
                        new Limit(load, "limit", exact(load.amps()), mapped(load.shares(), SharedLimits::exact), " A"),
                        findings);
            } else if (interlock instanceof Interlock.FlashLimit flash) {
                look(
                        draft,
                        new Limit(
                                flash,
                                "flashes",
                                BigDecimal.valueOf(flash.flashes()),
                                mapped(flash.shares(), BigDecimal::valueOf),
                                ""),
                        findings);
            }
        }
    }

    private static void look(final Draft draft, final Limit limit, final Findings findings) {
        final List<String> homes = Homes.of(draft.rig(), limit.interlock().outputs());
        if (limit.shares().isEmpty()) {
            if (homes.size() > 1) {
                noShares(draft, limit, homes, findings);
            }
            return;
        }
        final List<String> without =
                homes.stream().filter(home -> !limit.shares().containsKey(home)).toList();
        final List<String> idle = limit.shares().keySet().stream()
                .filter(controller -> !homes.contains(controller))
                .sorted()
                .toList();
        if (!without.isEmpty()) {
            error(
                    draft,
                    limit,
                    "no-share",
                    Say.words(
                            Say.quoted(limit.interlock().name()) + " has no share for " + Say.quoted(without),
                            "without a share its outputs would never run (S13)",
                            "give every controller that drives one of its outputs a share"),
                    findings);
        }
        if (!idle.isEmpty()) {
            error(
                    draft,
                    limit,
                    "share-for-nothing",
                    Say.words(
                            Say.quoted(limit.interlock().name()) + " has a share for " + Say.quoted(idle)
                                    + ", which drives none of its outputs",
                            "that part of the limit is lost to the others",
                            "take the share away and give it to the others"),
                    findings);
        }
        sum(draft, limit, findings);
    }

    private static void noShares(
            final Draft draft, final Limit limit, final List<String> homes, final Findings findings) {
        error(
                draft,
                limit,
                "no-shares",
                Say.words(
                        Say.quoted(limit.interlock().name()) + " limits outputs of " + homes.size()
                                + " controllers without shares: " + Say.quoted(homes),
                        "with the network gone each would use up the whole limit of "
                                + text(limit.whole(), limit.unit()) + " (S13)",
                        "add shares = { " + String.join(" = ..., ", homes) + " = ... } that add up to "
                                + text(limit.whole(), limit.unit())),
                findings);
    }

    private static void sum(final Draft draft, final Limit limit, final Findings findings) {
        final BigDecimal sum = limit.shares().values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        if (sum.compareTo(limit.whole()) != 0) {
            final List<String> terms = new ArrayList<>();
            limit.shares().keySet().stream()
                    .sorted()
                    .forEach(name ->
                            terms.add(name + " " + text(limit.shares().getOrDefault(name, sum), limit.unit())));
            error(
                    draft,
                    limit,
                    "shares-do-not-add-up",
                    Say.words(
                            "the shares of " + Say.quoted(limit.interlock().name()) + " add up to "
                                    + text(sum, limit.unit()) + ", not to " + text(limit.whole(), limit.unit()),
                            "the controllers keep only their own shares: " + String.join(", ", terms) + " (S13)",
                            "change the shares or the limit until they agree"),
                    findings);
        }
    }

    private static void error(
            final Draft draft,
            final Limit limit,
            final String code,
            final Findings.Words words,
            final Findings findings) {
        final String key = limit.shares().isEmpty() ? limit.key() : "shares";
        findings.error(code, draft.at(Say.table(limit.interlock()), key), words);
    }

    private static BigDecimal exact(final Double amps) {
        return BigDecimal.valueOf(amps);
    }

    private static String text(final BigDecimal number, final String unit) {
        return number.stripTrailingZeros().toPlainString() + unit;
    }

    /** In the order of the names, so that nothing depends on a map's own order. */
    private static <V> Map<String, BigDecimal> mapped(
            final Map<String, V> shares, final Function<V, BigDecimal> exact) {
        final Map<String, BigDecimal> mapped = new TreeMap<>();
        shares.forEach((name, share) -> mapped.put(name, exact.apply(share)));
        return mapped;
    }
}
