package org.tankrounds.lab;

/**
 * Which mechanics hold in a world. Nobody knows a classroom's tank so well that one set of equations is the right one;
 * what is good whichever holds does not hang on any. The first of each is that of {@link
 * org.tankrounds.tankmodel.TankModel}; the others are this project's choice (no source).
 */
record Mechanics(Kinetics kinetics, Acidity acidity, Heat heat, Thermostat thermostat, Visits visits) {

    /** What a filter oxidises. */
    enum Kinetics {
        /** Bacteria that grow on what they eat and slow down as it gets scarce (Monod). */
        GROWING,
        /** A share of what is there; the filter ripens with time, whatever it is fed. */
        PROPORTIONAL,
        /** All that is there up to so much a day; it ripens with time too. */
        CAPPED
    }

    /** What the pH follows. */
    enum Acidity {
        /** Alkalinity and carbon dioxide, at once. */
        CARBONATE,
        /** It drifts about what the alkalinity holds it at, higher by day. */
        DRIFTING
    }

    enum Heat {
        /** The water alone. */
        ONE_LUMP,
        /** Water, and glass, gravel and stand that follow it. */
        TWO_LUMPS
    }

    enum Thermostat {
        /** As much as is needed. */
        GRADUAL,
        /** All or nothing, with a gap between. */
        ON_OFF
    }

    /** When a class looks. */
    enum Visits {
        ANY_DAY,
        /** On the same few days of the week. */
        SAME_WEEKDAYS,
        /** Half as often, and daily for a week after something bad. */
        WHEN_WORRIED
    }

    static final Mechanics USUAL = new Mechanics(
            Kinetics.GROWING, Acidity.CARBONATE, Heat.ONE_LUMP, Thermostat.GRADUAL, Visits.ANY_DAY);

    static Mechanics drawn(Luck luck) {
        return new Mechanics(one(Kinetics.values(), luck), one(Acidity.values(), luck), one(Heat.values(), luck),
                one(Thermostat.values(), luck), one(Visits.values(), luck));
    }

    /** In every other world the first, which is the likeliest to be right. */
    private static <T> T one(T[] of, Luck luck) {
        return luck.happens(0.5) ? of[0] : of[luck.between(1, of.length - 1)];
    }
}
