package org.tankrounds.lab;

/**
 * Mean squared error of chances and what it is made of: {@code score = reliability − resolution + uncertainty}
 * (Brier 1950; Murphy 1973), over ten equal classes of the chance given.
 *
 * @param score 0 is perfect
 * @param reliability how far chances are from what comes true; 0 is perfect
 * @param resolution how far the classes' outcomes spread about the base rate
 * @param uncertainty of the base rate itself
 * @param classes from 0–0.1 to 0.9–1
 */
public record Brier(
        double score, double reliability, double resolution, double uncertainty, ChanceClass[] classes) {

    private static final int CLASSES = 10;

    /** Cases given alike chances. @param cases how many @param given mean chance @param came share that came true */
    public record ChanceClass(int cases, double given, double came) {
    }

    public static Brier of(double[] chance, boolean[] cameTrue) {
        int[] cases = new int[CLASSES];
        double[] given = new double[CLASSES];
        double[] came = new double[CLASSES];
        double squares = 0;
        double trues = 0;
        for (int i = 0; i < chance.length; i++) {
            double outcome = cameTrue[i] ? 1 : 0;
            int k = Math.min(CLASSES - 1, (int) (chance[i] * CLASSES));
            cases[k]++;
            given[k] += chance[i];
            came[k] += outcome;
            squares += (chance[i] - outcome) * (chance[i] - outcome);
            trues += outcome;
        }
        double n = chance.length;
        double base = trues / n;
        double reliability = 0;
        double resolution = 0;
        ChanceClass[] classes = new ChanceClass[CLASSES];
        for (int k = 0; k < CLASSES; k++) {
            ChanceClass each = new ChanceClass(cases[k], given[k] / cases[k], came[k] / cases[k]);
            classes[k] = each;
            if (cases[k] > 0) {
                reliability += cases[k] / n * (each.given - each.came) * (each.given - each.came);
                resolution += cases[k] / n * (each.came - base) * (each.came - base);
            }
        }
        return new Brier(squares / n, reliability, resolution, base * (1 - base), classes);
    }

    /** Gain over always saying the base rate; 1 is perfect, below 0 is worse than that. */
    public double skill() {
        return 1 - score / uncertainty;
    }
}
