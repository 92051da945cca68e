package org.tankrounds.lab;

import java.util.Map;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.Stage;

/** The eggs, then fish, of one tank: they grow by warmth, feed, and die of the water and of what nobody sees. */
final class Shoal {

    private static final double SWIM_UP_G = 0.15;
    /** Warmer than so they grow no faster, °C. */
    private static final double FASTEST_GROWTH_C = 17;
    private static final double ILLNESS_SHARE_PER_DAY = 0.03;

    private final Map<Trait, Double> traits;
    private final Luck luck;
    private double weightRoot = StrictMath.cbrt(SWIM_UP_G);
    private double thermalUnitsC;
    private int illDays;
    private int alive;

    Shoal(Map<Trait, Double> traits, Luck luck) {
        this.traits = traits;
        this.luck = luck;
        thermalUnitsC = of(Trait.THERMAL_UNITS_C);
        alive = eggs();
    }

    /** The same fish, with other luck. */
    Shoal(Shoal other, Luck luck) {
        this.luck = luck;
        traits = other.traits;
        weightRoot = other.weightRoot;
        thermalUnitsC = other.thermalUnitsC;
        illDays = other.illDays;
        alive = other.alive;
    }

    private double of(Trait trait) {
        return traits.get(trait);
    }

    int eggs() {
        return (int) of(Trait.EGGS);
    }

    int alive() {
        return alive;
    }

    boolean feeds() {
        return thermalUnitsC >= Development.FIRST_FEEDING_C_DAYS;
    }

    Stage stage() {
        return feeds() ? Stage.FEEDING : Stage.SAC_FRY;
    }

    double fishG() {
        return weightRoot * weightRoot * weightRoot;
    }

    /** Feed for so many times what they are meant to be given at once. */
    double rationG(double times) {
        return times * of(Trait.RATION) * alive * fishG();
    }

    void grow(double temperatureC, double days) {
        thermalUnitsC += Math.max(0, temperatureC) * days;
        if (feeds()) {
            weightRoot += of(Trait.GROWTH) * Math.max(0, Math.min(FASTEST_GROWTH_C, temperatureC)) * days;
        }
    }

    /**
     * Who has died. More die in bad water, and now and then many at once of something else.
     *
     * @param excess beyond the limits, over the day
     */
    int deaths(double excess) {
        illDays = luck.about("illness").happens(of(Trait.ILLNESS_PER_DAY))
                ? luck.between(2, 8) : Math.max(0, illDays - 1);
        double share = of(Trait.USUAL_DEATHS) * luck.about("deaths").between(0.3, 1.7)
                + of(Trait.EXCESS_DEATHS) * Math.min(4, excess)
                + (illDays > 0 ? ILLNESS_SHARE_PER_DAY * luck.uniform() : 0);
        int dead = luck.count(alive, Math.min(0.5, share));
        alive -= dead;
        return dead;
    }
}
