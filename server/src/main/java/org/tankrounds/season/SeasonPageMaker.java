package org.tankrounds.season;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Stage;
import org.tankrounds.pages.SeasonPage;
import org.tankrounds.places.Tank;
import org.tankrounds.web.TypedNumber;

/** From a season's lots and counts to the words and numbers of its page. */
final class SeasonPageMaker {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_OF_YEAR = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    private final SeasonReads reads;
    private final DSLContext tx;
    private final int chapterId;
    private final Instant now;

    SeasonPageMaker(SeasonReads reads, DSLContext tx, int chapterId, Instant now) {
        this.reads = reads;
        this.tx = tx;
        this.chapterId = chapterId;
        this.now = now;
    }

    static SeasonPage empty() {
        return new SeasonPage("Add the first season", "", "", "", List.of(), List.of());
    }

    SeasonPage page(Season season, List<Season> seasons) {
        Map<Integer, List<Lot>> lots = reads.lots().listOfSeason(tx, chapterId, season.seasonId()).stream()
                .collect(Collectors.groupingBy(Lot::tankId));
        List<SeasonPage.Row> rows = new ArrayList<>();
        Ledger total = Ledger.EMPTY;
        for (Tank tank : reads.tanks().listWithRetired(tx, chapterId)) {
            List<Lot> here = lots.getOrDefault(tank.tankId(), List.of());
            if (here.isEmpty() && tank.retiredAt().isPresent()) {
                continue;
            }
            LotHistory history = history(season, tank, here);
            total = total.plus(history.ledger());
            rows.add(row(season, tank, here, history));
        }
        String base = "/season/" + season.code();
        return new SeasonPage(title(season, total), period(season), base + "/edit", base + "/summary", rows,
                others(season, seasons));
    }

    private LotHistory history(Season season, Tank tank, List<Lot> lots) {
        List<Observation> seen = reads.observations().list(
                tx, chapterId, tank.tankId(), season.from(tank.zone()), season.until(tank.zone()));
        return LotHistory.of(tank, lots, seen, now);
    }

    private static SeasonPage.Row row(Season season, Tank tank, List<Lot> lots, LotHistory history) {
        String base = "/season/" + season.code() + "/tanks/" + tank.code() + "/lots";
        Ledger ledger = history.ledger();
        List<SeasonPage.LotLine> lines = new ArrayList<>();
        // Numbers in addresses count in the order of writing down, as the handler does.
        List<Lot> written = lots.stream().sorted(Comparator.comparing(Lot::lotId)).toList();
        for (int i = 0; i < written.size(); i++) {
            lines.add(line(written.get(i), tank, base + "/" + (i + 1)));
        }
        boolean counted = ledger.received() > 0 || ledger.dead() > 0;
        return new SeasonPage.Row(tank.school(), tank.classroom(), tank.code(), lines,
                counted ? Integer.toString(ledger.dead()) : "",
                counted ? Integer.toString(ledger.alive()) : "",
                ledger.unexplained() == 0 ? "" : "unexplained \u2212" + -ledger.unexplained(),
                stage(tank, history), base + "/new");
    }

    private static SeasonPage.LotLine line(Lot lot, Tank tank, String edit) {
        String units = lot.thermalUnitsC().isPresent()
                ? TypedNumber.text(lot.thermalUnitsC().getAsDouble(), 0) + " °C-days"
                : "degree-days unknown";
        String papers = String.join(", ", Stream.of(
                        lot.supplier().orElse(""), lot.certificate().map(number -> "certificate " + number).orElse(""))
                .filter(part -> !part.isEmpty())
                .toList());
        return new SeasonPage.LotLine(lot.eggs() + " eggs", DAY.format(lot.receivedAt().atZone(tank.zone())), units,
                papers.isEmpty() ? "papers not written down" : papers, edit);
    }

    private static String stage(Tank tank, LotHistory history) {
        return history.developmentAt(history.asOf()).map(development -> {
            Stage stage = development.stageAt(history.asOf());
            String units = TypedNumber.text(development.thermalUnitsC(), 0) + " °C-days";
            return switch (stage) {
                case EGG -> "eggs, " + units + "; hatch about " + day(development.hatchAt(), tank);
                case SAC_FRY -> "sac fry, " + units + "; first feeding about "
                        + day(development.firstFeedingAt(), tank);
                case FEEDING -> "feeding since " + day(development.firstFeedingAt(), tank) + ", " + units;
            };
        }).orElse("");
    }

    private static String day(Instant at, Tank tank) {
        return DAY.format(at.atZone(tank.zone()));
    }

    private static String title(Season season, Ledger total) {
        if (total.received() == 0) {
            return "Season " + season.name() + ": no eggs yet";
        }
        return "Season " + season.name() + ": " + total.alive() + " of " + total.received() + " alive by count";
    }

    private static String period(Season season) {
        LocalDate from = season.details().startsOn();
        return DAY_OF_YEAR.format(from) + " to " + DAY_OF_YEAR.format(season.details().endsOn());
    }

    private static List<SeasonPage.Other> others(Season shown, List<Season> seasons) {
        return seasons.stream()
                .filter(season -> season.seasonId() != shown.seasonId())
                .map(season -> new SeasonPage.Other(season.name(), period(season), "/season/" + season.code()))
                .toList();
    }
}
