package org.tankrounds.lab;

import org.tankrounds.water.Range;

/**
 * What tanks, schools and classes differ by. Each trait has the widest span that a world may put it in and the
 * span of the usual world; a tank's own value is drawn within its world's. Bacteria: ranges of {@link
 * org.tankrounds.tankmodel.Nitrifiers}; heat: glass bare to foamed all round; the rest is common practice, no source.
 */
public enum Trait {
    /** Litres of water. */
    VOLUME_L(70, 220, 110, 205),
    /** Alkalinity of the source water, mg/L as CaCO3. */
    ALKALINITY_MG_PER_L(Scale.LOG, 15, 260, 40, 170),
    /** Chloride of the source water, mg/L. */
    CHLORIDE_MG_PER_L(Scale.LOG, 2, 80, 4, 45),
    /** Total ammonia that the tap brings (chloramine taken apart), mg N/L. */
    TAP_AMMONIA_MG_PER_L(Scale.LOG, 0.002, 0.6, 0.002, 0.02),
    /** Temperature of water that is put in. */
    TAP_C(8, 20, 11, 15),
    /** Dissolved carbon dioxide of clean, aerated water, mg/L. */
    CARBON_DIOXIDE_MG_PER_L(Scale.LOG, 1.5, 10, 2.5, 6),
    /** What waste adds to that, mg/L per mg N/L/d. */
    CARBON_DIOXIDE_PER_WASTE(0, 6, 0, 3),

    /** Growth of both guilds, times the published choice. */
    FILTER_SPEED(Scale.LOG, 0.55, 1.7, 0.8, 1.25),
    /** Growth of the second guild, times that again. */
    NITRITE_SPEED(Scale.LOG, 0.65, 1.5, 0.85, 1.2),
    /** Half-saturation of both, mg N/L. */
    HALF_SUBSTRATE_MG_PER_L(Scale.LOG, 0.06, 0.7, 0.1, 0.3),
    /** First guild on the day the eggs come, mg COD/L. */
    SEED_COD_PER_L(Scale.LOG, 1e-3, 0.8, 0.01, 0.3),
    /** The second guild's share of that. */
    NITRITE_SEED_SHARE(0.1, 0.8, 0.2, 0.6),
    /** Where the surface of the filter is full, mg COD/L of the first guild. */
    FILTER_ROOM_COD_PER_L(Scale.LOG, 0.2, 4, 0.6, 3),
    /** Cleaned too well, dried out, medicated; chance per day. */
    FILTER_HURT_PER_DAY(Scale.LOG, 0.0004, 0.01, 0.001, 0.004),
    /** Alkalinity at which the first guild works at half speed, mg/L. */
    HALF_ALKALINITY_MG_PER_L(1, 25, 5, 15),

    ROOM_C(17.5, 24.5, 20, 23),
    /** How much cooler a room is at night and at weekends, K. */
    SET_BACK_K(0, 6, 1, 4),
    /** How far it wanders of itself in an hour, and swings in a day about its mean, K. */
    ROOM_WANDERS_K(0.05, 0.35, 0.1, 0.2),
    ROOM_BY_DAY_K(0, 3, 0.5, 1.2),
    /** How much warmer it is in late spring, K. */
    SPRING_K(0, 4, 0, 2.5),
    LOSS_W_PER_K(Scale.LOG, 2.5, 18, 3, 12),
    PUMP_W(5, 30, 8, 20),
    COOLING_W(90, 360, 150, 320),
    SET_POINT_C(8, 13.5, 9.5, 12.5),
    CHILLER_STOPS_PER_DAY(Scale.LOG, 0.002, 0.016, 0.004, 0.01),
    /** Stops that end by themselves within three days. */
    CHILLER_TRIPS_PER_DAY(Scale.LOG, 0.0003, 0.02, 0.0005, 0.003),
    /** Between on and off, where a thermostat knows nothing else, K. */
    THERMOSTAT_GAP_K(0.3, 3, 0.5, 1.5),
    CHILLER_FADES_PER_DAY(Scale.LOG, 0.0006, 0.008, 0.0015, 0.005),
    MIS_SET_PER_DAY(Scale.LOG, 0.0004, 0.005, 0.001, 0.003),
    /** Chance that a class which reads a temperature too high has it set right within the school day. */
    REPAIRS(0.08, 0.7, 0.15, 0.45),
    /** Chance per day that somebody notices without a reading. */
    NOTICED_PER_DAY(0.01, 0.3, 0.03, 0.15),

