package org.tankrounds.belief;

/**
 * How the class changes water, as seen over the last four weeks.
 *
 * @param perSchoolDay chance of a change on a school day
 * @param share mean share of the volume replaced, 0 to 1
 */
public record WaterRoutine(double perSchoolDay, double share) {

    /** Nobody noted a change. */
    public static final WaterRoutine NONE = new WaterRoutine(0, 0);
}
