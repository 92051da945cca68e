package org.tankrounds.lab;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.tankrounds.belief.Observation;
import org.tankrounds.tankmodel.TankState;
import org.tankrounds.water.Analyte;

/** A class around its tank: looks, notes, feeds, changes water, and now and then does something about a bad reading. */
final class SchoolClass {

    private static final int FEEDS_AT = 9;
    private static final double HIGH_AMMONIA_MG_PER_L = 1;
    private static final double HIGH_NITRITE_MG_PER_L = 0.25;
    private static final double LOW_PH = 6.4;
    private static final double WARM_K = 3;
    private static final int MANY_DEAD = 3;

    private final TankWater tank;
    private final Visits visits;
    private final Cards cards;
    private final Luck luck;
    private final List<Observation> notes = new ArrayList<>();
    /** What was done to the water in the hour just passed. */
    private final List<Handling> done = new ArrayList<>();
    private final Set<Analyte> lacks = EnumSet.noneOf(Analyte.class);
    /** Share to change by the hour. */
    private final Map<Integer, Double> changesInReply = new HashMap<>();
    private final int looksAt;
    private final boolean hasProbe;
    private final boolean notesFeed;
    private int silentUntil;
    private int changeDue;
    private int fastUntil;
    private int foundDead;
    private double feedSinceNote;

    SchoolClass(TankWater tank, Mechanics.Visits when, int fromHour, Luck luck) {
        this.tank = tank;
        this.luck = luck;
        visits = new Visits(when, tank.of(Trait.READS), tank.of(Trait.READS_AT_WEEKENDS), luck);
        cards = new Cards(tank, luck);
        looksAt = luck.between(8, 14);
        hasProbe = luck.happens(tank.of(Trait.PROBE));
        notesFeed = luck.happens(tank.of(Trait.FEED_NOTED));
        List.of(Analyte.PH, Analyte.TOTAL_AMMONIA, Analyte.NITRITE).stream()
                .filter(analyte -> luck.happens(tank.of(Trait.KIT_LACKS))).forEach(lacks::add);
        changeDue = fromHour + 24 * (int) tank.of(Trait.CHANGE_EVERY_DAYS);
    }

    /** The same class around another tank, with other luck; its notes begin empty. */
    SchoolClass(SchoolClass other, TankWater tank, Luck luck) {
        this.tank = tank;
        this.luck = luck;
        visits = new Visits(other.visits);
        cards = new Cards(other.cards, luck);
        lacks.addAll(other.lacks);
        changesInReply.putAll(other.changesInReply);
        looksAt = other.looksAt;
        hasProbe = other.hasProbe;
        notesFeed = other.notesFeed;
        silentUntil = other.silentUntil;
        changeDue = other.changeDue;
        fastUntil = other.fastUntil;
        foundDead = other.foundDead;
        feedSinceNote = other.feedSinceNote;
    }

    List<Observation> notes() {
        return notes;
    }

    /** What it did to its water in the hour just passed, so that another's can be done the same. */
    List<Handling> done() {
        return List.copyOf(done);
    }

    /** What the class does in one hour. */
    void pass(int hour, SchoolCalendar calendar) {
        int clock = calendar.hourOfDay(hour);
        boolean school = calendar.isSchoolDay(hour);
        done.clear();
        if (clock == 0) {
            foundDead += tank.deaths();
            notice();
        }
        if (hasProbe && clock % 3 == 0) {
            notes.add(cards.probe(calendar.at(hour), tank.state().temperatureC()));
        }
        if (clock == FEEDS_AT && !fasts(hour)) {
            feedSinceNote += handle(Handling.feed(
                    school ? 1 + slipOfTheHand() : tank.of(Trait.HOLIDAY_RATION)));
        }
        if (clock == looksAt) {
            if (luck.about("silence").happens(tank.of(Trait.FALLS_SILENT_PER_DAY))) {
                silentUntil = hour + (int) (24 * luck.between(4, tank.of(Trait.SILENT_DAYS)));
            }
            if (luck.about("visit").happens(visits.chance(hour, calendar)) && hour >= silentUntil) {
                look(calendar.at(hour).plusSeconds(60L * luck.about("minute").between(0, 50)), hour);
            }
            Double share = changesInReply.remove(hour);
            if (share != null) {
                change(share, calendar.at(hour).plusSeconds(3100));
            }
            changeAsUsual(calendar.at(hour).plusSeconds(3300), hour, school);
        }
    }

    /** Asked not to feed before an hour of the year. */
    void fast(int untilHour) {
        fastUntil = Math.max(fastUntil, untilHour);
    }

    boolean fasts(int hour) {
        return hour < fastUntil;
    }

    private double handle(Handling handling) {
        done.add(handling);
        return handling.on(tank);
    }

    private void notice() {
        if (tank.needsRepair() && luck.about("notice").happens(tank.of(Trait.NOTICED_PER_DAY))) {
            handle(Handling.repair());
        }
    }

    private double slipOfTheHand() {
        return luck.about("feed").happens(tank.of(Trait.OVERFEEDS))
                ? tank.of(Trait.OVERFEEDS_TIMES) : luck.between(-0.3, 0.3);
    }

