package org.tankrounds.summary;

import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.pages.SummaryPage;
import org.tankrounds.pages.SummaryPage.LedgerGroup;
import org.tankrounds.pages.SummaryPage.LedgerLine;
import org.tankrounds.pages.SummaryPage.WaterGroup;
import org.tankrounds.pages.SummaryPage.WaterLine;
import org.tankrounds.pages.SummaryPage.Within;
import org.tankrounds.readings.ReadingTally;
import org.tankrounds.season.Ledger;
import org.tankrounds.season.SeasonTitle;
import org.tankrounds.summary.SeasonSummary.Row;
import org.tankrounds.web.Speech;

/** From a summary to the words and numbers of its page and its paper. */
final class SummaryPageMaker {
    private final SeasonSummary summary;
    private final String version;
    private final Instant madeAt;
    private final Speech speech;

    SummaryPageMaker(SeasonSummary summary, String version, Instant madeAt, Speech speech) {
        this.summary = summary;
        this.version = version;
        this.madeAt = madeAt;
        this.speech = speech;
    }

    SummaryPage page() {
        SeasonSummary.Heading heading = summary.heading();
        Ledger ledger = summary.chapter().figures().ledger();
        String title = SeasonTitle.of(heading.season(), ledger, speech);
        String all = speech.say("summary.allSchools");
        return new SummaryPage(title, heading.chapter(), heading.season(),
                speech.say("season.period", day(heading.startsOn()), day(heading.endsOn())),
                "/season/" + heading.seasonCode() + "/summary", lead(),
                summary.schools().stream().map(this::ledgerGroup).toList(),
                ledgerLine(summary.chapter(), all, ""),
                summary.schools().stream().map(this::waterGroup).toList(),
                waterLine(summary.chapter(), all, ""),
                causes(), surplus(ledger), SummaryNotes.in(speech.words()),
                speech.say("summary.made",
                        speech.written("time.pattern.dateYearAndClock", madeAt.atZone(ZoneOffset.UTC)), version));
    }

    private String lead() {
        return speech.say("summary.lead", speech.say("summary.tanks", summary.tanks().size()),
                speech.say("summary.schools", summary.schools().size()),
                speech.say("summary.readings", summary.chapter().figures().readings().posted()));
    }

    private List<SummaryPage.Cause> causes() {
        return summary.chapter().figures().causes().dead().entrySet().stream()
                .map(cause -> new SummaryPage.Cause(speech.say("count.cause." + cause.getKey().code()),
                        number(cause.getValue()))).toList();
    }

    private String surplus(Ledger ledger) {
        if (ledger.unexplained() == 0) {
            return "";
        }
        return ledger.unexplained() < 0 ? speech.say("summary.surplus", -ledger.unexplained())
                : speech.say("summary.missing", ledger.unexplained());
    }

    private LedgerGroup ledgerGroup(Row school) {
        return new LedgerGroup(school.school(),
                tanksOf(school).map(tank -> ledgerLine(tank, tank.classroom(), tank.tank())).toList(),
                ledgerLine(school, speech.say("summary.together"), ""));
    }

    private LedgerLine ledgerLine(Row row, String name, String code) {
        Ledger ledger = row.figures().ledger();
        return new LedgerLine(name, code, number(ledger.received()), number(ledger.deadAsEggs()),
                number(ledger.deadAsSacFry()), number(ledger.deadFeeding()), number(ledger.dead()),
                number(ledger.movedAway()), number(ledger.thinned()), number(ledger.released()), number(ledger.alive()), number(ledger.unexplained()), survival(row.figures()));
    }

    private String survival(Figures figures) {
        return figures.survivalInterval()
                .map(interval -> speech.say("summary.survival.interval", percent(figures.survival().orElseThrow()),
                        percent(interval.low()), percent(interval.high())))
                .orElse("");
    }

    private WaterGroup waterGroup(Row school) {
        return new WaterGroup(school.school(),
                tanksOf(school).map(tank -> waterLine(tank, tank.classroom(), tank.tank())).toList());
    }

    private WaterLine waterLine(Row row, String name, String code) {
        ReadingTally tally = row.figures().readings();
        String readings = tally.corrected() == 0 ? String.valueOf(tally.posted())
                : speech.say("summary.water.corrected", tally.posted(), tally.corrected());
        String span = tally.first().map(first -> speech.say("summary.water.span",
                day(first, row), day(tally.last().orElseThrow(), row))).orElse("");
        List<Within> series = new ArrayList<>();
        for (Series one : Series.values()) {
            series.add(within(one, row.figures().of(one), code.isEmpty()));
        }
        return new WaterLine(name, code, readings, span, series);
    }

    private Within within(Series series, WithinLimit within, boolean severalTanks) {
        if (within.days() == 0) {
            return new Within(speech.say("summary.water.notTested"), "", "",
                    ifAny(within.doubtful(), "summary.water.doubtful"));
        }
        String days = speech.say(
                "summary.water.days", within.within(), within.days() - within.undecided());
        String worst = within.worst()
                .map(found -> speech.say(severalTanks ? "summary.water.worstOf" : "summary.water.worst",
                        Rounded.value(series, found.value()).toPlainString(),
                        speech.written("time.pattern.shortDate", found.day()), found.tank()))
                .orElseGet(() -> speech.say("summary.water.notDetected"));
        String counts = Stream.of(ifAny(within.notDetected(), "summary.water.notDetectedOf", within.values()),
                        ifAny(within.doubtful(), "summary.water.doubtfulOut"))
                .filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
        return new Within(days, ifAny(within.undecided(), "summary.water.undecided"), worst, counts);
    }

    private String ifAny(int count, String key, Object... more) {
        return count == 0 ? "" : speech.say(key, Stream.concat(Stream.of(count), Stream.of(more)).toArray());
    }

    private Stream<Row> tanksOf(Row school) {
        return summary.tanks().stream().filter(tank -> tank.schoolCode().equals(school.schoolCode()));
    }

    private String day(Instant at, Row row) {
        return speech.written("time.pattern.shortDate", at.atZone(row.zone()));
    }

    private String day(LocalDate day) {
        return speech.written("time.pattern.dateAndYear", day);
    }

    /** With a plain hyphen before negatives: it is in every font. */
    private String number(int count) {
        return String.format(speech.language().locale(), "%,d", count);
    }

    private static String percent(double share) {
        return Rounded.share(share).movePointRight(2).setScale(1, RoundingMode.HALF_UP).toPlainString();
    }
}
