package org.tankrounds.stream;

import java.util.Collection;

/**
 * Three points for every sensitive kind found, two for every somewhat sensitive, one for every tolerant; how many there
 * are of a kind does not matter.
 *
 * <p>Source: a count that many volunteers use, beside US EPA 1997, EPA 841-B-97-003.
 *
 * @param sensitive kinds of that sort
 */
public record KindCount(int sensitive, int somewhatSensitive, int tolerant) {

    public enum Water {
        EXCELLENT, GOOD, FAIR, POOR
    }

    private static final int MORE_THAN_GOOD = 22;
    private static final int LEAST_GOOD = 17;
    private static final int LEAST_FAIR = 11;

    public KindCount {
        if (sensitive < 0 || somewhatSensitive < 0 || tolerant < 0) {
            throw new IllegalArgumentException("kinds must be at least 0");
        }
    }

    /** @param kinds each once */
    public static KindCount of(Collection<Kind> kinds) {
        return new KindCount(of(Sensitivity.SENSITIVE, kinds), of(Sensitivity.SOMEWHAT_SENSITIVE, kinds),
                of(Sensitivity.TOLERANT, kinds));
    }

    public int points() {
        return sensitive * Sensitivity.SENSITIVE.points()
                + somewhatSensitive * Sensitivity.SOMEWHAT_SENSITIVE.points()
                + tolerant * Sensitivity.TOLERANT.points();
    }

    public Water water() {
        if (points() > MORE_THAN_GOOD) {
            return Water.EXCELLENT;
        }
        return points() >= LEAST_GOOD ? Water.GOOD : points() >= LEAST_FAIR ? Water.FAIR : Water.POOR;
    }

    private static int of(Sensitivity sensitivity, Collection<Kind> kinds) {
        return (int) kinds.stream().filter(kind -> kind.sensitivity() == sensitivity).count();
    }
}
