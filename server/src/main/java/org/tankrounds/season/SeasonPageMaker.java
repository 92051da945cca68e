package org.tankrounds.season;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.tankrounds.belief.Observation;
import org.tankrounds.pages.SeasonPage;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;

/** From a season's lots and counts to the words and numbers of its page. */
final class SeasonPageMaker {
    private final SeasonReads reads;
    private final DSLContext tx;
    private final int chapterId;
    private final Instant now;
    private final Speech speech;

    SeasonPageMaker(SeasonReads reads, DSLContext tx, int chapterId, Instant now, Speech speech) {
        this.reads = reads;
        this.tx = tx;
        this.chapterId = chapterId;
        this.now = now;
        this.speech = speech;
    }

    static SeasonPage empty(Speech speech) {
        return new SeasonPage(speech.say("season.first"), "", "", "", "", "", List.of(), List.of());
    }

    SeasonPage page(Season season, List<Season> seasons) {
        Map<Integer, List<Lot>> lots = reads.lots().listOfSeason(tx, chapterId, season.seasonId()).stream()
                .collect(Collectors.groupingBy(Lot::tankId));
        List<SeasonPage.Row> rows = new ArrayList<>();
        List<CountEntry> entries = reads.counts().list(tx, chapterId, season.seasonId());
        Ledger total = Ledger.EMPTY;
        for (Tank tank : reads.tanks().listWithRetired(tx, chapterId)) {
            List<Lot> here = lots.getOrDefault(tank.tankId(), List.of());
            List<CountEntry> counted = CountRepository.of(tank.tankId(), entries);
            if (here.isEmpty() && counted.isEmpty() && tank.retiredAt().isPresent()) {
                continue;
            }
            LotHistory history = history(season, tank, here).with(counted);
            Ledger ledger = history.account(counted).ledger();
            total = total.plus(ledger);
            rows.add(row(season, tank, here, history, ledger));
        }
        String base = "/season/" + season.code();
        return new SeasonPage(title(season, total), period(season), base + "/edit", base + "/calendar",
                base + "/summary", base + "/egg-days", rows, others(season, seasons));
    }

    private LotHistory history(Season season, Tank tank, List<Lot> lots) {
        List<Observation> seen = reads.observations().list(
                tx, chapterId, tank.tankId(), season.from(tank.zone()), season.until(tank.zone()));
        Instant ended = season.until(tank.zone());
        return LotHistory.of(tank, lots, seen, ended.isBefore(now) ? ended : now);
    }

    private SeasonPage.Row row(Season season, Tank tank, List<Lot> lots, LotHistory history, Ledger ledger) {
        String place = "/season/" + season.code() + "/tanks/" + tank.code();
        String base = place + "/lots";
        List<SeasonPage.LotLine> lines = new ArrayList<>();
        // Numbers in addresses count in the order of writing down, as the handler does.
        List<Lot> written = lots.stream().sorted(Comparator.comparing(Lot::lotId)).toList();
        for (int i = 0; i < written.size(); i++) {
            lines.add(line(written.get(i), tank, base + "/" + (i + 1)));
        }
        boolean counted = ledger.received() + ledger.movedIn() > 0 || ledger.dead() > 0;
        return new SeasonPage.Row(tank.school(), tank.classroom(), tank.code(), lines,
                counted ? Integer.toString(ledger.dead()) : "",
                counted ? Integer.toString(ledger.alive()) : "",
                ledger.unexplained() == 0 ? "" : speech.say("season.unexplained",
                        ledger.unexplained() < 0 ? "\u2212" + -ledger.unexplained() : ledger.unexplained()),
                ledger.released() == 0 ? "" : speech.say("season.released", ledger.released()),
                ledger.came() > 0 && ledger.alive() == 0 ? speech.say("calendar.season.emptied") : stage(tank, history),
                "/tanks/" + tank.code() + "/calendar", base + "/new", place + "/count");
    }

    private SeasonPage.LotLine line(Lot lot, Tank tank, String edit) {
        String units = lot.thermalUnitsC().isPresent()
                ? units(lot.thermalUnitsC().getAsDouble()) : speech.say("season.lot.unitsUnknown");
        String papers = Stream.of(lot.supplier(),
                        lot.certificate().map(number -> speech.say("season.lot.certificate", number)))
                .flatMap(Optional::stream).collect(Collectors.joining(", "));
        return new SeasonPage.LotLine(speech.say("season.lot.eggs", lot.eggs(), day(lot.receivedAt(), tank)), units,
                papers.isEmpty() ? speech.say("season.lot.noPapers") : papers, edit);
    }

    private String stage(Tank tank, LotHistory history) {
        return history.developmentAt(history.asOf()).map(development -> {
            String units = units(development.thermalUnitsC());
            return switch (development.stageAt(history.asOf())) {
                case EGG -> speech.say("season.stage.eggs", units, day(development.hatchAt(), tank));
                case SAC_FRY -> speech.say("season.stage.sacFry", units, day(development.firstFeedingAt(), tank));
                case FEEDING -> speech.say("season.stage.feeding", units, day(development.firstFeedingAt(), tank));
            };
        }).orElse("");
    }

    private String units(double thermalUnitsC) {
        return speech.say("season.lot.units", TypedNumber.text(thermalUnitsC, 0));
    }

    private String day(Instant at, Tank tank) {
        return speech.written("time.pattern.shortDate", at.atZone(tank.zone()));
    }

    private String title(Season season, Ledger total) {
        return SeasonTitle.of(season.name(), total, speech);
    }

    private String period(Season season) {
        return speech.say("season.period", speech.written("time.pattern.dateAndYear", season.details().startsOn()),
                speech.written("time.pattern.dateAndYear", season.details().endsOn()));
    }

    private List<SeasonPage.Other> others(Season shown, List<Season> seasons) {
        return seasons.stream()
                .filter(season -> season.seasonId() != shown.seasonId())
                .map(season -> new SeasonPage.Other(season.name(), period(season), "/season/" + season.code()))
                .toList();
    }
}
