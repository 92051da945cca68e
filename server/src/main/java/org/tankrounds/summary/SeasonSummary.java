package org.tankrounds.summary;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A season in figures, per tank, school and chapter; every format prints this one record. It knows no clock: the same
 * rows make the same summary.
 *
 * @param tanks by school and room
 * @param schools each the sum of its tanks
 * @param chapter the sum of all
 * @param looks at streams, the oldest first
 */
record SeasonSummary(Heading heading, List<Row> tanks, List<Row> schools, Row chapter, List<StreamLook> looks) {

    record Heading(
            String chapterCode, String chapter, String seasonCode, String season, LocalDate startsOn,
            LocalDate endsOn, ZoneId zone) {}

    enum Level {
        TANK,
        SCHOOL,
        CHAPTER
    }

    /**
     * @param school empty for the chapter
     * @param classroom empty above the tank, as is the tank's code
     * @param zone on whose clock its days are printed
     */
    record Row(Level level, String schoolCode, String school, String classroom, String tank, ZoneId zone,
            Figures figures) {}

    /** Of a season, with none of its figures. */
    static SeasonSummary of(Heading heading) {
        return of(heading, List.of(), List.of());
    }

    static SeasonSummary of(Heading heading, List<Row> tanks, List<StreamLook> looks) {
        Map<String, Row> schools = new LinkedHashMap<>();
        Figures all = Figures.NONE;
        for (Row tank : tanks) {
            schools.merge(tank.schoolCode(),
                    new Row(Level.SCHOOL, tank.schoolCode(), tank.school(), "", "", tank.zone(), tank.figures()),
                    (one, other) -> new Row(Level.SCHOOL, one.schoolCode(), one.school(), "", "", one.zone(),
                            one.figures().plus(other.figures())));
            all = all.plus(tank.figures());
        }
        return new SeasonSummary(heading, List.copyOf(tanks), List.copyOf(schools.values()),
                new Row(Level.CHAPTER, "", "", "", "", heading.zone(), all), List.copyOf(looks));
    }

    /** Tanks, then schools, then the chapter. */
    List<Row> rows() {
        List<Row> rows = new ArrayList<>(tanks);
        rows.addAll(schools);
        rows.add(chapter);
        return rows;
    }
}
