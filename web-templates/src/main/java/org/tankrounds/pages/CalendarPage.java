package org.tankrounds.pages;

import java.util.List;

/**
 * What is ahead of a tank: dates, feed by week and room.
 *
 * @param place school and room
 * @param tank its code
 * @param seasonTo the same of all tanks; empty for who may not see it
 * @param saved what was just done; empty for nothing
 * @param older what fish are in the tank besides those of the newest eggs, a sentence for each age
 * @param datesOf whose dates they are; empty where the tank has eggs of one age only
 * @param feedingNote why the window of first feeding is as wide as it is; empty where it was seen
 * @param picture the dates on a line; null where there is no lot
 * @param see boxes of the form by which a class says what it saw; empty where it can say nothing
 * @param asked the day that is asked about; empty for none
 * @param room in a sentence how long there is room; empty where nothing feeds
 * @param leave whether the fish can leave before it is full; empty where there is nothing to say
 * @param byAge whether the weeks tell of which eggs fish are
 * @param basis what the numbers rest on, a sentence each
 */
public record CalendarPage(String title, String heading, String place, String tank, String seasonTo, String saved,
        String none, List<String> older, String datesOf, List<Date> dates, String feedingNote, Picture picture,
        List<FormField> see, String asked, String room, String leave, List<Way> ways, boolean byAge, List<Week> weeks,
        List<String> basis) implements Page {

    /**
     * @param basis where the date comes from
     * @param undo where it is taken back; empty of what nobody saw
     */
    public record Date(String name, String window, String basis, String undo) {}

    /** @param now empty where it is outside */
    public record Picture(List<Line> lines, List<Tick> months, String now) {}

    public record Line(String name, String words, List<Bar> bars) {}

    /** As shares of the line, such as 12.5%. */
    public record Bar(String kind, String x, String width) {}

    public record Tick(String x, String label) {}

    /** One way to make room. */
    public record Way(String name, String how, String caution) {}

    /**
     * @param fed the fish that feed, of each age
     * @param full how full the tank is, %
     * @param bound what fills first
     * @param over more than it can carry
     */
    public record Week(String from, String temperature, List<Fed> fed, String full, String bound, boolean over) {}

    /** @param eggs the day on which their eggs came; empty where all are of one age */
    public record Fed(String eggs, String length, String weight, String feed, String size) {}

    public List<FormField> errors() {
        return see.stream().filter(FormField::wrong).toList();
    }
}
