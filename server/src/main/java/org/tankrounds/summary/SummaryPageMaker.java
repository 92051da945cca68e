package org.tankrounds.summary;

import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.tankrounds.pages.SummaryPage;
import org.tankrounds.pages.SummaryPage.LedgerGroup;
import org.tankrounds.pages.SummaryPage.LedgerLine;
import org.tankrounds.pages.SummaryPage.WaterGroup;
import org.tankrounds.pages.SummaryPage.WaterLine;
import org.tankrounds.pages.SummaryPage.Within;
import org.tankrounds.readings.ReadingTally;
import org.tankrounds.season.Ledger;
import org.tankrounds.summary.SeasonSummary.Row;

/** From a summary to the words and numbers of its page and its paper. */
final class SummaryPageMaker {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_OF_YEAR = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MADE = DateTimeFormatter.ofPattern("d MMM yyyy, H:mm", Locale.ENGLISH);

    private final SeasonSummary summary;
    private final String version;
    private final Instant madeAt;

    SummaryPageMaker(SeasonSummary summary, String version, Instant madeAt) {
        this.summary = summary;
        this.version = version;
        this.madeAt = madeAt;
    }

    SummaryPage page() {
        SeasonSummary.Heading heading = summary.heading();
        Ledger ledger = summary.chapter().figures().ledger();
        String title = ledger.received() == 0
                ? "Season " + heading.season() + ": no eggs yet"
                : "Season " + heading.season() + ": " + ledger.alive() + " of " + ledger.received()
                        + " alive by count";
        return new SummaryPage(title, heading.chapter(), heading.season(),
                day(heading.startsOn()) + " to " + day(heading.endsOn()),
                "/season/" + heading.seasonCode() + "/summary", lead(),
                summary.schools().stream().map(this::ledgerGroup).toList(),
                ledgerLine(summary.chapter(), "All schools", ""),
                summary.schools().stream().map(this::waterGroup).toList(),
                waterLine(summary.chapter(), "All schools", ""),
                surplus(ledger), SummaryNotes.ALL,
                "Made " + MADE.format(madeAt.atZone(ZoneOffset.UTC)) + " UTC by Tankrounds " + version);
    }

    private String lead() {
        int tanks = summary.tanks().size();
        int schools = summary.schools().size();
        int readings = summary.chapter().figures().readings().posted();
        return tanks + (tanks == 1 ? " tank in " : " tanks in ") + schools
                + (schools == 1 ? " school, " : " schools, ") + readings + (readings == 1 ? " reading" : " readings");
    }

    private static String surplus(Ledger ledger) {
        return ledger.unexplained() == 0 ? ""
                : "The count does not balance: " + -ledger.unexplained() + " more deaths were recorded than eggs "
                        + "received in some tanks. Look for a count entered twice, or for eggs that nobody wrote down.";
    }

    private LedgerGroup ledgerGroup(Row school) {
        return new LedgerGroup(school.school(),
                tanksOf(school).map(tank -> ledgerLine(tank, tank.classroom(), tank.tank())).toList(),
                ledgerLine(school, "together", ""));
    }

    private static LedgerLine ledgerLine(Row row, String name, String code) {
        Ledger ledger = row.figures().ledger();
        return new LedgerLine(name, code, number(ledger.received()), number(ledger.deadAsEggs()),
                number(ledger.deadAsSacFry()), number(ledger.deadFeeding()), number(ledger.dead()),
                number(ledger.alive()), number(ledger.unexplained()), survival(row.figures()));
    }

    private static String survival(Figures figures) {
        return figures.survivalInterval()
                .map(interval -> percent(figures.survival().orElseThrow()) + " % (" + percent(interval.low()) + " to "
                        + percent(interval.high()) + ")")
                .orElse("");
    }

    private WaterGroup waterGroup(Row school) {
        return new WaterGroup(school.school(),
                tanksOf(school).map(tank -> waterLine(tank, tank.classroom(), tank.tank())).toList());
    }

    private static WaterLine waterLine(Row row, String name, String code) {
        ReadingTally tally = row.figures().readings();
        String readings = tally.posted() + (tally.corrected() == 0 ? "" : ", " + tally.corrected() + " corrected");
        String span = tally.first().isEmpty() ? ""
                : day(tally.first().get(), row) + " to " + day(tally.last().orElseThrow(), row);
        List<Within> series = new ArrayList<>();
        for (Series one : Series.values()) {
            series.add(within(one, row.figures().of(one), code.isEmpty()));
        }
        return new WaterLine(name, code, readings, span, series);
    }

    private static Within within(Series series, WithinLimit within, boolean severalTanks) {
        if (within.days() == 0) {
            return new Within("not tested", "", "", within.doubtful() == 0 ? "" : within.doubtful() + " doubtful");
        }
        String days = within.within() + " of " + (within.days() - within.undecided()) + " days";
        String worst = within.worst()
                .map(found -> "worst " + Rounded.value(series, found.value()).toPlainString() + " on "
                        + DAY.format(found.day()) + (severalTanks ? ", tank " + found.tank() : ""))
                .orElse("not detected");
        String counts = String.join(", ", Stream.of(
                        within.notDetected() == 0 ? "" : within.notDetected() + " of " + within.values()
                                + " not detected",
                        within.doubtful() == 0 ? "" : within.doubtful() + " doubtful left out")
                .filter(part -> !part.isEmpty()).toList());
        return new Within(days, within.undecided() == 0 ? "" : within.undecided() + " undecided", worst, counts);
    }

    private Stream<Row> tanksOf(Row school) {
        return summary.tanks().stream().filter(tank -> tank.schoolCode().equals(school.schoolCode()));
    }

    private static String day(Instant at, Row row) {
        return DAY.format(at.atZone(row.zone()));
    }

    private static String day(LocalDate day) {
        return DAY_OF_YEAR.format(day);
    }

    /** With a plain hyphen before negatives: it is in every font. */
    private static String number(int count) {
        return String.format(Locale.ENGLISH, "%,d", count);
    }

    private static String percent(double share) {
        return Rounded.share(share).movePointRight(2).setScale(1, RoundingMode.HALF_UP).toPlainString();
    }
}
