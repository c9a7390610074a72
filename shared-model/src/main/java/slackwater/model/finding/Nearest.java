package slackwater.model.finding;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** What a person may have meant by a word that is not known. */
public final class Nearest {
    private static final int LETTERS_PER_SLIP = 3;

    private Nearest() {}

    /** The known word that differs by the fewest slips, the first of equals; empty when none is near. */
    public static Optional<String> of(final String word, final Collection<String> known) {
        String best = "";
        int bestSlips = Integer.MAX_VALUE;
        for (final String candidate : known) {
            final int slips = slips(word.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
            final int longer = Math.max(word.length(), candidate.length());
            if (slips < bestSlips && slips < longer && slips <= Math.max(1, longer / LETTERS_PER_SLIP)) {
                best = candidate;
                bestSlips = slips;
            }
        }
        return bestSlips == Integer.MAX_VALUE ? Optional.empty() : Optional.of(best);
    }

    /**
     * Letters to add, drop, change or swap with a neighbour (optimal string alignment distance, as published; from memory).
     */
    static int slips(final String a, final String b) {
        final int[][] least = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                least[i][j] = cell(a, b, i, j, least);
            }
        }
        return least[a.length()][b.length()];
    }

    private static int cell(final String a, final String b, final int i, final int j, final int[][] least) {
        if (i == 0 || j == 0) {
            return i + j;
        }
        final int changed = least[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        final int droppedOrAdded = Math.min(least[i - 1][j], least[i][j - 1]) + 1;
        final int least1 = Math.min(changed, droppedOrAdded);
        final boolean isSwap =
                i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return isSwap ? Math.min(least1, least[i - 2][j - 2] + 1) : least1;
    }
}
