package org.tankrounds.lab;

import java.time.Instant;
import org.tankrounds.belief.Observation;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Units;

/** How a class reads: thermometer, colour cards, and what goes wrong between the eye and the paper. */
final class Cards {

    private static final double[][] AMMONIA = {
        {0, 0.25, 0.5, 1, 2, 4, 8}, {0, 0.5, 1, 3, 6}, {0, 0.05, 0.1, 0.2, 0.3, 0.4, 0.8, 1.5, 3, 5}};
    private static final double[][] NITRITE = {
        {0, 0.25, 0.5, 1, 2, 5}, {0, 0.5, 1, 3, 5, 10}, {0, 0.02, 0.05, 0.1, 0.2, 0.4, 0.8, 1.6, 3.3}};
    private static final double[] NITRITE_AS_N = {Units.N_PER_NO2, Units.N_PER_NO2, 1};
    private static final double[] NITRATE = {0, 5, 10, 20, 40, 80, 160};
    private static final double[] CHLORINE = {0, 0.1, 0.2, 0.5, 1, 2};
    private static final double[][] PH = {
        {6, 6.4, 6.6, 6.8, 7, 7.2, 7.6, 8, 8.4, 8.8}, {6, 6.5, 7, 7.5, 8, 8.5, 9}, {6, 6.2, 6.4, 6.8, 7.2, 7.8, 8.4}};
    private static final double[] GRADUATION_C = {1, 0.5, 1 / 1.8};

    private final Luck luck;
    private final int kit;
    private final double graduationC;
    private final double thermometerBiasC;
    private final double phBias;
    private final double phNoise;
    private final double eye;
    private final double slips;
    private final double mixUps;
    private final boolean readsBetweenColours;
    private final boolean readsCoarsely;
    private final boolean isStepUnknown;

    Cards(TankWater tank, Luck luck) {
        this.luck = luck;
        kit = luck.between(0, 2);
        graduationC = GRADUATION_C[luck.between(0, 2)];
        thermometerBiasC = 0.25 * luck.normal();
        phBias = tank.of(Trait.PH_BIAS) * luck.normal();
        phNoise = tank.of(Trait.PH_NOISE);
        eye = tank.of(Trait.EYE);
        slips = tank.of(Trait.SLIPS);
        mixUps = tank.of(Trait.SCALE_MIX_UPS);
        readsBetweenColours = luck.happens(tank.of(Trait.BETWEEN_COLOURS));
        readsCoarsely = luck.happens(tank.of(Trait.READS_COARSELY));
        isStepUnknown = luck.happens(tank.of(Trait.STEP_UNKNOWN));
    }

    /** The same hands and eyes with other luck. */
    Cards(Cards other, Luck luck) {
        this.luck = luck;
        kit = other.kit;
        graduationC = other.graduationC;
        thermometerBiasC = other.thermometerBiasC;
        phBias = other.phBias;
        phNoise = other.phNoise;
        eye = other.eye;
        slips = other.slips;
        mixUps = other.mixUps;
        readsBetweenColours = other.readsBetweenColours;
        readsCoarsely = other.readsCoarsely;
        isStepUnknown = other.isStepUnknown;
    }

    Observation thermometer(Instant at, double temperatureC) {
        double seen = temperatureC + thermometerBiasC + 0.2 * luck.about("thermometer").normal();
        double mark = readsCoarsely ? 2 * graduationC : graduationC;
        double written = Math.rint(seen / mark) * mark;
        if (luck.happens(mixUps)) {
            written = luck.happens(0.5) ? (written - 32) / 1.8 : written * 1.8 + 32;
        }
        return reading(at, Analyte.TEMPERATURE, slip(written), graduationC / 2);
    }

    Observation probe(Instant at, double temperatureC) {
        double shown = temperatureC + 0.1 * luck.about("probe").normal();
        return reading(at, Analyte.TEMPERATURE, Math.rint(10 * shown) / 10, 0.05);
    }

