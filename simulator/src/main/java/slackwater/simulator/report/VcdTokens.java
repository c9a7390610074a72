package slackwater.simulator.report;

import java.io.IOException;
import java.io.Reader;

/** Splits a waveform file into words and knows the line of each. */
final class VcdTokens {
    private static final int LONGEST = 4096;

    private final Reader in;
    private final String file;
    private int line = 1;
    private int wordLine = 1;

    VcdTokens(final Reader in, final String file) {
        this.in = in;
        this.file = file;
    }

    /** The next word, or an empty text at the end of the file. */
    String next() throws IOException, VcdException {
        int each = in.read();
        while (each >= 0 && each <= ' ') {
            line += each == '\n' ? 1 : 0;
            each = in.read();
        }
        wordLine = line;
        final StringBuilder word = new StringBuilder();
        while (each > ' ') {
            if (word.length() == LONGEST) {
                throw mistake("a word of more than " + LONGEST + " characters", "give a waveform file (VCD, text)");
            }
            word.append((char) each);
            each = in.read();
        }
        line += each == '\n' ? 1 : 0;
        return word.toString();
    }

    /** The next word of a section that has to go on. */
    String within(final String section) throws IOException, VcdException {
        final String word = next();
        if (word.isEmpty()) {
            throw mistake("the file ends within " + section, "record it again, it is cut short");
        }
        return word;
    }

    /** Reads on to the end of a section. */
    void skip(final String section) throws IOException, VcdException {
        String word = within(section);
        while (!word.equals("$end")) {
            word = within(section);
        }
    }

    /** A mistake in the line of the last word. */
    VcdException mistake(final String what, final String todo) {
        return new VcdException(file + ":" + wordLine + ": " + what + "; " + todo);
    }

    /** A place to name in a warning. */
    String here() {
        return file + ":" + wordLine + ": ";
    }
}
