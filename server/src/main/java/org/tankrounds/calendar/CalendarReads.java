package org.tankrounds.calendar;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.tankrounds.belief.Observation;
import org.tankrounds.calendar.Ages.Age;
import org.tankrounds.calendar.TankAhead.Group;
import org.tankrounds.calendar.TankAhead.Release;
import org.tankrounds.fish.DateWindow;
import org.tankrounds.fish.Growth;
import org.tankrounds.fish.GrowthAhead;
import org.tankrounds.fish.GrowthPace;
import org.tankrounds.fish.GrowthPace.Weighed;
import org.tankrounds.fish.LotCalendar;
import org.tankrounds.fish.Warmth;
import org.tankrounds.places.Tank;
import org.tankrounds.season.Account;
import org.tankrounds.season.CountEntry;
import org.tankrounds.season.CountRepository;
import org.tankrounds.season.FishSample;
import org.tankrounds.season.FishSampleRepository;
import org.tankrounds.season.Lot;
import org.tankrounds.season.LotHistory;
import org.tankrounds.season.Season;
import org.tankrounds.season.SeasonReads;
import org.tankrounds.tankmodel.Cohort;
import org.tankrounds.tankmodel.Room;
import org.tankrounds.tankmodel.WeeksAhead;

/** Gathers what is known of a tank's season, and reckons what is ahead. */
public final class CalendarReads {
    /** A fingerling (screening stages of the project). */
    static final int USUAL_RELEASE_LENGTH_MM = 50;

    private static final Duration LOOKED_AHEAD = Duration.ofDays(28);

    private final SeasonReads reads;
    private final FishSampleRepository samples;

    public CalendarReads(SeasonReads reads, FishSampleRepository samples) {
        this.reads = reads;
        this.samples = samples;
    }

    SeasonReads season() {
        return reads;
    }

    /** Of every tank in use, and of those retired that had eggs in the season. */
    List<TankAhead> list(DSLContext tx, int chapterId, Season season, Instant now) {
        List<TankAhead> ahead = new ArrayList<>();
        List<Lot> lots = reads.lots().listOfSeason(tx, chapterId, season.seasonId());
        List<CountEntry> entries = reads.counts().list(tx, chapterId, season.seasonId());
        for (Tank tank : reads.tanks().listWithRetired(tx, chapterId)) {
            TankAhead one = load(tx, chapterId, season, tank, lots, entries, now);
            if (one.lot().isPresent() || tank.retiredAt().isEmpty()) {
                ahead.add(one);
            }
        }
        return ahead;
    }

    TankAhead load(DSLContext tx, int chapterId, Season season, Tank tank, Instant now) {
        return load(tx, chapterId, season, tank, reads.lots().listOfSeason(tx, chapterId, season.seasonId()),
                reads.counts().list(tx, chapterId, season.seasonId()), now);
    }

    private TankAhead load(DSLContext tx, int chapterId, Season season, Tank tank, List<Lot> allLots,
            List<CountEntry> allEntries, Instant now) {
        ZoneId zone = tank.zone();
        Instant asOf = season.until(zone).isBefore(now) ? season.until(zone) : now;
        List<Lot> lots = allLots.stream().filter(lot -> lot.tankId() == tank.tankId()).toList();
        List<Observation> seen = reads.observations().list(tx, chapterId, tank.tankId(), season.from(zone), asOf);
        LotHistory history = LotHistory.of(tank, lots, seen, asOf);
        Account account = history.account(CountRepository.of(tank.tankId(), allEntries));
        List<FishSample> measured = samples.list(tx, chapterId, tank.tankId(), season.from(zone)).stream()
                .filter(sample -> !sample.measuredAt().isAfter(asOf)).toList();
        List<Group> groups = groups(ages(lots, account.ledger().alive(), tank, asOf), measured, history.warmth(),
                season, account.ledger().alive(), zone);
        WaterHabit habit = WaterHabit.of(seen, asOf, zone);
        Room room = new Room(tank.volumeL(), tank.filterAreaM2().orElse(Room.USUAL_FILTER_AREA_M2), habit.share(),
                habit.everyDays());
        Optional<WeeksAhead> weeks = Optional.of(groups)
                .filter(known -> account.ledger().alive() > 0 && !known.isEmpty())
                .map(known -> WeeksAhead.of(
                        known.stream().map(group -> new Cohort(group.growth(), group.fish())).toList(), room, asOf,
                        leaveAt(known, season, zone, asOf)))
                .filter(known -> !known.weeks().isEmpty());
        return new TankAhead(tank, season, account, groups, room, habit, weeks, asOf);
    }

