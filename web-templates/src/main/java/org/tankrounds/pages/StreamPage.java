package org.tankrounds.pages;

import java.util.List;

/**
 * One look at a stream, and what it tells.
 *
 * @param by when, and who wrote it down
 * @param forFish what the water says of a release
 * @param outside who is counted and in no index; empty for nobody
 * @param withdraw where it is taken back; empty for who may not
 */
public record StreamPage(String title, String site, String siteTo, String by, List<Reading> water, String forFish,
        List<Result> results, String outside, List<Found> found, String animals, String note, String withdraw)
        implements Page {

    public record Reading(String name, String value, String detail) {}

    /** @param means what the number says, and what it does not */
    public record Result(String name, String value, String means) {}

    public record Found(String name, String animals, List<String> sketch) {}
}
