package org.tankrounds.classroom;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.tankrounds.advice.StandingAmounts;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.MassDeaths;
import org.tankrounds.pages.WhatToDoPage;
import org.tankrounds.pages.WhatToDoPage.Trouble;
import org.tankrounds.pages.WhatToDoPage.Warmth;
import org.tankrounds.places.Tank;
import org.tankrounds.rounds.TankToday;
import org.tankrounds.water.Units;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Scale;

/**
 * What to do if, with the amounts of one tank. Where the advice of the day says the same, it is the same sentence; what
 * hangs on readings is left to the tank's page.
 */
final class WhatToDoPages {
    private static final int QUARTER_PERCENT = 25;
    private static final double SLOWLY_K = 1;

    private final TankToday today;
    private final Tank tank;
    private final Formats formats;
    private final StandingAmounts amounts;

    WhatToDoPages(TankToday today, Formats formats) {
        this.today = today;
        this.tank = today.tank();
        this.formats = formats;
        this.amounts = new StandingAmounts(tank.volumeL(), tank.chillerSetPointC().orElseGet(today::temperatureC));
    }

    WhatToDoPage page() {
        String here = "/tanks/" + tank.code();
        String heading = say("paper.todo.title");
        return new WhatToDoPage(heading + ", " + tank.classroom(), heading, tank.school() + ", " + tank.classroom(),
                say("paper.todo.about", water(tank.volumeL()), formats.longDate(day())), here,
                here + "/what-to-do.pdf", degrees(amounts.heldC()), degrees(StandingAmounts.ROOM_C),
                List.of(warmth(Stage.EGG, "paper.todo.early"), warmth(Stage.FEEDING, "paper.todo.feeding")),
                List.of(List.of(warm(), cloudy()), List.of(dead(), powerless())),
                List.of(say("advice.mains"), say("paper.todo.reagents"), say("paper.todo.outranked")),
                Stream.of("coordinator", "mentor", "office", "agency", "vet")
                        .map(who -> say("paper.todo.call." + who)).toList());
    }

    private LocalDate day() {
        return LocalDate.ofInstant(formats.now(), tank.zone());
    }

    private Warmth warmth(Stage stage, String who) {
        StandingAmounts.Warming warming = amounts.warming(stage);
        return new Warmth(say(who), today.stage().isBeforeFirstFeeding() == stage.isBeforeFirstFeeding(),
                degrees(StandingAmounts.limitC(stage)), hours(warming.bareGlassH()), hours(warming.foamedH()),
                kilograms(amounts.iceToHoldKg(stage)));
    }

    private Trouble warm() {
        double stepK = formats.speech().scale() == Scale.CELSIUS ? 2 : 4 / Scale.FAHRENHEIT.ofDifference(1);
        double mostKg = amounts.iceAtOnceKg();
        return new Trouble(say("paper.todo.warm"), List.of(
                say("advice.chiller") + " " + say("advice.chiller.how"),
                say("paper.todo.warm.cover"),
                say("paper.todo.warm.ice", difference(stepK), kilograms(amounts.iceToCoolKg(stepK, today.stage())),
                        kilograms(mostKg), StandingAmounts.bottlesWithin(mostKg)),
                say("paper.todo.warm.slowly", difference(SLOWLY_K)),
                say("paper.todo.warm.noFeed", degrees(StandingAmounts.TOO_WARM_TO_FEED_C))),
                say("advice.ice.caution"));
    }

    private Trouble cloudy() {
        double quarterL = amounts.changeL(QUARTER_PERCENT);
        double mostL = amounts.changeL(StandingAmounts.MOST_CHANGED_PERCENT);
        return new Trouble(say("paper.todo.cloudy"), List.of(
                say("paper.todo.cloudy.noFeed"),
                say("paper.todo.cloudy.measure"),
                say("paper.todo.cloudy.change", water(quarterL), StandingAmounts.buckets(quarterL), water(mostL),
                        StandingAmounts.buckets(mostL)),
                say(tank.hasChloramine() ? "advice.change.treat.chloramine" : "advice.change.treat.chlorine") + " "
                        + say("advice.change.slowly"),
                say("paper.todo.cloudy.filter")),
                say("advice.reachingIn"));
    }

    private Trouble dead() {
        return new Trouble(say("paper.todo.dead"), List.of(
                say("advice.air") + " " + say("advice.air.how"),
                say("paper.todo.dead.takeOut"),
                say("paper.todo.dead.measure"),
                say("paper.todo.dead.change"),
                say("paper.todo.dead.call") + " " + howMany()),
                say("advice.help.caution"));
    }

    /** In numbers where somebody counted, so that nobody has to reckon then. */
    private String howMany() {
        OptionalInt many = MassDeaths.fewestOf(today.fishAlive());
        OptionalInt pressing = MassDeaths.fewestThatPressOf(today.fishAlive());
        return many.isEmpty() || pressing.isEmpty() ? say("paper.todo.dead.shares")
                : say("paper.todo.dead.numbers", today.fishAlive(), many.getAsInt(), pressing.getAsInt());
    }

    private Trouble powerless() {
        return new Trouble(say("paper.todo.power"), List.of(
                say("paper.todo.power.air"),
                say("paper.todo.power.cover"),
                say("paper.todo.power.hours"),
                say("paper.todo.power.back"),
                say("paper.todo.power.nobody")), "");
    }

    private String water(double litres) {
        return say("paper.todo.water", Formats.number(litres, 0), Formats.number(Units.usGallons(litres), 0));
    }

    private String degrees(double celsius) {
        return formats.temperature(celsius, 0);
    }

    private String difference(double kelvin) {
        Scale scale = formats.speech().scale();
        return Formats.significant(scale.ofDifference(kelvin), 2) + Formats.NO_BREAK + scale.sign();
    }

    private static String kilograms(double kg) {
        return Formats.significant(kg, 2) + Formats.NO_BREAK + "kg";
    }

    /** Rounded to the safe side. */
    private String hours(double hours) {
        return hours < 1 ? say("paper.todo.already") : formats.speech().say("time.hours", (long) hours);
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
