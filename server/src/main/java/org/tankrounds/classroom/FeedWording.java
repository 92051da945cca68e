package org.tankrounds.classroom;

import java.util.Optional;
import org.tankrounds.advice.Act;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.FeedSize;
import org.tankrounds.fish.Ration;
import org.tankrounds.fish.Stage;
import org.tankrounds.pages.ClassPage.Feed;
import org.tankrounds.rounds.TankToday;
import org.tankrounds.web.Formats;

/** How much and which feed a tank gets today. */
final class FeedWording {
    /** Where the feeding table ends, °C. */
    private static final double COLD_C = 2.3;
    private static final double WARM_C = 15.5;

    private final Formats formats;

    FeedWording(Formats formats) {
        this.formats = formats;
    }

    Feed feed(TankToday tank, Development lot, FishSize size) {
        if (tank.stage().isBeforeFirstFeeding()) {
            return new Feed("None yet", tank.stage() == Stage.EGG ? "Eggs live on their yolk."
                    : "They still carry a bag of yolk to live on. Feed that nobody eats only spoils the water.", "");
        }
        if (tank.isAdvised(Act.Kind.SKIP_FEED)) {
            return new Feed("None today", "The water cannot take it now, and fish bear a day without feed well.", "");
        }
        Optional<Ration> ration = Ration.of(
                tank.fishAlive(), size.weightG(), size.lengthMm(), tank.temperatureC());
        return ration.map(known -> ration(known, tank, size)).orElseGet(() -> new Feed("Ask your coordinator first",
                beyondTheTable(tank.temperatureC()), basis(tank, size)));
    }

    private static String beyondTheTable(double temperatureC) {
        if (temperatureC > WARM_C) {
            return "In water this warm they digest badly. Until your coordinator says more, give less than usual, or none.";
        }
        return temperatureC < COLD_C ? "In water this cold they hardly eat, and what they leave spoils it."
                : "They are larger than the feeding table goes.";
    }

    private Feed ration(Ration ration, TankToday tank, FishSize size) {
        return new Feed(Formats.significant(ration.gramsPerDay(), 2) + " g of " + name(FeedSize.ofLength(size.lengthMm())),
                "In three or four small portions. Stop when they stop eating, and have what is left taken out.",
                basis(tank, size) + " That is " + Formats.significant(ration.percentOfWeight(), 2)
                        + " % of what they weigh. They would grow fastest on "
                        + Formats.significant(ration.growthGramsPerDay(), 2)
                        + " g, which a classroom’s filter rarely takes.");
    }

    private String basis(TankToday tank, FishSize size) {
        return "Worked out for " + tank.fishAlive() + " fish" + " of about "
                + Formats.significant(size.weightG(), 2) + " g and " + Formats.number(size.lengthMm(), 0) + " mm ("
                + size.measuredAt().map(at -> "measured " + formats.moment(at) + ", grown since")
                        .orElse("nobody has measured them") + ") at " + Formats.number(tank.temperatureC(), 1) + " °C.";
    }

    static String name(FeedSize size) {
        return switch (size) {
            case STARTER -> "starter feed";
            case CRUMBLE_1 -> "crumble no. 1";
            case CRUMBLE_2 -> "crumble no. 2";
            case CRUMBLE_3 -> "crumble no. 3";
            case CRUMBLE_4 -> "crumble no. 4";
            case PELLET_3_32_INCH -> "pellets of 3/32 inch (2.4 mm)";
        };
    }
}
