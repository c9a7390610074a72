package slackwater.simulator.visitor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slackwater.model.Walkers;

/** Collects the lines of one file of measured positions, and makes visitors of them. */
final class WalkerLines {
    private static final Pattern RATE =
            Pattern.compile("#\\s*framerate\\s*[:=]\\s*(.*)", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final double NS_PER_S = 1e9;
    private static final int COLUMNS = 5;
    /** Keeps times in a long, and a mistyped number out. */
    private static final double WHOLE_MAX = 100_000_000;

    private static final double HEIGHT_MIN_M = 0.3;
    private static final double HEIGHT_MAX_M = 2.5;
    private static final double FAR_M = 10_000;
    /** Taken for people of whom the file gives no height (common practice, no source). */
    private static final double HEIGHT_ASSUMED_M = 1.7;
    /** Below this somebody is taken for a small child (common practice, no source). */
    private static final double SMALL_BELOW_M = 1.2;

    private final String file;
    private final Walkers settings;
    private final Map<Integer, List<Row>> rowsById = new LinkedHashMap<>();
    private final double turnCosine;
    private final double turnSine;
    private OptionalDouble ratePerS = OptionalDouble.empty();
    private int rateLine;
    private int lineNumber;
    private boolean lacksHeights;

    private record Row(int line, int frame, double xM, double yM, double heightM) {}

    WalkerLines(final String file, final Walkers settings) {
        if (!(settings.framesPerSecond() > 0) || !(settings.metresPerUnit() > 0)) {
            throw new IllegalArgumentException("rate and unit must be above 0 but were " + settings);
        }
        this.file = file;
        this.settings = settings;
        final double turnRad = StrictMath.toRadians(settings.turnDeg());
        this.turnCosine = StrictMath.cos(turnRad);
        this.turnSine = StrictMath.sin(turnRad);
    }

    void add(final String raw) throws WalkerFileMistake {
        lineNumber++;
        final String line = raw.strip();
        if (line.startsWith("#")) {
            addHeader(line);
        } else if (!line.isEmpty()) {
            addRow(BLANKS.split(line));
        }
    }

    private void addHeader(final String line) throws WalkerFileMistake {
        final Matcher rate = RATE.matcher(line);
        if (!rate.matches()) {
            return;
        }
        final String text = BLANKS.split(rate.group(1).strip() + " ")[0];
        final double perS = number(text, "a frame rate");
        if (!(perS > 0 && perS <= 1000)) {
            throw mistake("a frame rate of " + text + "; give frames a second, above 0 and up to 1000");
        }
        if (ratePerS.isPresent() && ratePerS.getAsDouble() != perS) {
            throw mistake(
                    "a second frame rate, " + text + "; line " + rateLine + " has another; leave one of them out");
        }
        ratePerS = OptionalDouble.of(perS);
        rateLine = lineNumber;
    }

    private void addRow(final String[] words) throws WalkerFileMistake {
        if (words.length != COLUMNS) {
            throw mistake("five numbers are wanted, id frame x y height, but here are " + words.length);
        }
        final int id = whole(words[0], "an id");
        final int frame = whole(words[1], "a frame");
        final double xM = number(words[2], "x") * settings.metresPerUnit();
        final double yM = number(words[3], "y") * settings.metresPerUnit();
        final double heightM = heightM(words[4]);
        if (StrictMath.abs(xM) > FAR_M || StrictMath.abs(yM) > FAR_M) {
            throw mistake(text(
                    "a place %.0f m away; correct it, or the unit, which is taken as %s m",
                    StrictMath.max(StrictMath.abs(xM), StrictMath.abs(yM)), settings.metresPerUnit()));
        }
        rowsById.computeIfAbsent(id, ignored -> new ArrayList<>())
                .add(new Row(lineNumber, frame, xOnPlanM(xM, yM), yOnPlanM(xM, yM), heightM));
    }

    private double heightM(final String word) throws WalkerFileMistake {
        final double heightM = number(word, "a height") * settings.metresPerUnit();
        if (heightM == 0) {
            lacksHeights = true;
            return HEIGHT_ASSUMED_M;
        }
        if (heightM < HEIGHT_MIN_M || heightM > HEIGHT_MAX_M) {
            throw mistake(text(
                    "a height of %.3f m; people have %.1f to %.1f m, so give the file's own unit instead of %s m",
                    heightM, HEIGHT_MIN_M, HEIGHT_MAX_M, settings.metresPerUnit()));
        }
        return heightM;
    }

    private double xOnPlanM(final double xM, final double yM) {
        return turnCosine * xM - turnSine * yM + settings.moveBy().xM();
    }

    private double yOnPlanM(final double xM, final double yM) {
        return turnSine * xM + turnCosine * yM + settings.moveBy().yM();
    }

    Crowd crowd() throws WalkerFileMistake {
        if (rowsById.isEmpty()) {
            throw new WalkerFileMistake(file + ": no positions in it; lines of id frame x y height are wanted");
        }
        final int firstFrame = rowsById.values().stream()
                .flatMap(List::stream)
                .mapToInt(Row::frame)
                .min()
                .orElseThrow();
        final List<Visitor> visitors = new ArrayList<>();
        for (final Map.Entry<Integer, List<Row>> person : rowsById.entrySet()) {
            final List<Row> rows = new ArrayList<>(person.getValue());
            rows.sort(Comparator.comparingInt(Row::frame));
            visitors.add(visitor(person.getKey(), rows, firstFrame));
        }
        return Crowd.of(visitors);
    }

    /** Somebody seen in one frame only is there for one frame's time. */
    private Visitor visitor(final int id, final List<Row> rows, final int firstFrame) throws WalkerFileMistake {
        final int count = StrictMath.max(2, rows.size());
        final long[] atNs = new long[count];
        final double[] xM = new double[count];
        final double[] yM = new double[count];
        for (int i = 0; i < count; i++) {
            final Row row = rows.get(StrictMath.min(i, rows.size() - 1));
            final int frame = i < rows.size() ? row.frame() : row.frame() + 1;
            if (i > 0 && i < rows.size() && frame == rows.get(i - 1).frame()) {
                throw new WalkerFileMistake(file + ":" + row.line() + ": person " + id + " is in frame " + frame
                        + " already, at line " + rows.get(i - 1).line() + "; leave one of them out");
            }
            atNs[i] = StrictMath.round((frame - firstFrame) * NS_PER_S / ratePerS());
            xM[i] = row.xM();
            yM[i] = row.yM();
        }
        final double heightM = rows.get(0).heightM();
        final Being being = heightM < SMALL_BELOW_M ? Being.SMALL_CHILD : Being.ADULT;
        return Visitor.of(new Visitor.Body(id, id, being, heightM), atNs, xM, yM);
    }

    private double ratePerS() {
        return ratePerS.orElse(settings.framesPerSecond());
    }

    List<String> notes() {
        final List<String> notes = new ArrayList<>();
        final double given = settings.framesPerSecond();
        if (ratePerS.isEmpty()) {
            notes.add(text("%s: does not say its frame rate; taken as %s frames a second, as set", file, given));
        } else if (ratePerS.getAsDouble() == given) {
            notes.add(text("%s: %s frames a second, as its line %d says", file, given, rateLine));
        } else {
            notes.add(text(
                    "%s: %s frames a second, as its line %d says, and not %s, as set",
                    file, ratePerS.getAsDouble(), rateLine, given));
        }
        if (lacksHeights) {
            notes.add(text("%s: has heights of 0; taken as %s m", file, HEIGHT_ASSUMED_M));
        }
        return notes;
    }

    private int whole(final String word, final String what) throws WalkerFileMistake {
        final double value = number(word, what);
        if (value != StrictMath.rint(value) || StrictMath.abs(value) > WHOLE_MAX) {
            throw mistake(what + " must be a whole number but is " + shown(word));
        }
        return (int) value;
    }

    private double number(final String word, final String what) throws WalkerFileMistake {
        try {
            final double value = Double.parseDouble(word);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (final NumberFormatException notANumber) {
            throw mistake(what + " must be a number but is " + shown(word));
        }
        throw mistake(what + " must be a number but is " + shown(word));
    }

    /** Kept short and printable: the file may be anything. */
    private static String shown(final String word) {
        final String start = word.length() > 30 ? word.substring(0, 30) + "..." : word;
        return "\"" + start.replaceAll("\\p{Cntrl}", "?") + "\"";
    }

    private WalkerFileMistake mistake(final String what) {
        return new WalkerFileMistake(file + ":" + lineNumber + ": " + what);
    }

    private static String text(final String format, final Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
