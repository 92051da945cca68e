package org.tankrounds.belief;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;

/**
 * The fixed table of random numbers behind every belief and forecast. Every tank reads the same table, so two
 * tanks differ by what is known of them and never by luck, and the same input gives the same output.
 *
 * <p>Seed {@value #SEED}, the generator of {@link SplittableRandom}; normal deviates by the rational
 * approximation 26.2.23 of Abramowitz and Stegun 1964, Handbook of Mathematical Functions (error below 4.5e-4).
 */
public final class Draws {

    /** Any number would do; this one is kept. */
    public static final long SEED = 20_270_112L;
    private static final int SIZE = 1 << 16;
    private static final double[] NORMALS = new double[SIZE];
    private static final double[] UNIFORMS = new double[SIZE];

    static {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < SIZE; i++) {
            UNIFORMS[i] = (random.nextInt(1 << 24) + 0.5) / (1 << 24);
            NORMALS[i] = normalQuantile((random.nextInt(1 << 24) + 0.5) / (1 << 24));
        }
    }

    private Draws() {
    }

    /** A standard normal deviate; the same for the same index. */
    public static double normal(int index) {
        return NORMALS[place(index)];
    }

    /** A uniform deviate between 0 and 1, both excluded; the same for the same index. */
    public static double uniform(int index) {
        return UNIFORMS[place(index)];
    }

    /** What becomes of every normal deviate; at {@link #place} of an index stands what becomes of that one's. */
    static double[] ofNormals(DoubleUnaryOperator function) {
        return Arrays.stream(NORMALS).map(function).toArray();
    }

    /** The place in the table that an index stands for. */
    static int place(int index) {
        return index & (SIZE - 1);
    }

    /**
     * Evenly spread uniform deviates in a shuffled order: {@code (k + 0.5) / n} for every k once. Sets of
     * different streams are independent of each other.
     */
    public static double[] spread(int n, int stream) {
        double[] spread = new double[n];
        for (int i = 0; i < n; i++) {
            spread[i] = (i + 0.5) / n;
        }
        SplittableRandom random = new SplittableRandom(SEED + stream);
        for (int i = n - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            double kept = spread[i];
            spread[i] = spread[j];
            spread[j] = kept;
        }
        return spread;
    }

    /** As {@link #spread}, standard normal. */
    public static double[] spreadNormal(int n, int stream) {
        return Arrays.stream(spread(n, stream)).map(Draws::normalQuantile).toArray();
    }

    /**
     * The standard normal quantile of a probability.
     *
     * @throws IllegalArgumentException unless 0 < p < 1
     */
    public static double normalQuantile(double p) {
        if (!(p > 0 && p < 1)) {
            throw new IllegalArgumentException("p must lie between 0 and 1, was " + p);
        }
        double tail = Math.min(p, 1 - p);
        double t = Math.sqrt(-2 * StrictMath.log(tail));
        double z = t - (2.515517 + t * (0.802853 + t * 0.010328))
                / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
        return p < 0.5 ? -z : z;
    }
}
