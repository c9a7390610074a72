package slackwater.model;

import java.util.List;

/**
 * The way visitors take through the yard.
 *
 * @param points corners of its middle line, at least two
 * @param widthM its width, metres
 * @param groupsPerHour how many groups come in an hour, for drawn visitors
 */
public record WalkWay(List<Point> points, double widthM, double groupsPerHour) {
    public WalkWay {
        points = List.copyOf(points);
    }
}
