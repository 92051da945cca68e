package org.tankrounds.classroom;

import java.util.Locale;
import java.util.Optional;
import org.tankrounds.advice.Act;
import org.tankrounds.fish.FeedSize;
import org.tankrounds.fish.Ration;
import org.tankrounds.fish.Stage;
import org.tankrounds.pages.ClassPage.Feed;
import org.tankrounds.readings.Wording;
import org.tankrounds.rounds.TankToday;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.water.Units;
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

    Feed feed(TankToday tank, FishSize size) {
        if (tank.stage().isBeforeFirstFeeding()) {
            String food = tank.stage() == Stage.EGG ? "classroom.feed.eggs" : "classroom.feed.fry";
            return new Feed(say("classroom.feed.noneYet"), say(food), "");
        }
        if (tank.isAdvised(Act.Kind.SKIP_FEED)) {
            return new Feed(say("classroom.feed.noneToday"), say("classroom.feed.skip"), "");
        }
        Optional<Ration> ration = Ration.of(
                tank.fishAlive(), size.weightG(), size.lengthMm(), tank.temperatureC());
        return ration.map(known -> ration(known, tank, size))
                .orElseGet(() -> new Feed(say("classroom.feed.ask"),
                        say(beyondTheTable(tank.temperatureC())), basis(tank, size)));
    }

    Feed noneInTrouble() {
        return new Feed(say("classroom.feed.noneToday"), say("classroom.feed.trouble"), "");
    }

    private static String beyondTheTable(double temperatureC) {
        if (temperatureC > WARM_C) {
            return "classroom.feed.warm";
        }
        return temperatureC < COLD_C ? "classroom.feed.cold" : "classroom.feed.large";
    }

    private Feed ration(Ration ration, TankToday tank, FishSize size) {
        String name = formats.speech().say("classroom.size." + FeedSize.ofLength(size.lengthMm()).name()
                .toLowerCase(Locale.ROOT));
        return new Feed(say("classroom.feed.amount", Formats.significant(ration.gramsPerDay(), 2), name),
                say("classroom.feed.how"),
                basis(tank, size) + " " + say("classroom.feed.share", Formats.significant(ration.percentOfWeight(), 2),
                        Formats.significant(ration.growthGramsPerDay(), 2)));
    }

    private String basis(TankToday tank, FishSize size) {
        String weight = Formats.significant(size.weightG(), 2);
        String length = Formats.number(size.lengthMm(), 0);
        String water = temperature(tank);
        return size.measuredAt()
                .map(at -> say("classroom.feed.measured", tank.fishAlive(), weight, length, formats.moment(at), water))
                .orElseGet(() -> say("classroom.feed.guessed", tank.fishAlive(), weight, length, water));
    }

    /** On the class's own thermometer. */
    private String temperature(TankToday tank) {
        UnitForm scale = UnitForm.of(tank.tank().thermometerUnit());
        double degrees = Units.fromCanonical(Analyte.TEMPERATURE, scale, tank.temperatureC(), 0, 0);
        return Formats.number(degrees, 1) + Formats.NO_BREAK + formats.speech().say(Wording.unit(scale));
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
