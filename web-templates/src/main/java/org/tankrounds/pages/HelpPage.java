package org.tankrounds.pages;

import java.util.List;

/** How everything is worked out, in plain words. */
public record HelpPage(String title, List<Limit> limits, List<Nitrite> nitrite) implements Page {

    public record Limit(String name, String early, String feeding, String source) {}

    public record Nitrite(String chloride, String limit) {}
}
