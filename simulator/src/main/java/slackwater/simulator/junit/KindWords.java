package slackwater.simulator.junit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import slackwater.model.kind.Key;

/** Whether a kind's word and keys are written as every word in a rig file, and explained. */
final class KindWords {
    private static final Pattern WORD = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
    private static final String RULE = " is not lower case with hyphens, as every word in a rig file is";

    private KindWords() {}

    static List<String> breaches(final Class<?> owner, final String word, final List<Key> keys) {
        final List<String> breaches = new ArrayList<>();
        final Set<String> seen = new HashSet<>();
        if (!isWord(word)) {
            breaches.add(owner.getName() + ": the word \"" + word + "\"" + RULE);
        }
        for (final Key key : keys) {
            final String named = owner.getName() + ": the key \"" + key.name() + "\"";
            if (!isWord(key.name())) {
                breaches.add(named + RULE);
            }
            if (key.meaning().isBlank()) {
                breaches.add(named + " does not say what it means");
            }
            if (!seen.add(key.name())) {
                breaches.add(named + " is there twice");
            }
        }
        return breaches;
    }

    private static boolean isWord(final String text) {
        return WORD.matcher(text).matches();
    }
}
