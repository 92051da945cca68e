package org.tankrounds.years;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.tankrounds.belief.Observation;
import org.tankrounds.places.Tank;
import org.tankrounds.season.Account;
import org.tankrounds.season.CountEntry;
import org.tankrounds.season.CountRepository;
import org.tankrounds.season.DeathCauses;
import org.tankrounds.season.Ledger;
import org.tankrounds.season.Lot;
import org.tankrounds.season.LotHistory;
import org.tankrounds.season.Season;
import org.tankrounds.season.SeasonReads;
import org.tankrounds.season.Survivors;
import org.tankrounds.years.PastSeasonRepository.PastSeason;

/** Gathers the counts of a chapter's seasons. */
public final class YearReads {
    private final SeasonReads reads;
    private final PastSeasonRepository past = new PastSeasonRepository();

    public YearReads(SeasonReads reads) {
        this.reads = reads;
    }

    PastSeasonRepository past() {
        return past;
    }

    /** The oldest first. */
    List<Year> list(DSLContext tx, int chapterId, Instant now) {
        List<Year> years = new ArrayList<>();
        reads.seasons().list(tx, chapterId).forEach(season -> years.add(year(tx, chapterId, season, now)));
        past.list(tx, chapterId).forEach(season -> years.add(year(tx, chapterId, season)));
        years.sort(Comparator.comparing(Year::endsOn).thenComparing(Year::name));
        return years;
    }

    private Year year(DSLContext tx, int chapterId, PastSeason season) {
        PastSheet sheet = past.sheet(tx, chapterId, season);
        return new Year(season.name(), season.endedOn(), false, Optional.of(season.code()), sheet.total(),
                sheet.survivors(), sheet.deadUnstaged(), sheet.causes());
    }

    private Year year(DSLContext tx, int chapterId, Season season, Instant now) {
        Map<Integer, List<Lot>> lots = reads.lots().listOfSeason(tx, chapterId, season.seasonId()).stream()
                .collect(Collectors.groupingBy(Lot::tankId));
        List<CountEntry> entries = reads.counts().list(tx, chapterId, season.seasonId());
        Ledger total = Ledger.EMPTY;
        Survivors survivors = Survivors.NONE;
        DeathCauses causes = DeathCauses.NONE;
        for (Tank tank : reads.tanks().listWithRetired(tx, chapterId)) {
            List<CountEntry> counted = CountRepository.of(tank.tankId(), entries);
            List<Lot> here = lots.getOrDefault(tank.tankId(), List.of());
            if (!here.isEmpty() || !counted.isEmpty()) {
                List<Observation> seen = reads.observations().list(
                        tx, chapterId, tank.tankId(), season.from(tank.zone()), season.until(tank.zone()));
                Account account = LotHistory.of(tank, here, seen, now).account(counted);
                total = total.plus(account.ledger());
                survivors = survivors.plus(Survivors.of(account.ledger()));
                causes = causes.plus(DeathCauses.of(
                        account.lines(), reads.causes().list(tx, chapterId, tank.tankId()), tank.zone()));
            }
        }
        boolean running = !season.until(ZoneOffset.UTC).isBefore(now);
        return new Year(season.name(), season.details().endsOn(), running, Optional.empty(), total, survivors,
                0, causes);
    }
}
