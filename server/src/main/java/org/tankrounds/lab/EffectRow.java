package org.tankrounds.lab;

import java.util.Locale;
import org.tankrounds.forecast.Effect;

/** What one act was said to do and what it did, over many mornings; means of each. */
public final class EffectRow {

    private final String act;
    private int cases;
    private double saidWithout;
    private double saidWith;
    private double cameWithout;
    private double cameWith;
    private double saidHarmWithout;
    private double saidHarmWith;
    private double harmWithout;
    private double harmWith;
    private int madeWorse;

    EffectRow(String act) {
        this.act = act;
    }

    void add(Effect said, boolean beyondWithout, boolean beyondWith, double exposureWithout, double exposureWith) {
        cases++;
        saidWithout += said.chanceWithout();
        saidWith += said.chanceWith();
        cameWithout += beyondWithout ? 1 : 0;
        cameWith += beyondWith ? 1 : 0;
        saidHarmWithout += said.exposureWithout();
        saidHarmWith += said.exposureWith();
        harmWithout += exposureWithout;
        harmWith += exposureWith;
        madeWorse += beyondWith && !beyondWithout ? 1 : 0;
    }

    /** The same act's rows of several worlds in one. */
    EffectRow plus(EffectRow other) {
        EffectRow sum = new EffectRow(act);
        for (EffectRow each : new EffectRow[] {this, other}) {
            sum.cases += each.cases;
            sum.saidWithout += each.saidWithout;
            sum.saidWith += each.saidWith;
            sum.cameWithout += each.cameWithout;
            sum.cameWith += each.cameWith;
            sum.saidHarmWithout += each.saidHarmWithout;
            sum.saidHarmWith += each.saidHarmWith;
            sum.harmWithout += each.harmWithout;
            sum.harmWith += each.harmWith;
            sum.madeWorse += each.madeWorse;
        }
        return sum;
    }

    public String act() {
        return act;
    }

    public int cases() {
        return cases;
    }

    /** Share of the mornings after which the tank went beyond a limit though nobody stepped in. */
    public double beyondWithout() {
        return cameWithout / cases;
    }

    public double beyondWith() {
        return cameWith / cases;
    }

    public double saidWithout() {
        return saidWithout / cases;
    }

    public double saidWith() {
        return saidWith / cases;
    }

    /** Mean true exposure, fish-hours. */
    public double harmWithout() {
        return harmWithout / cases;
    }

    public double harmWith() {
        return harmWith / cases;
    }

    /** Share of the mornings on which the act alone brought a tank beyond a limit. */
    public double madeWorse() {
        return (double) madeWorse / cases;
    }

    static String heading() {
        return String.format(Locale.ROOT, "%-16s %6s %15s %15s %19s %19s %6s", "act", "cases", "chance said",
                "came", "exposure said", "came", "worse");
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%-16s %6d %6.3f → %6.3f %6.3f → %6.3f %8.1f → %8.1f %8.1f → %8.1f %6.3f",
                act, cases, saidWithout(), saidWith(), beyondWithout(), beyondWith(), saidHarmWithout / cases,
                saidHarmWith / cases, harmWithout(), harmWith(), madeWorse());
    }
}
