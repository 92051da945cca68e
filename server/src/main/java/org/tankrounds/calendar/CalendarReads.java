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
        Optional<Lot> lot = held(lots, asOf);
        Optional<LotCalendar> dates = lot.map(eggs -> LotCalendar.of(
                eggs.receivedAt(), eggs.thermalUnitsC(), history.warmth(), eggs.seenOn().at(zone)));
        List<FishSample> measured = samples.list(tx, chapterId, tank.tankId(), season.from(zone)).stream()
                .filter(sample -> !sample.measuredAt().isAfter(asOf)).toList();
        Optional<GrowthAhead> growth = growth(dates, measured, history.warmth());
        Optional<Release> release = growth.map(known -> release(known, season));
        WaterHabit habit = WaterHabit.of(seen, asOf, zone);
        Room room = new Room(tank.volumeL(), tank.filterAreaM2().orElse(Room.USUAL_FILTER_AREA_M2), habit.share(),
                habit.everyDays());
        Optional<WeeksAhead> weeks = growth.filter(known -> account.ledger().alive() > 0)
                .map(known -> WeeksAhead.of(known, room, account.ledger().alive(), asOf,
                        leaveAt(release.orElseThrow(), season, zone, asOf)))
                .filter(known -> !known.weeks().isEmpty());
        return new TankAhead(tank, season, lot, dates, account, growth, release, room, habit, weeks, asOf);
    }

    private static Optional<Lot> held(List<Lot> lots, Instant asOf) {
        Optional<Lot> newest = lots.stream().filter(lot -> !lot.receivedAt().isAfter(asOf))
                .max(Comparator.comparing(Lot::receivedAt).thenComparing(Lot::lotId));
        return newest.or(() -> lots.stream().min(Comparator.comparing(Lot::receivedAt).thenComparing(Lot::lotId)));
    }

    private static Release release(GrowthAhead growth, Season season) {
        int lengthMm = season.details().releaseLengthMm().orElse(USUAL_RELEASE_LENGTH_MM);
        return new Release(lengthMm, season.details().releaseLengthMm().isPresent(), growth.reaches(lengthMm));
    }

    /** @param samples the newest first; what was measured before they can feed says nothing of their growth */
    private static Optional<GrowthAhead> growth(
            Optional<LotCalendar> dates, List<FishSample> samples, Warmth warmth) {
        Optional<DateWindow> feeding = dates.map(LotCalendar::firstFeeding);
        List<FishSample> grown = samples.stream().filter(sample -> feeding
                .filter(window -> sample.measuredAt().isBefore(window.earliest())).isEmpty()).toList();
        if (grown.isEmpty()) {
            return feeding.map(window -> GrowthAhead.ofFry(window, warmth));
        }
        List<Weighed> weighed = new ArrayList<>();
        grown.forEach(sample -> weighed.add(new Weighed(sample.measuredAt(), sample.meanWeightG())));
        feeding.ifPresent(window -> weighed.add(new Weighed(window.expected(), Growth.SWIM_UP_G)));
        Instant first = weighed.stream().map(Weighed::at).min(Comparator.naturalOrder()).orElseThrow();
        GrowthPace pace = GrowthPace.of(weighed, at -> warmth.middle().growthDegreeDaysC(first, at));
        FishSample newest = grown.get(0);
        return Optional.of(new GrowthAhead(DateWindow.ofSeen(newest.measuredAt()), newest.meanWeightG(),
                newest.condition(), pace, warmth));
    }

    /** As planned, else when they are long enough, within the season; and some weeks are always looked ahead. */
    private static Instant leaveAt(Release release, Season season, ZoneId zone, Instant asOf) {
        Instant soonest = asOf.plus(LOOKED_AHEAD);
        Instant leave = season.details().releaseOn().map(day -> day.atTime(LocalTime.NOON).atZone(zone).toInstant())
                .orElse(release.window().expected());
        Instant later = leave.isBefore(soonest) ? soonest : leave;
        return later.isAfter(season.until(zone)) ? season.until(zone) : later;
    }
}
