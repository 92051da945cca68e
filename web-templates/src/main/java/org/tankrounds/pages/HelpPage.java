package org.tankrounds.pages;

import java.util.List;

/**
 * How everything is worked out, in plain words.
 *
 * @param tooWarm from which temperature on fish digest badly
 * @param room how warm a room is taken to be
 */
public record HelpPage(String title, List<Limit> limits, List<Nitrite> nitrite, String tooWarm, String room)
        implements Page {

    public record Limit(String name, String early, String feeding, String source) {}

    public record Nitrite(String chloride, String limit) {}
}