    EGGS(Scale.LOG, 30, 260, 45, 130),
    /** Day after 1 September on which they come. */
    ARRIVES_DAY(20, 140, 50, 125),
    THERMAL_UNITS_C(180, 340, 190, 310),
    /** Feed a day as a share of the weight of the fish. */
    RATION(0.004, 0.024, 0.007, 0.015),
    /** Cube root of grams per °C-day. */
    GROWTH(0.0002, 0.0009, 0.00035, 0.0007),
    /** Chance per school day that a hand slips with the feed. */
    OVERFEEDS(0.002, 0.06, 0.005, 0.03),
    OVERFEEDS_TIMES(1.5, 6, 2, 4),
    PROTEIN(0.4, 0.54, 0.44, 0.52),
    /** Losses of healthy eggs and fry, share per day. */
    USUAL_DEATHS(Scale.LOG, 0.0003, 0.003, 0.0005, 0.002),
    /** Share that dies in a day of water at twice a limit. */
    EXCESS_DEATHS(Scale.LOG, 0.0005, 0.02, 0.002, 0.008),
    /** Illness that has nothing to do with the water begins; chance per day. */
    ILLNESS_PER_DAY(Scale.LOG, 0.0003, 0.01, 0.0005, 0.003),
    CHANGE_EVERY_DAYS(3, 16, 5, 10),
    CHANGE_SHARE(0.1, 0.45, 0.18, 0.35),
    CHANGE_SKIPPED(0.03, 0.5, 0.08, 0.3),
    CHANGE_DOUBLED(0, 0.12, 0.01, 0.06),
    /** Chance that a bad reading of ammonia, nitrite or pH makes the class act. */
    REACTS(0, 0.9, 0.1, 0.6),
    /** Days until it does, and chance that it does so again the next day. */
    REACTS_AFTER_DAYS(0, 3, 0, 1),
    REACTS_TWICE(0, 0.6, 0, 0.2),
    /** Feed of a day without school, as a share of the usual. */
    HOLIDAY_RATION(0, 1, 0.2, 0.5),
    /** Oxygen that aeration holds, share of saturation. */
    AERATION(0.86, 1, 0.93, 1),
    /** Oxygen taken by fish, share of saturation per g fish/L. */
    OXYGEN_PER_DENSITY(0.01, 0.1, 0.02, 0.06),
    AIR_FAILS_PER_DAY(Scale.LOG, 0.0003, 0.01, 0.0006, 0.002),
    /** Chance that a water change goes in with its chlorine. */
    CHLORINE_FORGOTTEN(0, 0.01, 0, 0.004),

    /** Chance of a look on a school day. */
    READS(0.12, 0.97, 0.5, 0.97),
    READS_AT_WEEKENDS(0, 0.4, 0, 0.1),
    /** Chance that a look includes the colour cards. */
    CARDS(0.15, 0.97, 0.4, 0.9),
    OTHER_TESTS(0, 0.4, 0.02, 0.2),
    PH_NOISE(0.04, 0.3, 0.08, 0.2),
    /** Spread of what a class always reads too high or too low. */
    PH_BIAS(0, 0.3, 0.02, 0.15),
    /** Misjudged colours, share of the value. */
    EYE(0.03, 0.3, 0.06, 0.18),
    SLIPS(Scale.LOG, 0.001, 0.03, 0.003, 0.012),
    /** °F written as °C or the other way round. */
    SCALE_MIX_UPS(Scale.LOG, 0.0005, 0.02, 0.001, 0.008),
    FALLS_SILENT_PER_DAY(Scale.LOG, 0.001, 0.015, 0.002, 0.008),
    SILENT_DAYS(4, 35, 5, 20),
    /** Classes that do not own a kit for one thing or another; that write what lies between two colours. */
    KIT_LACKS(0, 0.3, 0, 0.08),
    BETWEEN_COLOURS(0, 0.6, 0, 0.2),
    /** Classes that read a thermometer to two of its marks; that nobody told what their method can tell apart. */
    READS_COARSELY(0, 0.5, 0, 0.2),
    STEP_UNKNOWN(0, 0.6, 0, 0.1),
    PROBE(0, 0.25, 0.02, 0.1),
    FACTS_MISSING(0, 0.35, 0.02, 0.15),
    FEED_NOTED(0, 1, 0.2, 0.8),
    CHANGES_NOTED(0.3, 1, 0.6, 1),
    DEATHS_NOTED(0.3, 1, 0.6, 1);

    /** How values spread over a span. */
    private enum Scale { LINEAR, LOG }

    private final Scale scale;
    private final Range widest;
    private final Range usual;

    Trait(double lowest, double highest, double usuallyFrom, double usuallyTo) {
        this(Scale.LINEAR, lowest, highest, usuallyFrom, usuallyTo);
    }

    Trait(Scale scale, double lowest, double highest, double usuallyFrom, double usuallyTo) {
        this.scale = scale;
        this.widest = new Range(lowest, highest);
        this.usual = new Range(usuallyFrom, usuallyTo);
    }

    Range usual() {
        return usual;
    }

    /** @param strangeness 0 gives the usual span, 1 the widest */
    Range between(double strangeness) {
        return new Range(at(usual.min(), widest.min(), strangeness), at(usual.max(), widest.max(), strangeness));
    }

    /** The value so far along a span: in equal steps, or in equal ratios where the trait spans magnitudes. */
    double at(Range span, double share) {
        return at(span.min(), span.max(), share);
    }

    private double at(double from, double to, double share) {
        return scale == Scale.LINEAR ? from + share * (to - from) : from * StrictMath.pow(to / from, share);
    }
}
