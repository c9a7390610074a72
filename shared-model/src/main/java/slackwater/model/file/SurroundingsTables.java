package slackwater.model.file;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.model.Air;
import slackwater.model.Arming;
import slackwater.model.Circuit;
import slackwater.model.LedgerRules;
import slackwater.model.Place;
import slackwater.model.Point;
import slackwater.model.Supply;
import slackwater.model.WalkWay;
import slackwater.model.Walkers;
import slackwater.model.Weather;
import slackwater.model.Zone;
import slackwater.model.finding.Findings.Words;
import slackwater.model.quantity.Dimension;

/** Reads the tables of what stands around a rig, from {@code [place]} to {@code [supply.NAME]}, and {@code [arming]}. */
final class SurroundingsTables {
    private static final double POLE_DEG = 90;
    private static final double DATE_LINE_DEG = 180;
    private static final double MOST_GROUPS = 10_000;

    private SurroundingsTables() {}

    static Optional<Place> place(final TableReader reader) {
        final String why = "dusk and the local clock depend on it";
        reader.require("latitude", why, "add latitude = 54.1 (degrees north)");
        reader.require("longitude", why, "add longitude = -3.2 (degrees east)");
        final double latitude = reader.number("latitude", -POLE_DEG, POLE_DEG).orElse(0.0);
        final double longitude =
                reader.number("longitude", -DATE_LINE_DEG, DATE_LINE_DEG).orElse(0.0);
        final String zone = reader.required("time-zone", why, "add time-zone = \"Europe/London\"");
        final Optional<ZoneId> zoneId = zoneId(zone);
        if (zoneId.isEmpty() && !zone.isEmpty()) {
            reader.unknownWord(
                    "time-zone",
                    zone,
                    ZoneId.getAvailableZoneIds().stream().sorted().toList());
        }
        reader.finish();
        return zoneId.map(known -> new Place(latitude, longitude, known));
    }

    static Optional<WalkWay> way(final TableReader reader) {
        final String why = "visitors walk along it";
        reader.require("points", why, "add points = [[\"0 m\", \"0 m\"], [\"12 m\", \"0 m\"]]");
        reader.require("width", why, "add width = \"1.8 m\"");
        reader.require("groups-per-hour", why, "add groups-per-hour = 30");
        final List<Point> points = reader.points("points");
        if (reader.has("points") && points.size() < 2) {
            reader.wrongType(
                    "points", "a list of at least two points, such as [[\"0 m\", \"0 m\"], [\"9 m\", \"0 m\"]]");
        }
        final double width = reader.si("width", Dimension.LENGTH);
        final double groups = reader.number("groups-per-hour", 0, MOST_GROUPS).orElse(0.0);
        reader.finish();
        return Optional.of(new WalkWay(points, width, groups));
    }

    static Optional<Air> air(final TableReader reader) {
        for (final String key : List.of("tank", "cut-in", "cut-out", "delivers", "working")) {
            reader.require(
                    key, "whether the air suffices depends on it", "add " + key + ", from the compressor's plate");
        }
        final Air air = new Air(
                reader.si("tank", Dimension.VOLUME),
                reader.si("cut-in", Dimension.PRESSURE),
                reader.si("cut-out", Dimension.PRESSURE),
                reader.si("delivers", Dimension.VOLUME_FLOW),
                reader.si("working", Dimension.PRESSURE),
                plate(reader));
        if (reader.has("cut-in") && reader.has("cut-out") && air.cutInPa() >= air.cutOutPa()) {
            reader.error(
                    "cut-in-above-cut-out",
                    "cut-in",
                    new Words(
                            "the compressor starts at or above the pressure at which it stops",
                            "cut-in is the lower of the two pressures",
                            "write the lower pressure in cut-in and the higher in cut-out"));
        }
        reader.finish();
        return Optional.of(air);
    }

    private static Air.Plate plate(final TableReader reader) {
        return new Air.Plate(
                optional(reader, "flow", Dimension.VOLUME_FLOW),
                optional(reader, "leak", Dimension.VOLUME_FLOW),
                reader.parsed("starts", Texts.STARTS, Texts::starts),
                share(reader, "duty"),
                LoadKeys.load(reader));
    }

    /** {@code [weather]}: what is left out is as usual. */
    static Optional<Weather> weather(final TableReader reader) {
        final Weather usual = Weather.USUAL;
        final Weather weather = new Weather(
                optional(reader, "temperature", Dimension.TEMPERATURE).orElse(usual.temperatureC()),
                share(reader, "humidity").orElse(usual.humidity()),
                optional(reader, "wind", Dimension.SPEED).orElse(usual.windMPerS()),
                optional(reader, "wind-from", Dimension.ANGLE).orElse(usual.windFromDeg()));
        reader.finish();
        return Optional.of(weather);
    }

