package org.tankrounds.demo;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.tankrounds.demo.DemoReading.Value;
import org.tankrounds.places.Kit;
import org.tankrounds.tankmodel.TankState;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/**
 * Lives an invented tank from the day its eggs came until now and writes down what its class would have. The same
 * tank, seed and moment give the same readings.
 */
final class DemoSimulator {
    private static final double CARDS_SHARE = 0.6;
    private static final double NITRATE_SHARE = 0.3;
    private static final double ALKALINITY_SHARE = 0.2;
    private static final double OXYGEN_SHARE = 0.25;
    private static final double NOTE_SHARE = 0.06;
    private static final List<String> NOTES = List.of(
            "All calm", "Cleaned the front glass", "Filter floss rinsed in tank water", "Topped up two litres",
            "Lid was open in the morning", "Lots of visitors today");
    private static final BigDecimal SLIP_PH = new BigDecimal("9.3");

    private final DemoTank tank;
    private final SchoolDays days;
    private final TankLife life;
    private final List<Instant> times;
    private final Map<Instant, Double> changes;
    private final Random luck;
    private final Instant now;
    private Reader reader;
    private double alive;
    private boolean slipped;

    DemoSimulator(DemoTank tank, double elevationM, ZoneId zone, Instant now, long seed) {
        this.tank = tank;
        this.now = now;
        this.luck = new Random(seed ^ tank.key().hashCode());
        this.days = new SchoolDays(tank, zone, now);
        this.times = days.readings(luck);
        this.changes = days.waterChanges(times);
        this.life = new TankLife(tank, elevationM, days.eggsReceivedAt(), now, zone, hoursOfChanges());
        this.alive = tank.eggs().count();
    }

    DemoTank tank() {
        return tank;
    }

    Instant eggsReceivedAt() {
        return days.eggsReceivedAt();
    }

    LocalDate filterStartedOn() {
        return days.filterStartedOn();
    }

    /** The day on which the class saw them eat, or empty while they live on their yolk. */
    Optional<LocalDate> firstFeedingOn() {
        return times.stream().filter(life::feedsAt).findFirst().map(days::dayOf);
    }

    /** What the water really is; the class knows only its readings. */
    TankState truthAt(Instant moment) {
        return life.at(moment);
    }

    double truePhAt(Instant moment) {
        return life.phAt(moment);
    }

    /**
     * To be asked once, since luck goes on.
     *
     * @param kit what the class reads its cards by
     * @return oldest first
     */
    List<DemoReading> readings(Kit kit) {
        reader = new Reader(kit, tank.equipment().thermometerUnit(), luck);
        List<DemoReading> readings = new ArrayList<>();
        Instant before = days.eggsReceivedAt();
        for (int i = 0; i < times.size(); i++) {
            readings.add(reading(times.get(i), before, times.size() - 1 - i));
            before = times.get(i);
        }
        if (tank.equipment().probe()) {
            days.probeTimes().forEach(at -> readings.add(probed(at)));
        }
        readings.sort(Comparator.comparing(DemoReading::measuredAt));
        return readings;
    }

    private DemoReading reading(Instant at, Instant before, int newer) {
        TankState water = life.at(at);
        List<Value> values = new ArrayList<>();
        values.add(reader.thermometer(water.temperatureC()));
        addCards(values, at, water);
        values.add(count(Analyte.DEATHS, deaths(at, before, newer)));
        double feedG = life.feedG(before, at);
        if (feedG > 0) {
            values.add(new Value(Analyte.FEED, Reader.decimal(Math.max(0.1, feedG), 1), UnitForm.of("g")));
        }
        if (changes.containsKey(at)) {
            values.add(new Value(Analyte.WATER_CHANGE, Reader.decimal(100 * changes.get(at), 0), UnitForm.of("%")));
        }
        return new DemoReading(at, days.signedBy(at), values, note(newer));
    }

    private void addCards(List<Value> values, Instant at, TankState water) {
        boolean recent = days.isRecent(at);
        boolean cards = luck.nextDouble() < CARDS_SHARE || recent;
        boolean nitrate = luck.nextDouble() < NITRATE_SHARE;
        boolean alkalinity = luck.nextDouble() < (isSoft() ? 2 : 1) * ALKALINITY_SHARE || recent && isSoft();
        boolean oxygen = tank.equipment().oxygenKit() && (luck.nextDouble() < OXYGEN_SHARE || recent);
        if (cards) {
            values.add(ph(at, water));
            values.add(reader.card(Analyte.TOTAL_AMMONIA, water.ammoniaMgPerL(), water.temperatureC()));
            values.add(reader.card(Analyte.NITRITE, water.nitriteMgPerL(), water.temperatureC()));
        }
        if (cards && nitrate) {
            values.add(reader.card(Analyte.NITRATE, water.nitrateMgPerL(), water.temperatureC()));
        }
        if (alkalinity) {
            values.add(reader.alkalinity(water.alkalinityMgPerL()));
        }
        if (oxygen) {
            values.add(reader.oxygen(life.oxygenMgPerLAt(at)));
        }
    }

    private Value ph(Instant at, TankState water) {
        Value read = reader.card(Analyte.PH, life.phAt(at), water.temperatureC());
        return isSlip(at) ? new Value(Analyte.PH, SLIP_PH, read.form()).withStep("0.1") : read;
    }

    /** The first look at the cards on or after the day. */
    private boolean isSlip(Instant at) {
        if (tank.story().slip().isEmpty() || slipped) {
            return false;
        }
        LocalDate day = days.dayOf(now).minusDays(tank.story().slip().getAsInt());
        slipped = !days.dayOf(at).isBefore(day);
        return slipped;
    }

    private int deaths(Instant at, Instant before, int newer) {
        double hours = (at.getEpochSecond() - before.getEpochSecond()) / 3600.0;
        double perDay = life.feedsAt(at) ? 0.0015 : 0.004;
        int found = 0;
        int around = (int) alive;
        for (int i = 0; i < around; i++) {
            found += luck.nextDouble() < perDay * hours / 24 ? 1 : 0;
        }
        if (newer < tank.story().deathsNewestFirst().size()) {
            found = tank.story().deathsNewestFirst().get(newer);
        }
        alive -= found;
        return found;
    }

    private String note(int newer) {
        boolean chance = luck.nextDouble() < NOTE_SHARE;
        String picked = NOTES.get(luck.nextInt(NOTES.size()));
        if (newer < tank.story().notesNewestFirst().size()) {
            return tank.story().notesNewestFirst().get(newer);
        }
        return chance ? picked : "";
    }

    private DemoReading probed(Instant at) {
        return new DemoReading(at, "probe", List.of(reader.probe(life.at(at).temperatureC())), "");
    }

    private boolean isSoft() {
        return tank.water().alkalinityMgPerL() < 40;
    }

    private Map<Integer, Double> hoursOfChanges() {
        Map<Integer, Double> hours = new HashMap<>();
        for (Map.Entry<Instant, Double> change : changes.entrySet()) {
            int hour = (int) ((change.getKey().getEpochSecond() - days.eggsReceivedAt().getEpochSecond()) / 3600) + 2;
            hours.put(hour, change.getValue());
        }
        return hours;
    }

    private static Value count(Analyte analyte, int number) {
        return new Value(analyte, BigDecimal.valueOf(number), UnitForm.of("1"));
    }
}
