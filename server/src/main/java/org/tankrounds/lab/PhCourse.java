package org.tankrounds.lab;

import org.tankrounds.tankmodel.TankState;

/** The pH of a tank as its world has it. */
final class PhCourse {

    /** Where pH drifts about (free choice): 7.6 at 100 mg/L of alkalinity, a tenth of that is 0.75 lower. */
    private static final double AT_100_MG_PER_L = 7.6;
    private static final double PER_DECADE = 0.75;
    private static final double LEAST_ALKALINITY_MG_PER_L = 0.5;
    private static final double USUAL_DIOXIDE_MG_PER_L = 4;
    private static final double RETURNS_PER_HOUR = 0.05;
    private static final double SHIFT_PER_HOUR = 0.025;
    private static final double BY_DAY = 0.06;
    private static final double LEAST_AIR = 0.4;

    private final boolean isDrifting;
    private final double dioxideMgPerL;
    private final double dioxidePerWaste;
    private double shift;
    private double byDay;

    PhCourse(Mechanics.Acidity acidity, double dioxideMgPerL, double dioxidePerWaste) {
        isDrifting = acidity == Mechanics.Acidity.DRIFTING;
        this.dioxideMgPerL = dioxideMgPerL;
        this.dioxidePerWaste = dioxidePerWaste;
    }

    PhCourse(PhCourse other) {
        isDrifting = other.isDrifting;
        dioxideMgPerL = other.dioxideMgPerL;
        dioxidePerWaste = other.dioxidePerWaste;
        shift = other.shift;
        byDay = other.byDay;
    }

    /** One hour on. */
    void pass(int clock, Luck luck) {
        if (isDrifting) {
            shift += SHIFT_PER_HOUR * luck.about("pH").normal() - RETURNS_PER_HOUR * shift;
            byDay = BY_DAY * StrictMath.sin((clock - 9) / 24.0 * 2 * Math.PI);
        }
    }

    /** @param air 1 where the aeration is sound */
    double of(TankState state, double wasteMgPerLDay, double air) {
        double dioxide = (dioxideMgPerL + dioxidePerWaste * wasteMgPerLDay) / Math.max(LEAST_AIR, air);
        if (!isDrifting) {
            return state.ph(dioxide);
        }
        double alkalinity = Math.max(LEAST_ALKALINITY_MG_PER_L, state.alkalinityMgPerL());
        return AT_100_MG_PER_L + PER_DECADE * StrictMath.log10(alkalinity / 100)
                - StrictMath.log10(dioxide / USUAL_DIOXIDE_MG_PER_L) / 2 + shift + byDay;
    }
}
