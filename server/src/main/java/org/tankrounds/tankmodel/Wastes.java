package org.tankrounds.tankmodel;

/** What feed becomes: nitrogen in the water, and what the filter spends on it. */
public final class Wastes {

    /** g total ammonia nitrogen per g protein fed (Timmons and Ebeling, Recirculating Aquaculture; second-hand). */
    public static final double NITROGEN_PER_PROTEIN = 0.092;
    /**
     * g alkalinity as CaCO3 per g N, all of it lost in the ammonia step: NH4 + 2 O2 → NO3 + 2 H + H2O. With what the
     * bacteria build in counted it is 7.05 (Ebeling et al. 2006, Aquaculture 257:346–358; second-hand).
     */
    public static final double ALKALINITY_PER_N = 7.14;

    private Wastes() {
    }

    /** g N/d from g feed/d and its share of protein (0 to 1); what is left uneaten gives as much as it rots. */
    public static double nitrogenGPerDay(double feedGPerDay, double proteinShare) {
        return feedGPerDay * proteinShare * NITROGEN_PER_PROTEIN;
    }
}
