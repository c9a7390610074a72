package slackwater.controller.disk;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slackwater.controller.latch.Kept;

/**
 * What outlives a restart, as text that a person can read: one fact a line, and a checksum (SHA-256) over all before it as the
 * last. Anything that is not exactly so is unreadable, and unreadable counts as locked out (S5).
 */
final class KeptText {
    private static final String TITLE = "slackwater latches 1";
    private static final String LATCHED = "latched";
    private static final String LOCKOUT = "lockout";
    private static final String SPENT = "spent";
    private static final String OPENED = "opened-day";
    private static final String SUM = "sum";
    private static final char TAB = '\t';
    private static final String END = "\n";

    private KeptText() {}

    static byte[] write(final Kept kept) {
        final StringBuilder text = new StringBuilder(TITLE).append(END);
        kept.latched().forEach(what -> line(text, LATCHED, what));
        kept.lockouts().forEach((target, people) -> people.forEach(person -> line(text, LOCKOUT, target, person)));
        kept.spent().forEach(what -> line(text, SPENT, what));
        line(text, OPENED, Long.toString(kept.openedDay()));
        final String sum = sum(text.toString());
        line(text, SUM, sum);
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    static Optional<Kept> read(final byte[] content) {
        final String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content))
                    .toString();
        } catch (final CharacterCodingException broken) {
            return Optional.empty();
        }
        final int sumAt = text.lastIndexOf(END + SUM + TAB) + 1;
        if (sumAt == 0
                || !text.startsWith(TITLE + END)
                || !text.substring(sumAt).equals(SUM + TAB + sum(text.substring(0, sumAt)) + END)) {
            return Optional.empty();
        }
        return facts(text.substring(TITLE.length() + 1, sumAt).lines().toList());
    }

    private static Optional<Kept> facts(final List<String> lines) {
        final List<String> latched = new ArrayList<>();
        final Map<String, List<String>> lockouts = new TreeMap<>();
        final List<String> spent = new ArrayList<>();
        Optional<Long> opened = Optional.empty();
        for (final String line : lines) {
            final List<String> words = words(line);
            final String key = words.get(0) + " " + words.size();
            switch (key) {
                case LATCHED + " 2" -> latched.add(words.get(1));
                case LOCKOUT + " 3" ->
                    lockouts.computeIfAbsent(words.get(1), target -> new ArrayList<>())
                            .add(words.get(2));
                case SPENT + " 2" -> spent.add(words.get(1));
                case OPENED + " 2" -> opened = number(words.get(1));
                default -> {
                    return Optional.empty();
                }
            }
        }
        return opened.map(day -> new Kept(latched, lockouts, spent, day));
    }

    private static Optional<Long> number(final String word) {
        try {
            return Optional.of(Long.valueOf(word));
        } catch (final NumberFormatException broken) {
            return Optional.empty();
        }
    }

    private static void line(final StringBuilder text, final String... words) {
        for (int i = 0; i < words.length; i++) {
            text.append(i == 0 ? "" : TAB).append(i == 0 ? words[i] : escaped(words[i]));
        }
        text.append(END);
    }

    /** Names are a person's: a tab or a line's end in one must not become a fact of its own. */
    private static String escaped(final String word) {
        return word.replace("\\", "\\\\")
                .replace("\t", "\\t")
                .replace("\n", "\\n")
                .replace("\r", "\\r");
    }

    private static List<String> words(final String line) {
        final List<String> words = new ArrayList<>();
        final StringBuilder word = new StringBuilder();
        for (int i = 0; i < line.length(); i++) {
            final char now = line.charAt(i);
            if (now == TAB) {
                words.add(word.toString());
                word.setLength(0);
            } else if (now == '\\' && i + 1 < line.length()) {
                i++;
                word.append(unescaped(line.charAt(i)));
            } else {
                word.append(now);
            }
        }
        words.add(word.toString());
        return words;
    }

    private static char unescaped(final char letter) {
        return switch (letter) {
            case 't' -> TAB;
            case 'n' -> '\n';
            case 'r' -> '\r';
            default -> letter;
        };
    }

    private static String sum(final String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (final NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
