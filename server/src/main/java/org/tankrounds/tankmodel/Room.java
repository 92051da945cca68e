package org.tankrounds.tankmodel;

/**
 * How many fish a tank can carry: by its space, by its filter and by the water that the class changes.
 *
 * <p>Space: {@value #MOST_G_PER_L} g of fish in a litre, for a classroom's tank (common practice, no source: 1 to 2).
 * Filter: 0.05368 T − 0.0859 g N a day on each m² of its media, from 5 to 22.5 °C (Speece 1973, second-hand). Water:
 * nitrate, which only a water change takes out; fed alike and changed alike it climbs to
 * {@code production · days / share} (science of dilution), and above {@value #MOST_NITRATE_MG_N_PER_L} mg N/L the water
 * is no longer fit for fry (screening band of the project).
 *
 * @param volumeL above 0
 * @param filterAreaM2 surface of the filter's media, m²; above 0
 * @param changeShare of the water that is changed at a time, above 0 to 1
 * @param changeEveryDays above 0
 */
public record Room(double volumeL, double filterAreaM2, double changeShare, double changeEveryDays) {
    public static final double MOST_G_PER_L = 2;
    public static final double MOST_NITRATE_MG_N_PER_L = 40;
    /** Where nobody has told the filter's: a canister with its usual media (common practice, no source), m². */
    public static final double USUAL_FILTER_AREA_M2 = 0.5;
    public static final double USUAL_CHANGE_SHARE = 0.25;
    public static final double USUAL_CHANGE_EVERY_DAYS = 7;
    /** Feed for fry; larger fish get 38 to 45 % (university extension charts). */
    public static final double FEED_PROTEIN_SHARE = 0.5;
    private static final double COLDEST_C = 5;
    private static final double WARMEST_C = 22.5;

    /** What fills first. */
    public enum Bound {
        SPACE, FILTER, WATER
    }

    /**
     * How full it is: 1 is all that it can carry.
     *
     * @param space by the fish's weight
     * @param filter by the nitrogen that the feed brings
     * @param water by the nitrate that it ends as
     */
    public record Load(double space, double filter, double water) {
        public double fullest() {
            return Math.max(space, Math.max(filter, water));
        }

        public Bound bound() {
            return space >= filter && space >= water ? Bound.SPACE : filter >= water ? Bound.FILTER : Bound.WATER;
        }
    }

    public Room {
        if (!(volumeL > 0 && filterAreaM2 > 0 && changeShare > 0 && changeShare <= 1 && changeEveryDays > 0)) {
            throw new IllegalArgumentException("no room: " + volumeL + " L, " + filterAreaM2 + " m², "
                    + changeShare + " every " + changeEveryDays + " d");
        }
    }

    /**
     * @param biomassG of all fish, g
     * @param feedGPerDay for all of them
     */
    public Load load(double biomassG, double feedGPerDay, double temperatureC) {
        double nitrogenGPerDay = Wastes.nitrogenGPerDay(feedGPerDay, FEED_PROTEIN_SHARE);
        return new Load(biomassG / (MOST_G_PER_L * volumeL), nitrogenGPerDay / filterNitrogenGPerDay(temperatureC),
                nitrateMgPerL(nitrogenGPerDay) / MOST_NITRATE_MG_N_PER_L);
    }

    /** g N a day that a ripe filter takes; colder and warmer than Speece measured, as at the edge. */
    public double filterNitrogenGPerDay(double temperatureC) {
        double t = Math.max(COLDEST_C, Math.min(WARMEST_C, temperatureC));
        return filterAreaM2 * (0.05368 * t - 0.0859);
    }

    /** mg N/L just before a water change, once it climbs no more. */
    public double nitrateMgPerL(double nitrogenGPerDay) {
        return 1000 * nitrogenGPerDay / volumeL * changeEveryDays / changeShare;
    }

    /** The share to change each time so that nitrate stays as it may be at most; above 1, no change is enough. */
    public double changeShareFor(double feedGPerDay) {
        return changeShare * nitrateMgPerL(Wastes.nitrogenGPerDay(feedGPerDay, FEED_PROTEIN_SHARE))
                / MOST_NITRATE_MG_N_PER_L;
    }
}