    /** {@code [circuit.NAME]}. */
    static Circuit circuit(final String name, final TableReader reader) {
        final String why = "what it carries is judged by it";
        reader.require("voltage", why, "add voltage = \"230 V\"");
        reader.require("breaker", why, "add breaker = \"16 A\", its rating");
        final Circuit circuit = new Circuit(
                name,
                above0(reader, "voltage", Dimension.VOLTAGE),
                above0(reader, "breaker", Dimension.CURRENT),
                optional(reader, "ground-fault", Dimension.CURRENT),
                reader.si("others", Dimension.CURRENT));
        reader.finish();
        return circuit;
    }

    /** {@code [supply.NAME]}. */
    static Supply supply(final String name, final TableReader reader) {
        final String why = "what it can carry is judged by it";
        reader.require("voltage", why, "add voltage = \"12 V\"");
        reader.require("gives", why, "add gives = \"10 A\", from its plate");
        final Supply supply = new Supply(
                name,
                above0(reader, "voltage", Dimension.VOLTAGE),
                above0(reader, "gives", Dimension.CURRENT),
                reader.name("fed-by", Context.Thing.CIRCUIT),
                share(reader, "efficiency"));
        reader.finish();
        return supply;
    }

    private static OptionalDouble optional(final TableReader reader, final String key, final Dimension dimension) {
        return reader.quantity(key, dimension)
                .map(quantity -> OptionalDouble.of(quantity.si()))
                .orElse(OptionalDouble.empty());
    }

    /** A share above 0 and at most 1. */
    private static OptionalDouble share(final TableReader reader, final String key) {
        final OptionalDouble share = optional(reader, key, Dimension.RATIO);
        if (share.isPresent() && !(share.getAsDouble() > 0 && share.getAsDouble() <= 1)) {
            reader.error(
                    "out-of-range",
                    key,
                    new Words(
                            "\"" + key + "\" is " + Texts.plain(share.getAsDouble() * 100) + " %",
                            "a share of a whole is above 0 % and at most 100 %",
                            "write " + key + " = \"60 %\", or leave it out"));
            return OptionalDouble.empty();
        }
        return share;
    }

    private static double above0(final TableReader reader, final String key, final Dimension dimension) {
        final double value = reader.si(key, dimension);
        if (reader.has(key) && value <= 0) {
            reader.error(
                    "out-of-range",
                    key,
                    new Words("\"" + key + "\" is 0", "nothing could be fed from it", "write what its plate says"));
        }
        return value;
    }

    static Optional<Walkers> walkers(final TableReader reader) {
        final String why = "a recording is only numbers until it says which";
        reader.require("rate", why, "add rate = \"16 Hz\"");
        reader.require("unit", why, "add unit = \"1 cm\"");
        final Walkers walkers = new Walkers(
                reader.si("rate", Dimension.FREQUENCY),
                reader.si("unit", Dimension.LENGTH),
                reader.si("turn", Dimension.ANGLE),
                reader.point("move-by").orElse(new Point(0, 0)));
        reader.finish();
        return Optional.of(walkers);
    }

    static Arming arming(final TableReader reader) {
        final Arming arming = new Arming(
                reader.duration("warning").orElse(Arming.USUAL.warning()),
                reader.names("warns-with", Context.Thing.OUTPUT),
                reader.duration("air-settles").orElse(Duration.ZERO));
        reader.finish();
        return arming;
    }

    static LedgerRules ledger(final TableReader reader) {
        final double warnAt = share(reader, "warn-at").orElse(LedgerRules.USUAL.warnAt());
        if (warnAt >= 1) {
            reader.error(
                    "out-of-range",
                    "warn-at",
                    new Words(
                            "the ledger would warn of a bottle that is still full",
                            "a warning is meant to leave the time to fetch a full one",
                            "write a share between 0 % and 100 %, such as warn-at = \"20 %\""));
        }
        reader.finish();
        return new LedgerRules(warnAt);
    }

    static Zone zone(final String name, final TableReader reader) {
        final Zone zone = new Zone(
                name,
                reader.word("when-alone", Choices.of(Zone.WhenAlone.class)).orElse(Zone.WhenAlone.REST),
                reader.flag("hard-wired-stop"));
        reader.finish();
        return zone;
    }

    private static Optional<ZoneId> zoneId(final String text) {
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(ZoneId.of(text));
        } catch (final DateTimeException unknown) {
            return Optional.empty();
        }
    }
}
