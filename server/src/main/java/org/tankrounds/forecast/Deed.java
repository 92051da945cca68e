package org.tankrounds.forecast;

/**
 * Something done to a tank within the first hour of a look ahead, as far as its water feels it; spread over
 * hours where that is how it is given. Deeds add up by {@link #and}.
 *
 * @param changedShare of the water, 0 to 1, for water of the tank's source: treated, at the tank's
 *     temperature
 * @param fastHours without feed
 * @param chlorideMgPerL that salt adds, in equal parts over {@value #SALT_HOURS} hours
 * @param alkalinityMgPerL that baking soda adds, as CaCO3
 * @param airs whether the aeration is made stronger
 * @param mends whether a chiller that stands is set going, {@value #MENDED_AFTER_HOURS} hours from now
 * @param coolingK what ice can take out of the water in all, as kelvin of the whole tank
 * @param holdC ice goes in while the water is warmer than this
 * @param neutralisedMgPerL total residual chlorine taken out
 */
public record Deed(
        double changedShare, double fastHours, double chlorideMgPerL, double alkalinityMgPerL, boolean airs,
        boolean mends, double coolingK, double holdC, double neutralisedMgPerL) {

    /** Salt goes in dissolved and slowly (common practice, no source). */
    public static final int SALT_HOURS = 6;
    /** Time for somebody to come, look and press the switch (common practice, no source). */
    public static final int MENDED_AFTER_HOURS = 4;

    /** What happens if nobody steps in. */
    public static final Deed NOTHING = new Deed(0, 0, 0, 0, false, false, 0, 0, 0);

    public Deed {
        if (!(changedShare >= 0 && changedShare <= 1)) {
            throw new IllegalArgumentException("changedShare must be 0 to 1, was " + changedShare);
        }
    }

    public static Deed waterChange(double share) {
        return new Deed(share, 0, 0, 0, false, false, 0, 0, 0);
    }

    public static Deed fast(double hours) {
        return new Deed(0, hours, 0, 0, false, false, 0, 0, 0);
    }

    public static Deed salt(double chlorideMgPerL) {
        return new Deed(0, 0, chlorideMgPerL, 0, false, false, 0, 0, 0);
    }

    public static Deed bakingSoda(double alkalinityMgPerL) {
        return new Deed(0, 0, 0, alkalinityMgPerL, false, false, 0, 0, 0);
    }

    public static Deed moreAir() {
        return new Deed(0, 0, 0, 0, true, false, 0, 0, 0);
    }

    public static Deed mendedChiller() {
        return new Deed(0, 0, 0, 0, false, true, 0, 0, 0);
    }

    public static Deed ice(double coolingK, double holdC) {
        return new Deed(0, 0, 0, 0, false, false, coolingK, holdC, 0);
    }

    public static Deed thiosulfate(double neutralisedMgPerL) {
        return new Deed(0, 0, 0, 0, false, false, 0, 0, neutralisedMgPerL);
    }

    /** Both. */
    public Deed and(Deed other) {
        double keptShare = (1 - changedShare) * (1 - other.changedShare);
        return new Deed(1 - keptShare, Math.max(fastHours, other.fastHours),
                chlorideMgPerL + other.chlorideMgPerL, alkalinityMgPerL + other.alkalinityMgPerL,
                airs || other.airs, mends || other.mends, coolingK + other.coolingK,
                coolingK > 0 ? holdC : other.holdC, neutralisedMgPerL + other.neutralisedMgPerL);
    }

    boolean movesHeat() {
        return mends || coolingK > 0;
    }

    boolean movesPh() {
        return changedShare > 0 || alkalinityMgPerL > 0 || airs;
    }

    boolean movesNitrogen() {
        return changedShare > 0 || fastHours > 0;
    }
}