    /** Of the eggs that came; while none did, of the next to come. */
    private static List<Age> ages(List<Lot> lots, int alive, Tank tank, Instant asOf) {
        List<Lot> come = lots.stream().filter(lot -> lot.hasCome(asOf, tank.zone())).toList();
        return come.isEmpty()
                ? lots.stream().min(Comparator.comparing(Lot::receivedAt).thenComparing(Lot::lotId))
                        .map(lot -> List.of(new Age(lot, alive))).orElse(List.of())
                : Ages.of(come, alive, tank.zone());
    }

    /** @param samples the newest first; what was measured before they can feed says nothing of their growth */
    private static List<Group> groups(List<Age> ages, List<FishSample> samples, Warmth warmth, Season season,
            int alive, ZoneId zone) {
        if (ages.isEmpty()) {
            return samples.isEmpty() ? List.of()
                    : List.of(group(Optional.empty(), Optional.empty(), alive, samples, warmth, season));
        }
        List<LotCalendar> dates = ages.stream().map(age -> LotCalendar.of(age.lot().receivedAt(),
                age.lot().thermalUnitsC(), warmth, age.lot().seenOn().at(zone))).toList();
        List<GrowthAhead> fry = dates.stream().map(known -> GrowthAhead.ofFry(known.firstFeeding(), warmth)).toList();
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i < ages.size(); i++) {
            int index = i;
            groups.add(group(Optional.of(ages.get(i).lot()), Optional.of(dates.get(i)), ages.get(i).fish(),
                    samples.stream().filter(sample -> Ages.nearest(sample, fry) == index).toList(), warmth, season));
        }
        return groups;
    }

    private static Group group(Optional<Lot> lot, Optional<LotCalendar> dates, int fish, List<FishSample> samples,
            Warmth warmth, Season season) {
        GrowthAhead growth = growth(dates.map(LotCalendar::firstFeeding), samples, warmth);
        int lengthMm = season.details().releaseLengthMm().orElse(USUAL_RELEASE_LENGTH_MM);
        return new Group(lot, dates, fish, growth,
                new Release(lengthMm, season.details().releaseLengthMm().isPresent(), growth.reaches(lengthMm)));
    }

    /** @param samples the newest first; of fish without eggs at least one */
    private static GrowthAhead growth(Optional<DateWindow> feeding, List<FishSample> samples, Warmth warmth) {
        if (samples.isEmpty()) {
            return GrowthAhead.ofFry(feeding.orElseThrow(), warmth);
        }
        List<Weighed> weighed = new ArrayList<>();
        samples.forEach(sample -> weighed.add(new Weighed(sample.measuredAt(), sample.meanWeightG())));
        feeding.ifPresent(window -> weighed.add(new Weighed(window.expected(), Growth.SWIM_UP_G)));
        Instant first = weighed.stream().map(Weighed::at).min(Comparator.naturalOrder()).orElseThrow();
        GrowthPace pace = GrowthPace.of(weighed, at -> warmth.middle().growthDegreeDaysC(first, at));
        FishSample newest = samples.get(0);
        return new GrowthAhead(DateWindow.ofSeen(newest.measuredAt()), newest.meanWeightG(), newest.condition(), pace,
                warmth);
    }

    /** As planned, else when the last are long enough, within the season; and some weeks are always looked ahead. */
    private static Instant leaveAt(List<Group> groups, Season season, ZoneId zone, Instant asOf) {
        Instant soonest = asOf.plus(LOOKED_AHEAD);
        Instant leave = season.details().releaseOn().map(day -> day.atTime(LocalTime.NOON).atZone(zone).toInstant())
                .orElseGet(() -> groups.stream().map(group -> group.release().window().expected())
                        .max(Comparator.naturalOrder()).orElseThrow());
        Instant later = leave.isBefore(soonest) ? soonest : leave;
        return later.isAfter(season.until(zone)) ? season.until(zone) : later;
    }
}
