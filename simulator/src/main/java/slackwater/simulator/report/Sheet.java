package slackwater.simulator.report;

/** The frame of a page that needs nothing beside it. */
public final class Sheet {
    private Sheet() {}

    /** A whole page around a body that is HTML already. */
    public static String page(final String title, final String body) {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n<title>"
                + Svg.escaped(title) + "</title>\n<style>\n" + PageStyle.css() + "</style>\n</head>\n<body>\n" + body
                + "</body>\n</html>\n";
    }

    /** Text that stands for itself in HTML. */
    public static String escaped(final String text) {
        return Svg.escaped(text);
    }
}
