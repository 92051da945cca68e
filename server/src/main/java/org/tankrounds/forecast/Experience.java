package org.tankrounds.forecast;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;

/**
 * What many simulated seasons teach about how far to trust the look ahead: it turns the signs of a tank into a chance
 * and an exposure. Made by {@code tankrounds lab learn} from worlds drawn at random, so that it knows of no
 * particular one; the named worlds that scores are reported for are not among them.
 *
 * @param trust how much of the log-odds of the look ahead counts
 * @param chance what is added to them
 * @param calibration what the chance then is
 * @param harmAhead how much of the look ahead's own harm counts in that of a tank that does go beyond a limit; it
 *     tells water far beyond one, as few seasons have it, from water just beyond
 * @param harm what is added to it, in natural logarithms of fish-hours per fish
 * @param harmTrust how much of that sum counts: the mean harm of tanks it knows little of is nearer to all tanks'
 * @param harmScale makes the mean of the exposures said that of the true ones
 */
public record Experience(double trust, Trees chance, Calibration calibration, double harmAhead, Trees harm,
        double harmTrust, double harmScale) {

    private static final String RESOURCE = "org.tankrounds.forecast.experience";
    private static final String TRUST = "trust_in_look_ahead";
    private static final String CHANCE = "chance";
    private static final String CALIBRATION = "calibration";
    private static final String HARM = "harm";
    private static final String HARM_AHEAD = "trust_in_look_ahead_of_harm";
    private static final String HARM_TRUST = "trust_in_harm";
    private static final String HARM_SCALE = "harm_scale";
    /** Nobody is ever surer than this. */
    private static final double LEAST_CHANCE = 0.002;
    private static final double FEW_PATHS = 0.01;
    /** Below so many fish-hours per fish one harm foreseen is much like another. */
    private static final double LITTLE_HARM = 10;
    private static final List<Sign> EXCESSES = List.of(Sign.TEMPERATURE_EXCESS, Sign.AMMONIA_EXCESS,
            Sign.NITRITE_EXCESS, Sign.OXYGEN_EXCESS, Sign.PH_EXCESS);

    /** As it ships. */
    static Experience shipped() {
        return Shipped.EXPERIENCE;
    }

    /** Probability of two hours or more beyond a limit, for a tank's signs by {@link Sign#ordinal}. */
    public double chance(double[] signs) {
        double logOdds = trust * lookAheadLogOdds(signs) + chance.of(signs);
        double came = calibration.of(1 / (1 + StrictMath.exp(-logOdds)));
        return Math.min(1 - LEAST_CHANCE, Math.max(LEAST_CHANCE, came));
    }

    /** Of the look ahead's chance; where a handful of its paths would decide, they do not. */
    public static double lookAheadLogOdds(double[] signs) {
        double chance = Math.min(1 - FEW_PATHS, Math.max(FEW_PATHS, signs[Sign.LOOK_AHEAD_CHANCE.ordinal()]));
        return StrictMath.log(chance / (1 - chance));
    }

    /** Natural logarithm of what the look ahead sees beyond all limits, as times {@value #LITTLE_HARM} fish-hours. */
    public static double lookAheadHarm(double[] signs) {
        double excess = 0;
        for (Sign sign : EXCESSES) {
            excess += StrictMath.expm1(signs[sign.ordinal()]);
        }
        return StrictMath.log1p(excess / LITTLE_HARM);
    }

    /** Expected fish-hours beyond a limit per fish, each hour by how far beyond. */
    public double exposurePerFish(double[] signs) {
        return exposurePerFish(signs, chance(signs));
    }

    /** The same where the chance is known. */
    double exposurePerFish(double[] signs, double chance) {
        return chance * harmScale
                * StrictMath.exp(harmTrust * (harmAhead * lookAheadHarm(signs) + harm.of(signs)));
    }

    public Experience scaledBy(double scale) {
        return new Experience(trust, chance, calibration, harmAhead, harm, harmTrust, harmScale * scale);
    }

    public Experience with(Calibration other) {
        return new Experience(trust, chance, other, harmAhead, harm, harmTrust, harmScale);
    }

    /** The lines of its properties file. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(HARM_SCALE + "=" + harmScale);
        lines.add(HARM_AHEAD + "=" + harmAhead);
        lines.add(HARM_TRUST + "=" + harmTrust);
        lines.add(TRUST + "=" + trust);
        lines.addAll(calibration.lines(CALIBRATION));
        lines.addAll(chance.lines(CHANCE));
        lines.addAll(harm.lines(HARM));
        return lines;
    }

    /** From the entries of its properties file. */
    public static Experience read(Map<String, String> entries) {
        return new Experience(number(entries, TRUST), Trees.read(entries, CHANCE),
                Calibration.read(entries, CALIBRATION), number(entries, HARM_AHEAD), Trees.read(entries, HARM),
                number(entries, HARM_TRUST), number(entries, HARM_SCALE));
    }

    private static double number(Map<String, String> entries, String key) {
        return Double.parseDouble(entries.get(key));
    }

    /** Read once, when first needed. */
    private static final class Shipped {
        private static final Experience EXPERIENCE = read(entries());

        private static Map<String, String> entries() {
            ResourceBundle file = ResourceBundle.getBundle(RESOURCE, Locale.ROOT);
            Map<String, String> entries = new HashMap<>();
            file.keySet().forEach(key -> entries.put(key, file.getString(key)));
            return entries;
        }
    }
}