    private void look(Instant at, int hour) {
        TankState water = tank.state();
        Observation temperature = note(cards.thermometer(at, water.temperatureC()));
        if (luck.about("cards").happens(tank.of(Trait.CARDS))) {
            double ph = tested(Analyte.PH, () -> cards.ph(at, tank.ph()));
            double ammonia = tested(Analyte.TOTAL_AMMONIA, () -> cards.ammonia(at, water.ammoniaMgPerL()));
            double nitrite = tested(Analyte.NITRITE, () -> cards.nitrite(at, water.nitriteMgPerL()));
            react(ph, ammonia, nitrite, hour);
        }
        otherTests(at, water);
        if (luck.about("deaths noted").happens(tank.of(Trait.DEATHS_NOTED))) {
            note(Observation.of(at, Analyte.DEATHS, foundDead, 0));
            visits.worryAt(hour, foundDead >= MANY_DEAD);
            foundDead = 0;
        }
        if (notesFeed && feedSinceNote > 0) {
            note(Observation.of(at, Analyte.FEED, Math.rint(10 * feedSinceNote) / 10, 0));
            feedSinceNote = 0;
        }
        boolean isWarm = temperature.value() > tank.of(Trait.SET_POINT_C) + WARM_K;
        visits.worryAt(hour, isWarm);
        if ((isWarm || tank.needsRepair() && luck.about("eye for it").happens(0.2))
                && luck.about("mending").happens(tank.of(Trait.REPAIRS))) {
            handle(Handling.repair());
        }
    }

    /** NaN where the class has no kit for it. */
    private double tested(Analyte analyte, Supplier<Observation> card) {
        return lacks.contains(analyte) ? Double.NaN : note(card.get()).value();
    }

    private void otherTests(Instant at, TankState water) {
        if (luck.about("alkalinity test").happens(tank.of(Trait.OTHER_TESTS))) {
            note(cards.alkalinity(at, water.alkalinityMgPerL()));
        }
        if (luck.about("nitrate test").happens(tank.of(Trait.OTHER_TESTS))) {
            note(cards.nitrate(at, water.nitrateMgPerL()));
        }
        if (luck.about("oxygen test").happens(tank.of(Trait.OTHER_TESTS) / 2)) {
            note(cards.oxygen(at, tank.oxygenMgPerL()));
        }
    }

    private Observation note(Observation observation) {
        notes.add(observation);
        return observation;
    }

    /** Tests for chlorine, out of turn. */
    Observation testChlorine(Instant at) {
        return cards.chlorine(at, tank.chlorineMgPerL());
    }

    /** Reads all there is, out of turn, with its own kit and eyes. */
    List<Observation> testAll(Instant at) {
        TankState water = tank.state();
        return List.of(cards.thermometer(at, water.temperatureC()), cards.ph(at, tank.ph()),
                cards.ammonia(at, water.ammoniaMgPerL()), cards.nitrite(at, water.nitriteMgPerL()),
                cards.alkalinity(at, water.alkalinityMgPerL()), cards.oxygen(at, tank.oxygenMgPerL()));
    }

    private void react(double ph, double ammonia, double nitrite, int hour) {
        boolean isSour = ph <= LOW_PH;
        boolean isBad = ammonia >= HIGH_AMMONIA_MG_PER_L || nitrite >= HIGH_NITRITE_MG_PER_L;
        visits.worryAt(hour, isSour || isBad);
        if (isSour && luck.about("buffer").happens(tank.of(Trait.REACTS))) {
            handle(Handling.buffer(luck.between(15.0, 45.0)));
        }
        if (isBad && luck.about("reply").happens(tank.of(Trait.REACTS))) {
            int from = hour + 24 * (int) Math.rint(luck.uniform() * tank.of(Trait.REACTS_AFTER_DAYS));
            changesInReply.put(from, luck.between(0.2, 0.5));
            if (luck.happens(tank.of(Trait.REACTS_TWICE))) {
                changesInReply.put(from + 24, luck.between(0.2, 0.5));
            }
            fastUntil = luck.happens(0.5) ? hour + 24 * luck.between(1, 3) : fastUntil;
        }
    }

    private void changeAsUsual(Instant at, int hour, boolean school) {
        if (!school || hour < changeDue) {
            return;
        }
        changeDue = hour + 24 * (int) Math.max(1, tank.of(Trait.CHANGE_EVERY_DAYS)
                + luck.about("change").between(-1.5, 1.5));
        if (!luck.happens(tank.of(Trait.CHANGE_SKIPPED))) {
            double times = luck.happens(tank.of(Trait.CHANGE_DOUBLED)) ? 2 : 1;
            change(times * tank.of(Trait.CHANGE_SHARE), at);
        }
    }

    private void change(double share, Instant at) {
        handle(Handling.change(share));
        if (luck.about("change noted").happens(tank.of(Trait.CHANGES_NOTED))) {
            note(Observation.of(at, Analyte.WATER_CHANGE, 5 * Math.rint(20 * share), 0));
        }
    }
}
