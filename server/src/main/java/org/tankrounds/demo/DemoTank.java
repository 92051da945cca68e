package org.tankrounds.demo;

import java.time.LocalTime;

/**
 * An invented tank. Everything that happens in it is told relative to the day on which the demo is loaded.
 *
 * @param key never shown; keeps the tank's luck apart from that of the others
 * @param classroom what stands on the door
 * @param teacher which of the chapter's teachers looks after it, counted from 0
 */
record DemoTank(
        String key,
        String classroom,
        int teacher,
        Equipment equipment,
        Water water,
        Eggs eggs,
        Routine routine,
        Story story) {

    /**
     * @param thermometerUnit UCUM code in which the class reads
     * @param probe whether a probe sends the temperature every two hours
     * @param oxygenKit whether the class also tests oxygen
     */
    record Equipment(
            double volumeL, double setPointC, String filterKind, String thermometerUnit, boolean probe,
            boolean oxygenKit) {}

    /**
     * Of the tap.
     *
     * @param carbonDioxideMgPerL what the tank's aeration leaves in it
     */
    record Water(
            double alkalinityMgPerL, double chlorideMgPerL, String disinfectant, double carbonDioxideMgPerL) {}

    record Eggs(int count, int daysAgo, double thermalUnitsC) {}

    /**
     * @param by how the class signs its readings
     * @param at when in the day it reads
     * @param readShare of the school days on which it does
     * @param changeShare of the water, at each change
     * @param changeEveryDays days between changes
     */
    record Routine(String by, LocalTime at, double readShare, double changeShare, int changeEveryDays) {}
}
