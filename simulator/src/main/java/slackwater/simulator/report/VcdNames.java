package slackwater.simulator.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** How names of a rig are written in a waveform file: as simple identifiers (IEEE 1364-2005, 3.7). */
public final class VcdNames {
    private static final int CODES = '~' - '!' + 1;

    private VcdNames() {}

    /** {@code clam-lid} becomes {@code clam_lid}; what is no letter, digit or dollar sign becomes a low line. */
    public static String identifier(final String name) {
        final StringBuilder text = new StringBuilder(name.length() + 1);
        for (int at = 0; at < name.length(); at++) {
            final char each = name.charAt(at);
            text.append(isWordCharacter(each) ? each : '_');
        }
        if (text.length() == 0 || Character.isDigit(text.charAt(0)) || text.charAt(0) == '$') {
            text.insert(0, '_');
        }
        return text.toString();
    }

    /** Whether a name in a recorded file means this name of the rig, however the recording tool wrote its hyphens. */
    public static boolean isSame(final String rigName, final String recordedName) {
        return identifier(rigName).equalsIgnoreCase(identifier(recordedName));
    }

    /** One identifier for each lane, unique within its group. A cue may be named as an output is. */
    static List<String> of(final List<Lane> lanes) {
        final Set<String> taken = new HashSet<>();
        final List<String> names = new ArrayList<>();
        for (final Lane lane : lanes) {
            final String plain = identifier(lane.name());
            String name = plain;
            if (!taken.add(lane.group() + "/" + name)) {
                name = plain + "_" + lane.sort().name().toLowerCase(Locale.ROOT);
                for (int count = 2; !taken.add(lane.group() + "/" + name); count++) {
                    name = plain + "_" + count;
                }
            }
            names.add(name);
        }
        return List.copyOf(names);
    }

    /** The short code that stands for a lane in the changes: printable characters from ! to ~ (18.2.1). */
    static String code(final int lane) {
        final StringBuilder text = new StringBuilder();
        int rest = lane;
        do {
            text.append((char) ('!' + rest % CODES));
            rest = rest / CODES - 1;
        } while (rest >= 0);
        return text.toString();
    }

    private static boolean isWordCharacter(final char each) {
        return (each >= 'a' && each <= 'z')
                || (each >= 'A' && each <= 'Z')
                || (each >= '0' && each <= '9')
                || each == '_'
                || each == '$';
    }
}
