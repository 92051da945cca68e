package org.tankrounds.pages;

import java.util.List;

/**
 * What to do if, for the wall beside a tank.
 *
 * @param place school and room
 * @param about water, day, and that it is to be printed again
 * @param held the temperature that the hours are counted from
 * @param warmth by what is in the tank
 * @param columns of troubles, as they stand side by side
 * @param cautions of all that is done
 * @param calls whom to call, each with room for a number by hand
 */
public record WhatToDoPage(
        String title, String heading, String place, String about, String tankTo, String pdfTo, String held, String room,
        List<Warmth> warmth, List<List<Trouble>> columns, List<String> cautions, List<String> calls) implements Page {

    /**
     * @param now whether that is what is in the tank
     * @param ice that holds it for half a day
     */
    public record Warmth(String who, boolean now, String limit, String bareGlass, String foamed, String ice) {}

    public record Trouble(String name, List<String> steps, String caution) {}
}
