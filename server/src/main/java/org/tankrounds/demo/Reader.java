package org.tankrounds.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Random;
import org.tankrounds.demo.DemoReading.Value;
import org.tankrounds.places.Kit;
import org.tankrounds.places.KitScale;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.water.Units;

/** How a class reads: a thermometer to its graduation, a card to the colour that looks nearest. */
final class Reader {
    /** Two pairs of eyes differ; as a share of the value, so that a card's low colours are told apart well. */
    private static final double EYE_SHARE = 0.12;
    private static final double PH_EYE = 0.04;

    private final Kit kit;
    private final String thermometerUnit;
    private final Random luck;

    Reader(Kit kit, String thermometerUnit, Random luck) {
        this.kit = kit;
        this.thermometerUnit = thermometerUnit;
        this.luck = luck;
    }

    /** Whole degrees Fahrenheit, half degrees Celsius. */
    Value thermometer(double temperatureC) {
        UnitForm form = UnitForm.of(thermometerUnit);
        double shown = Units.fromCanonical(Analyte.TEMPERATURE, form, temperatureC, temperatureC, 0)
                + 0.1 * luck.nextGaussian();
        boolean fahrenheit = thermometerUnit.equals("[degF]");
        return new Value(Analyte.TEMPERATURE, decimal(fahrenheit ? Math.rint(shown) : Math.rint(2 * shown) / 2, 1),
                form).withStep(fahrenheit ? "1" : "0.5");
    }

    Value probe(double temperatureC) {
        return new Value(Analyte.TEMPERATURE, decimal(temperatureC + 0.05 * luck.nextGaussian(), 1),
                UnitForm.of("Cel")).withStep("0.1");
    }

    /** By the kit's card, which says unit and form. */
    Value card(Analyte analyte, double canonical, double temperatureC) {
        KitScale scale = kit.scale(analyte).orElseThrow();
        double level = Units.fromCanonical(analyte, scale.form(), canonical, temperatureC, 0);
        double seen = analyte == Analyte.PH
                ? level + PH_EYE * luck.nextGaussian() : level * (1 + EYE_SHARE * luck.nextGaussian());
        return new Value(analyte, decimal(nearest(scale.steps(), seen), 1), scale.form());
    }

    /** Counted drops, ten mg/L each. */
    Value alkalinity(double mgPerL) {
        return new Value(Analyte.ALKALINITY, decimal(10 * Math.rint(mgPerL / 10), 0), new UnitForm("mg/L", "CaCO3"))
                .withStep("10");
    }

    Value oxygen(double mgPerL) {
        return new Value(Analyte.DISSOLVED_OXYGEN,
                decimal(Math.rint(2 * (mgPerL + 0.15 * luck.nextGaussian())) / 2, 1), UnitForm.of("mg/L"))
                .withStep("0.5");
    }

    static BigDecimal decimal(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN).stripTrailingZeros()
                .add(BigDecimal.ZERO.setScale(0));
    }

    private static double nearest(List<Double> steps, double seen) {
        double best = steps.get(0);
        for (double step : steps) {
            if (Math.abs(step - seen) < Math.abs(best - seen)) {
                best = step;
            }
        }
        return best;
    }
}
