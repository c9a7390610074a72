package slackwater.simulator.report;

import java.util.Locale;

/** Small pieces of SVG and HTML text. Numbers have at most one decimal, so that a long evening stays small. */
final class Svg {
    private Svg() {}

    static String px(final double value) {
        final long tenths = Math.round(value * 10);
        return tenths % 10 == 0
                ? Long.toString(tenths / 10)
                : String.format(
                        Locale.ROOT, "%s%d.%d", tenths < 0 ? "-" : "", Math.abs(tenths / 10), Math.abs(tenths % 10));
    }

    /** A box as part of a path. */
    static String box(final double leftPx, final double topPx, final double widthPx, final double heightPx) {
        return "M" + px(leftPx) + " " + px(topPx) + "h" + px(widthPx) + "v" + px(heightPx) + "h" + px(-widthPx) + "z";
    }

    static String path(final String style, final String data) {
        return data.isEmpty() ? "" : "<path class=\"" + style + "\" d=\"" + data + "\"/>\n";
    }

    static String words(final String style, final double xPx, final double yPx, final String text) {
        return "<text class=\"" + style + "\" x=\"" + px(xPx) + "\" y=\"" + px(yPx) + "\">" + escaped(text)
                + "</text>\n";
    }

    /** Text that stands for itself in HTML; other control characters than line feeds become question marks. */
    static String escaped(final String text) {
        final StringBuilder safe = new StringBuilder(text.length());
        for (int at = 0; at < text.length(); at++) {
            final char each = text.charAt(at);
            switch (each) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.append(each < ' ' && each != '\n' ? '?' : each);
            }
        }
        return safe.toString();
    }
}
