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
    /** Carbon dioxide of water in balance with the air at 10 °C, mg/L. */
    static final double DIOXIDE_IN_BALANCE_MG_PER_L = 1;

    /** @param mgPerL alkalinity before, above 0 mg/L as CaCO3 */
    double liftsPh(double mgPerL) {
        return StrictMath.log10(after(mgPerL) / mgPerL);
    }

    /**
     * The same where so much carbon dioxide is held: no further up than to where it is in balance with the air, which
     * fresh water brings along where there is less.
     *
     * @param dioxideMgPerL above 0 mg/L
     */
    double liftsPh(double mgPerL, double dioxideMgPerL) {
        double lift = liftsPh(mgPerL);
        double toBalance = StrictMath.log10(dioxideMgPerL / DIOXIDE_IN_BALANCE_MG_PER_L) + lift;
        return lift <= 0 ? lift : Math.max(0, Math.min(lift, toBalance));
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
