package org.tankrounds.rounds;

import io.javalin.http.Context;
import java.util.List;
import java.util.stream.DoubleStream;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Limits;
import org.tankrounds.pages.HelpPage;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Pages;

/** How it is worked out, for anybody. The limits are printed from the ones that the engine uses. */
public final class HelpHandlers {
    private static final double[] CHLORIDES = {1, 5, 10, 20, 40};

    private final Pages pages;

    public HelpHandlers(Pages pages) {
        this.pages = pages;
    }

    public void show(Context ctx) {
        pages.show(ctx, "help", new HelpPage("How this is worked out", limits(Limits.DEFAULT),
                DoubleStream.of(CHLORIDES).mapToObj(HelpHandlers::nitrite).toList()));
    }

    private static List<HelpPage.Limit> limits(Limits limits) {
        String ammonia = "above " + Levels.limit(Driver.UN_IONISED_AMMONIA, limits.unIonisedAmmoniaMgPerL());
        String nitrite = "by the water's chloride, see below";
        String ph = "below " + Formats.number(limits.lowestPh(), 1) + " or above "
                + Formats.number(limits.highestPh(), 1);
        String chlorine = "above " + Levels.limit(Driver.CHLORINE, limits.chlorineMgPerL());
        return List.of(
                new HelpPage.Limit("Temperature", "above " + Levels.limit(Driver.TEMPERATURE, limits.eggTemperatureC()),
                        "above " + Levels.limit(Driver.TEMPERATURE, limits.feedingTemperatureC()),
                        "US EPA Region 10, 2003"),
                new HelpPage.Limit("Un-ionised ammonia", ammonia, ammonia,
                        "Piper et al. 1982; share un-ionised after Emerson et al. 1975"),
                new HelpPage.Limit("Nitrite", nitrite, nitrite, "EIFAC 1984, 95th percentile, quoted from memory"),
                new HelpPage.Limit("Dissolved oxygen",
                        "below " + Levels.limit(Driver.DISSOLVED_OXYGEN, limits.oxygenMgPerL(Stage.EGG)),
                        "below " + Levels.limit(Driver.DISSOLVED_OXYGEN, limits.oxygenMgPerL(Stage.FEEDING)),
                        "US EPA 1986"),
                new HelpPage.Limit("pH", ph, ph, "culture practice"),
                new HelpPage.Limit("Chlorine, total residual", chlorine, chlorine, "US EPA 1984"));
    }

    private static HelpPage.Nitrite nitrite(double chloride) {
        return new HelpPage.Nitrite(Formats.significant(chloride, 2) + " mg/L",
                Levels.limit(Driver.NITRITE, Limits.DEFAULT.nitriteMgPerL(chloride)));
    }
}
