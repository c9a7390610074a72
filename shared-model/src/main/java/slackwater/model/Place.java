package slackwater.model;

import java.time.ZoneId;

/**
 * Where the rig stands, for dusk and for the local clock.
 *
 * @param latitudeDeg degrees north, -90 to 90
 * @param longitudeDeg degrees east, -180 to 180
 * @param zone the local time zone
 */
public record Place(double latitudeDeg, double longitudeDeg, ZoneId zone) {}
