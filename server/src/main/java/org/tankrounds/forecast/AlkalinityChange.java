package org.tankrounds.forecast;

/**
 * What the alkalinity that a deed brings does: the pH moves by {@code log10(Alk′/Alk)}, because breathing and aeration
 * settle the carbon dioxide, and a first guild that lacked it works faster ({@code Alk/(KAlk + Alk)}).
 *
 * @param deed water changed, baking soda given
 * @param sourceMgPerL alkalinity of the source water, mg/L as CaCO3
 */
record AlkalinityChange(Deed deed, double sourceMgPerL) {

    /**
     * What a first guild wants for half its speed differs between tanks, 1 to 25 (from memory). The most of it: of
     * less, fresh alkalinity would seem harmless where it is not.
     */
    private static final double HALF_MG_PER_L = 25;

    /** @param mgPerL alkalinity before, above 0 mg/L as CaCO3 */
    double liftsPh(double mgPerL) {
        return StrictMath.log10(after(mgPerL) / mgPerL);
    }

    /** How many times as fast the first guild works. @param mgPerL as above */
    double timesAsFast(double mgPerL) {
        return speed(after(mgPerL)) / speed(mgPerL);
    }

    private double after(double mgPerL) {
        return mgPerL * (1 - deed.changedShare()) + sourceMgPerL * deed.changedShare() + deed.alkalinityMgPerL();
    }

    private static double speed(double mgPerL) {
        return mgPerL / (HALF_MG_PER_L + mgPerL);
    }
}
