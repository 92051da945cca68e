package org.tankrounds.pages;

import java.util.List;
import org.tankrounds.pages.CalendarPage.Bar;
import org.tankrounds.pages.CalendarPage.Tick;

/**
 * What is ahead of every tank of a season.
 *
 * @param season its name
 * @param seasonTo its page; empty for who may not see it
 * @param now where today is on the line; empty where it is outside
 */
public record SeasonCalendarPage(String title, String season, String seasonTo, List<Row> rows, List<Tick> months,
        String now, String note) implements Page {

    /**
     * @param next what comes next, and when
     * @param room how long there is room; empty where nothing is to be said
     * @param over there is not
     * @param words what the bars say
     */
    public record Row(String school, String room, String to, String next, String release, String carries, boolean over,
            List<Bar> bars, String words) {}
}
