package org.tankrounds.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.UUID;
import org.jooq.DSLContext;
import org.tankrounds.demo.DemoPlaces.Written;
import org.tankrounds.demo.DemoPlaces.WrittenChapter;
import org.tankrounds.season.CountEntry;
import org.tankrounds.season.CountKind;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.CountRepository;
import org.tankrounds.season.LotEdits;
import org.tankrounds.season.Season;
import org.tankrounds.season.SeasonRepository;
import org.tankrounds.season.SeenOn;
import org.tankrounds.water.Analyte;

/** The season before the one that runs: the same classes, from their eggs to a stream. */
final class DemoLastSeason {
    private static final int ENDED_BEFORE_THIS_DAYS = 80;
    private static final int LASTED_DAYS = 230;
    private static final int RELEASED_BEFORE_END_DAYS = 25;
    private static final int EGGS_BEFORE_RELEASE_DAYS = 185;
    private static final int RELEASE_LENGTH_MM = 50;
    private static final LocalTime RELEASE_AT = LocalTime.of(11, 0);
    /** How many of a tank's fish nobody can account for, tank by tank. */
    private static final int[] LOST = {0, 2, 0, 1};

    private final SeasonRepository seasons;
    private final LotEdits lotEdits;
    private final CountRepository counts;
    private final DemoLastRelease release = new DemoLastRelease();

    DemoLastSeason(SeasonRepository seasons, LotEdits lotEdits, CountRepository counts) {
        this.seasons = seasons;
        this.lotEdits = lotEdits;
        this.counts = counts;
    }

    /** A tank as it was then, and what its class read. */
    record Past(Written tank, DemoSimulator life, List<DemoReading> readings) {
        private int dead() {
            return readings.stream().flatMap(reading -> reading.values().stream())
                    .filter(value -> value.analyte() == Analyte.DEATHS)
                    .mapToInt(value -> value.value().intValue()).sum();
        }
    }

    /** @param thisSeasonStarts the first day of the season that runs */
    List<Past> live(WrittenChapter chapter, LocalDate thisSeasonStarts, ZoneId zone, long seed) {
        Instant released = released(thisSeasonStarts, zone);
        return chapter.tanks().parallelStream().map(tank -> {
            DemoSimulator life = new DemoSimulator(asItWas(tank.life().tank()), 0, zone, released, seed);
            return new Past(tank, life, life.readings(chapter.kit()));
        }).toList();
    }

    /** @return the season's code */
    String write(DSLContext tx, WrittenChapter chapter, List<Past> tanks, LocalDate thisSeasonStarts, int personId) {
        ZoneId zone = chapter.chapter().zone();
        int chapterId = chapter.chapter().chapterId();
        LocalDate ends = thisSeasonStarts.minusDays(ENDED_BEFORE_THIS_DAYS);
        Instant released = released(thisSeasonStarts, zone);
        Season season = seasons.add(tx, chapterId,
                new Season.Details(DemoPlaces.name(ends.minusDays(LASTED_DAYS), ends),
                        ends.minusDays(LASTED_DAYS), ends, Optional.of(released.atZone(zone).toLocalDate()),
                        OptionalInt.of(RELEASE_LENGTH_MM)));
        List<DemoLastRelease.Gone> gone = new ArrayList<>();
        for (int i = 0; i < tanks.size(); i++) {
            Past past = tanks.get(i);
            int eggs = past.life().tank().eggs().count();
            lotEdits.add(tx, chapterId, season.seasonId(), past.tank().tankId(), new LotEdits.Details(eggs,
                    past.life().eggsReceivedAt(), OptionalDouble.of(past.life().tank().eggs().thermalUnitsC()),
                    Optional.of("Harrowfen egg house"), Optional.of("HF-" + (eggs + i) + "-P"),
                    SeenOn.ofFirstFeeding(past.life().firstFeedingOn()), CountMethod.WEIGHED,
                    CountMethod.WEIGHED.usualSpread(eggs)), released);
            int fish = Math.max(1, eggs - past.dead() - LOST[i % LOST.length]);
            String site = DemoRelease.siteOf(chapter.chapter().code());
            count(tx, chapterId, season, UUID.randomUUID(),
                    entry(CountKind.COUNTED, released.minusSeconds(3600), past, fish, Optional.empty()), personId);
            UUID form = UUID.randomUUID();
            count(tx, chapterId, season, form, entry(CountKind.RELEASED, released, past, fish, Optional.of(site)),
                    personId);
            gone.add(new DemoLastRelease.Gone(past.tank().tankId(), form, fish,
                    Math.round(past.life().truthAt(released).temperatureC() * 10) / 10.0));
        }
        release.write(tx, chapterId, season.seasonId(), released, zone, gone, personId);
        return season.code();
    }

    private void count(
            DSLContext tx, int chapterId, Season season, UUID form, CountEntry entry, int personId) {
        counts.add(tx, chapterId, season.seasonId(), form, entry, personId, entry.at());
    }

    /** @param site where they went; empty where they stayed */
    private static CountEntry entry(CountKind kind, Instant at, Past past, int fish, Optional<String> site) {
        return new CountEntry(0, kind, at, past.tank().tankId(), Optional.empty(), fish, CountMethod.ONE_BY_ONE, 0,
                site, site.map(known -> DemoLastRelease.PAPER), Optional.empty(), Optional.empty());
    }

    private static Instant released(LocalDate thisSeasonStarts, ZoneId zone) {
        return SchoolDays.schoolDayOnOrBefore(
                        thisSeasonStarts.minusDays(ENDED_BEFORE_THIS_DAYS + RELEASED_BEFORE_END_DAYS))
                .atTime(RELEASE_AT).atZone(zone).toInstant();
    }

    /** A filter that had time to ripen, a routine that held, and no probe yet. */
    private static DemoTank asItWas(DemoTank tank) {
        DemoTank.Equipment equipment = tank.equipment();
        return new DemoTank(tank.key() + " before", tank.classroom(), tank.teacher(),
                new DemoTank.Equipment(equipment.volumeL(), equipment.setPointC(), equipment.filterKind(),
                        equipment.thermometerUnit(), false, equipment.oxygenKit()),
                tank.water(), new DemoTank.Eggs(tank.eggs().count() - 10, EGGS_BEFORE_RELEASE_DAYS, 215),
                tank.routine(), Story.ripe());
    }

    /** What classes read then, as scripts would post it. */
    static List<byte[]> lines(List<Past> tanks, ZoneId zone) {
        return tanks.stream().flatMap(past -> DemoLines.of(past.tank().code(), past.readings(), zone).stream())
                .toList();
    }
}
