package org.tankrounds.summary;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.tankrounds.release.KeptBack;
import org.tankrounds.release.ReleaseDay;
import org.tankrounds.release.Site;
import org.tankrounds.stream.StreamGroup;
import org.tankrounds.stream.StreamSample;
import org.tankrounds.summary.Column.Kind;

/** The columns that workbook and data package share of what was seen at the water. Units stand in the names. */
final class WatersideColumns {
    private static final int TEMPERATURE_DECIMALS = 1;
    private static final int LENGTH_DECIMALS = 1;
    private static final int DECIMALS = 2;
    private static final int PLACE_DECIMALS = 6;

    /** Some animals of a look at a stream. */
    record Found(StreamLook look, StreamGroup group, int animals) {}

    /** Of a release, behind what the count tells of it. */
    static final List<Column<Release>> SEEN = seen();
    static final List<Column<StreamLook>> LOOKS = looks();

    private WatersideColumns() {}

    static List<Found> found(StreamLook look) {
        List<Found> found = new ArrayList<>();
        look.sample().counts().forEach((group, animals) -> found.add(new Found(look, group, animals)));
        return found;
    }

    private static List<Column<Release>> seen() {
        List<Column<Release>> columns = new ArrayList<>();
        columns.add(seen("box_temperature_deg_c", Kind.NUMBER, "Water of the box on arrival.",
                day -> rounded(day.boxC(), TEMPERATURE_DECIMALS)));
        columns.add(seen("stream_temperature_deg_c", Kind.NUMBER, "",
                day -> rounded(day.streamC(), TEMPERATURE_DECIMALS)));
        columns.add(seen("tempered_min", Kind.COUNT, "How long they were brought to the stream's temperature.",
                day -> day.temperedMinutes().isPresent() ? day.temperedMinutes().getAsInt() : null));
        columns.add(seen("lengths_measured", Kind.COUNT, "", day -> day.lengthsMm().size()));
        columns.add(seen("mean_length_mm", Kind.NUMBER, "From the mouth to the fork of the tail.",
                day -> rounded(day.meanLengthMm(), LENGTH_DECIMALS)));
        columns.add(seen("shortest_mm", Kind.NUMBER, "", day -> rounded(day.shortestMm(), LENGTH_DECIMALS)));
        columns.add(seen("longest_mm", Kind.NUMBER, "", day -> rounded(day.longestMm(), LENGTH_DECIMALS)));
        columns.add(kept("kept_back_too_small", KeptBack.SMALL));
        columns.add(kept("kept_back_ill_or_hurt", KeptBack.SICK));
        columns.add(kept("dead_on_arrival", KeptBack.DEAD));
        columns.add(kept("kept_back_else", KeptBack.REASON));
        return List.copyOf(columns);
    }

    private static List<Column<StreamLook>> looks() {
        List<Column<StreamLook>> columns = new ArrayList<>();
        columns.add(new Column<>("check", Kind.COUNT, "Number of the look.", look -> look.check().checkId()));
        columns.add(new Column<>("site", Kind.TEXT, "", look -> look.site().name()));
        columns.add(new Column<>("stream", Kind.TEXT, "", look -> look.site().details().water()));
        columns.add(new Column<>("latitude", Kind.NUMBER, "Degrees, WGS 84.", look -> place(look, Site.Point::north)));
        columns.add(new Column<>("longitude", Kind.NUMBER, "Degrees, WGS 84.", look -> place(look, Site.Point::east)));
        columns.add(new Column<>("elevation_m", Kind.NUMBER, "",
                look -> rounded(look.site().details().elevationM(), 0)));
        columns.add(new Column<>("looked_at_utc", Kind.TIME, "", look -> look.check().at()));
        columns.add(new Column<>("day", Kind.DAY, "On the chapter's calendar.", StreamLook::day));
        columns.add(new Column<>("temperature_deg_c", Kind.NUMBER, "WQX: Temperature, water; deg C.",
                look -> rounded(look.check().temperatureC(), TEMPERATURE_DECIMALS)));
        columns.add(new Column<>("ph", Kind.NUMBER, "WQX: pH.", look -> rounded(look.check().ph(), DECIMALS)));
        columns.add(new Column<>("dissolved_oxygen_mg_l", Kind.NUMBER, "WQX: Dissolved oxygen (DO); mg/L.",
                look -> rounded(look.check().oxygenMgPerL(), DECIMALS)));
        columns.add(new Column<>("dissolved_oxygen_saturation_percent", Kind.NUMBER,
                "Of what water of that temperature holds at that height.",
                look -> rounded(look.saturationPercent(), 0)));
        columns.add(new Column<>("animals", Kind.COUNT, "", look -> look.sample().animals()));
        addIndex(columns);
        addVolunteers(columns);
        return List.copyOf(columns);
    }

    private static void addIndex(List<Column<StreamLook>> columns) {
        columns.add(ofSample("family_biotic_index", Kind.NUMBER,
                "Hilsenhoff 1988, arthropods only; 0 clean to 10 foul.",
                sample -> sample.index().map(index -> Rounded.to(index.value(), DECIMALS)).orElse(null)));
        columns.add(ofSample("family_biotic_index_animals", Kind.COUNT, "Best of 100 or more.",
                sample -> sample.index().map(index -> index.animals()).orElse(null)));
        columns.add(ofSample("family_biotic_index_class", Kind.TEXT, "Of seven, excellent to very_poor.",
                sample -> sample.index().map(index -> SummaryColumns.code(index.water())).orElse(null)));
        columns.add(ofSample("ept_families", Kind.COUNT, "Families of mayflies, stoneflies and caddisflies.",
                StreamSample::eptFamilies));
    }

    private static void addVolunteers(List<Column<StreamLook>> columns) {
        columns.add(ofSample("kind_count", Kind.COUNT, "3 a sensitive, 2 a somewhat sensitive, 1 a tolerant kind.",
                sample -> sample.kindCount().points()));
        columns.add(ofSample("kind_count_class", Kind.TEXT, "",
                sample -> SummaryColumns.code(sample.kindCount().water())));
        columns.add(ofSample("group_score", Kind.NUMBER, "US EPA 1997, EPA 841-B-97-003.",
                sample -> Rounded.to(sample.groupScore().value(), DECIMALS)));
        columns.add(ofSample("group_score_class", Kind.TEXT, "",
                sample -> SummaryColumns.code(sample.groupScore().water())));
    }

    private static Column<Release> seen(String name, Kind kind, String about, Function<ReleaseDay, Object> value) {
        return new Column<>(name, kind, about, release -> release.seen().map(value).orElse(null));
    }

    private static Column<Release> kept(String name, KeptBack why) {
        return seen(name, Kind.COUNT, "", day -> day.kept().getOrDefault(why, 0));
    }

    /** What animals tell; nothing where nobody looked for them. */
    private static Column<StreamLook> ofSample(
            String name, Kind kind, String about, Function<StreamSample, Object> value) {
        return new Column<>(name, kind, about,
                look -> look.sample().animals() == 0 ? null : value.apply(look.sample()));
    }

    private static Object place(StreamLook look, Function<Site.Point, Double> degrees) {
        return look.site().details().point().map(degrees).map(known -> Rounded.to(known, PLACE_DECIMALS)).orElse(null);
    }

    private static Object rounded(OptionalDouble value, int decimals) {
        return value.isPresent() ? Rounded.to(value.getAsDouble(), decimals) : null;
    }
}
