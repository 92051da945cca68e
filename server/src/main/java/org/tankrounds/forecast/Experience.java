package org.tankrounds.forecast;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * What many simulated seasons teach about how far to trust the look ahead: it turns the signs of a tank into a chance
 * and an exposure. Made by {@code tankrounds lab --learn} from worlds drawn at random, so that it knows of no
 * particular one; the named worlds that scores are reported for are not among them.
 *
 * @param chance sum in log-odds
 * @param harm sum in natural logarithms of fish-hours per fish, where the tank does go beyond a limit
 * @param harmScale makes the mean of the exposures said that of the true ones
 */
public record Experience(Trees chance, Trees harm, double harmScale) {

    private static final String RESOURCE = "experience.txt";
    private static final String CHANCE = "chance";
    private static final String HARM = "harm";
    private static final String HARM_SCALE = "harm scale ";
    /** Nobody is ever surer than this. */
    private static final double LEAST_CHANCE = 0.002;

    /** As it ships. */
    static Experience shipped() {
        return Shipped.EXPERIENCE;
    }

    double chance(double[] signs) {
        double chance = 1 / (1 + StrictMath.exp(-chance().of(signs)));
        return Math.min(1 - LEAST_CHANCE, Math.max(LEAST_CHANCE, chance));
    }

    /** Expected fish-hours beyond a limit per fish, each hour by how far beyond. */
    public double exposurePerFish(double[] signs) {
        return chance(signs) * harmScale * StrictMath.exp(harm().of(signs));
    }

    /** The lines that {@link #read} takes. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(HARM_SCALE + harmScale);
        lines.add(CHANCE);
        lines.addAll(chance.lines());
        lines.add(HARM);
        lines.addAll(harm.lines());
        return lines;
    }

    public static Experience read(List<String> lines) {
        int harmFrom = lines.indexOf(HARM);
        return new Experience(
                Trees.read(lines.subList(lines.indexOf(CHANCE) + 1, harmFrom)),
                Trees.read(lines.subList(harmFrom + 1, lines.size())),
                Double.parseDouble(lines.get(0).substring(HARM_SCALE.length())));
    }

    /** Read once, when first needed. */
    private static final class Shipped {
        private static final Experience EXPERIENCE = read(lines());

        private static List<String> lines() {
            try (InputStream in = Experience.class.getResourceAsStream(RESOURCE)) {
                return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines().toList();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