    Observation ammonia(Instant at, double mgPerL) {
        return card(at, Analyte.TOTAL_AMMONIA, AMMONIA[kit], misjudged("ammonia", mgPerL), 1);
    }

    Observation nitrite(Instant at, double mgPerL) {
        double perN = NITRITE_AS_N[kit];
        return card(at, Analyte.NITRITE, NITRITE[kit], misjudged("nitrite", mgPerL / perN), perN);
    }

    Observation nitrate(Instant at, double mgPerL) {
        return card(at, Analyte.NITRATE, NITRATE,
                misjudged("nitrate", mgPerL / Units.N_PER_NO3), Units.N_PER_NO3);
    }

    Observation chlorine(Instant at, double mgPerL) {
        return card(at, Analyte.CHLORINE, CHLORINE, misjudged("chlorine", mgPerL), 1);
    }

    Observation ph(Instant at, double ph) {
        return card(at, Analyte.PH, PH[kit], ph + phBias + phNoise * luck.about("pH card").normal(), 1);
    }

    Observation alkalinity(Instant at, double mgPerL) {
        double drop = Units.CACO3_PER_GERMAN_DEGREE;
        double drops = Math.rint(mgPerL / drop + 0.3 * luck.about("alkalinity").normal());
        return reading(at, Analyte.ALKALINITY, drop * Math.max(1, drops), drop / 2);
    }

    Observation oxygen(Instant at, double mgPerL) {
        double shown = Math.rint(mgPerL + 0.6 * luck.about("oxygen").normal());
        return reading(at, Analyte.DISSOLVED_OXYGEN, Math.max(1, shown), 0.5);
    }

    private double misjudged(String what, double value) {
        return value * (1 + eye * luck.about(what).normal());
    }

    private Observation card(Instant at, Analyte analyte, double[] steps, double seen, double factor) {
        int nearest = nearest(steps, seen);
        double gap = Math.min(nearest > 0 ? steps[nearest] - steps[nearest - 1] : Double.MAX_VALUE,
                nearest + 1 < steps.length ? steps[nearest + 1] - steps[nearest] : Double.MAX_VALUE);
        double written = readsBetweenColours ? colourOrMiddle(steps, nearest, seen) : steps[nearest];
        return reading(at, analyte, slip(written) * factor, gap / 2 * factor);
    }

    private static double colourOrMiddle(double[] steps, int nearest, double seen) {
        int next = nearest + (seen > steps[nearest] ? 1 : -1);
        double middle = next < 0 || next == steps.length ? steps[nearest] : (steps[nearest] + steps[next]) / 2;
        return Math.abs(seen - middle) < Math.abs(seen - steps[nearest]) ? middle : steps[nearest];
    }

    private static int nearest(double[] steps, double seen) {
        int best = 0;
        for (int i = 1; i < steps.length; i++) {
            best = Math.abs(steps[i] - seen) < Math.abs(steps[best] - seen) ? i : best;
        }
        return best;
    }

    /** A decimal point moved, a digit lost, the line above. */
    private double slip(double written) {
        if (!luck.happens(slips)) {
            return written;
        }
        double[] wrong = {written * 10, written / 10, written + luck.between(-3.0, 3.0), written + 10};
        return wrong[luck.between(0, 3)];
    }

    /** As the door takes it: within what can be meant at all, a card's zero as not detected. */
    private Observation reading(Instant at, Analyte analyte, double value, double halfStep) {
        double possible = Math.min(analyte.possible().max(), Math.max(analyte.possible().min(), value));
        boolean below = possible == 0 && (analyte == Analyte.TOTAL_AMMONIA || analyte == Analyte.NITRITE
                || analyte == Analyte.NITRATE || analyte == Analyte.CHLORINE);
        return new Observation(at, analyte, possible, isStepUnknown ? 0 : halfStep, below, false);
    }
}
