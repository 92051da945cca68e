package org.tankrounds.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.tankrounds.forecast.Driver;
import org.tankrounds.water.Analyte;

/**
 * One thing to do or bring, as numbers; the page makers turn it into words.
 *
 * @param kind what
 * @param driver what it is against; empty where it serves all
 * @param amount how much, in {@code unit}; empty where no amount applies or the volume has to be known for it
 * @param unit {@code %}, {@code g}, {@value #G_PER_100_L}, {@code kg}, {@code mg/L}, {@code h} or empty
 * @param secondAmount litres of a water change; kilograms of ice that half a day takes, where that is more than
 *     one load; how many times as much as usual was fed, where feed is withheld
 * @param secondUnit {@code L}, {@code kg}, {@code times} or empty
 * @param asks for a reading: the analyte's public code; of a water change that is not enough, the one to read
 *     before the next; else empty
 * @param basis the class and method whose formula gave the amount; empty for plain common practice
 */
public record Act(
        Kind kind,
        Optional<Driver> driver,
        OptionalDouble amount,
        String unit,
        OptionalDouble secondAmount,
        String secondUnit,
        String asks,
        String basis) {

    /** The unit of a dose where nobody has said how much water there is. */
    public static final String G_PER_100_L = "g/100 L";
    private static final double SOME_L = 100;

    /** What can be done. */
    public enum Kind {
        /** Replace a share of the water, with treated water at the tank's temperature: %, L. */
        WATER_CHANGE,
        /** Change none for now: the source water's higher pH would make more of the ammonia harmful. */
        LEAVE_WATER,
        /** Change none until chlorine is read: fish die after a change, and the water may have been untreated. */
        TEST_WATER_FIRST,
        /** Plain salt against nitrite, dissolved first and added over hours: g. */
        SALT,
        /** Baking soda against falling pH, not while ammonia is high: g. */
        BICARBONATE,
        /** Bring no alkalinity back for now: the ammonia and nitrite held would harm more by it. */
        LEAVE_ALKALINITY,
        /** Sealed bottles of ice to hold the water for 12 h: kg. */
        ICE,
        /** Is the chiller powered, running and set right? */
        CHECK_CHILLER,
        /** More air: stone, pump, surface. */
        MORE_AIR,
        /** Give no feed for some hours: h. */
        SKIP_FEED,
        /** Neutralise chlorine with sodium thiosulfate pentahydrate: g. */
        THIOSULFATE,
        /** Read something that nobody has read for long. */
        ASK_FOR_READING,
        /** Look at the fish and count the dead. */
        LOOK_AT_FISH,
        /** Call those who know fish diseases. */
        CALL_FOR_HELP
    }

    static Act plain(Kind kind, Driver driver) {
        return new Act(kind, Optional.of(driver), OptionalDouble.empty(), "", OptionalDouble.empty(), "",
                "", "");
    }

    static Act amount(Kind kind, Driver driver, double amount, String unit, String basis) {
        return new Act(kind, Optional.of(driver), OptionalDouble.of(amount), unit,
                OptionalDouble.empty(), "", "", basis);
    }

    /** @param gramsIn what so many litres take */
    static Act dose(Kind kind, Driver driver, DoubleUnaryOperator gramsIn, OptionalDouble volumeL, String basis) {
        return amount(kind, driver, gramsIn.applyAsDouble(volumeL.orElse(SOME_L)),
                volumeL.isPresent() ? "g" : G_PER_100_L, basis);
    }

    static Act ask(Driver driver, Analyte analyte) {
        return new Act(Kind.ASK_FOR_READING, Optional.of(driver), OptionalDouble.empty(), "",
                OptionalDouble.empty(), "", analyte.code(), "");
    }

    /** @param next what to read before it is changed again; empty where once is enough */
    static Act waterChange(Driver driver, double percent, OptionalDouble volumeL, Optional<Analyte> next) {
        OptionalDouble litres = volumeL.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(volumeL.getAsDouble() * percent / 100);
        return new Act(Kind.WATER_CHANGE, Optional.of(driver), OptionalDouble.of(percent), "%", litres, "L",
                next.map(Analyte::code).orElse(""), "WaterChange.after");
    }

    /** @param times as much as usual was fed lately; empty where no more than usual */
    static Act skipFeed(Driver driver, double hours, OptionalDouble times) {
        return amount(Kind.SKIP_FEED, driver, hours, "h", "").withSecond(times, "times");
    }

    Act withSecond(OptionalDouble second, String itsUnit) {
        return new Act(kind, driver, amount, unit, second, second.isPresent() ? itsUnit : "", asks, basis);
    }

    boolean isAgainst(Driver limit) {
        return driver.equals(Optional.of(limit));
    }
}
