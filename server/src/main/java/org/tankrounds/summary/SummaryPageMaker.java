package org.tankrounds.summary;

import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tankrounds.fish.Stage;
import org.tankrounds.pages.SummaryPage;
import org.tankrounds.pages.SummaryPage.Column;
import org.tankrounds.pages.SummaryPage.Figure;
import org.tankrounds.pages.SummaryPage.Group;
import org.tankrounds.pages.SummaryPage.Line;
import org.tankrounds.pages.SummaryPage.Table;
import org.tankrounds.readings.ReadingTally;
import org.tankrounds.release.DayWording;
import org.tankrounds.release.KeptBack;
import org.tankrounds.release.ReleaseDay;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.Ledger;
import org.tankrounds.season.SeasonTitle;
import org.tankrounds.stream.StreamSample;
import org.tankrounds.summary.SeasonSummary.Level;
import org.tankrounds.summary.SeasonSummary.Row;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;

/** From a summary to the words and numbers of its page and its paper. */
final class SummaryPageMaker {
    private final SeasonSummary summary;
    private final Stamp stamp;
    private final Speech speech;
    private final boolean linked;

    /** @param linked whether each figure leads to the rows behind it */
    SummaryPageMaker(SeasonSummary summary, Stamp stamp, Speech speech, boolean linked) {
        this.summary = summary;
        this.stamp = stamp;
        this.speech = speech;
        this.linked = linked;
    }

    /** On paper. */
    SummaryPage page() {
        return page(SummaryPage.Standing.NONE, SummaryPage.Freeze.NONE);
    }

    SummaryPage page(SummaryPage.Standing standing, SummaryPage.Freeze freeze) {
        SeasonSummary.Heading heading = summary.heading();
        Ledger ledger = summary.chapter().figures().ledger();
        return new SummaryPage(SeasonTitle.of(heading.season(), ledger, speech), heading.chapter(), heading.season(),
                speech.say("season.period", day(heading.startsOn()), day(heading.endsOn())), address(), standing,
                lead(),
                table("ledger", ledgerColumns(), this::ledgerLine),
                summary.chapter().figures().deliveries().stream().map(this::delivery).toList(),
                table("stages", stageColumns(), this::stageLine),
                table("water", waterColumns(), this::waterLine), table("actions", actionColumns(), this::actionLine),
                causes(), sites(), summary.looks().stream().map(this::look).toList(), spells(), unbalanced(), freeze,
                new ChangeWording(speech).changes(stamp.changes()), SummaryNotes.in(speech.words()), made());
    }

    private String address() {
        return "/season/" + summary.heading().seasonCode() + "/summary";
    }

    private String made() {
        String at = speech.written("time.pattern.dateYearAndClock", stamp.at().atZone(ZoneOffset.UTC));
        return stamp.version().isPresent()
                ? speech.say("freeze.made", stamp.version().getAsInt(), at, stamp.software())
                : speech.say("summary.made", at, stamp.software());
    }

    private String lead() {
        return speech.say("summary.lead", speech.say("summary.tanks", summary.tanks().size()),
                speech.say("summary.schools", summary.schools().size()),
                speech.say("summary.readings", summary.chapter().figures().readings().posted()));
    }

    private List<SummaryPage.Cause> causes() {
        return summary.chapter().figures().causes().dead().keySet().stream()
                .map(cause -> new SummaryPage.Cause(speech.say("count.cause." + cause.code()),
                        count(SummaryFigure.of(cause), summary.chapter()))).toList();
    }

    /** What is missing in one tank does not hide what is over in another. */
    private String unbalanced() {
        int missing = unexplained().filter(fish -> fish > 0).sum();
        int surplus = -unexplained().filter(fish -> fish < 0).sum();
        return Stream.of(surplus == 0 ? "" : speech.say("summary.surplus", surplus),
                        missing == 0 ? "" : speech.say("summary.missing", missing))
                .filter(sentence -> !sentence.isEmpty()).collect(Collectors.joining(" "));
    }

    private IntStream unexplained() {
        return summary.tanks().stream().mapToInt(tank -> tank.figures().ledger().unexplained());
    }

    private Table table(String id, List<Column> columns, Function<Row, List<Figure>> figures) {
        return new Table(id, columns, summary.schools().stream().map(school -> new Group(school.school(),
                tanksOf(school).map(tank -> new Line(tank.classroom(), tank.tank(), figures.apply(tank))).toList(),
                new Line(speech.say("summary.together"), "", figures.apply(school)))).toList(),
                new Line(speech.say("summary.allSchools"), "", figures.apply(summary.chapter())));
    }

    private List<Column> ledgerColumns() {
        return Stream.of("summary.received", "summary.deadAsEggs",
                linked ? "summary.deadAsSacFry" : "summary.asSacFry",
                linked ? "summary.deadFeeding" : "summary.feeding", "summary.dead", "summary.moved", "summary.thinned",
                "summary.released", "summary.alive", "summary.unexplained", "summary.survival")
                .map(key -> new Column(speech.say(key), true)).toList();
    }

    private List<Figure> ledgerLine(Row row) {
        List<Figure> line = new ArrayList<>();
        Stream.of(SummaryFigure.RECEIVED, SummaryFigure.DEAD_AS_EGGS, SummaryFigure.DEAD_AS_SAC_FRY,
                        SummaryFigure.DEAD_FEEDING, SummaryFigure.DEAD, SummaryFigure.MOVED, SummaryFigure.THINNED,
                        SummaryFigure.RELEASED, SummaryFigure.ALIVE, SummaryFigure.UNEXPLAINED)
                .forEach(figure -> line.add(count(figure, row)));
        line.add(row.figures().survivalInterval().map(interval -> figure(SummaryFigure.SURVIVAL, row,
                        survival(row.figures().survival().orElseThrow(), interval), List.of()))
                .orElseGet(() -> plain("")));
        return line;
    }

    private List<Column> stageColumns() {
        return Stream.of("summary.stage.egg", "summary.stage.sacFry", "summary.stage.feeding")
                .map(key -> new Column(speech.say(key), true)).toList();
    }

    private List<Figure> stageLine(Row row) {
        return Stream.of(Stage.values()).map(stage -> stage(stage, row)).toList();
    }

    private Figure stage(Stage stage, Row row) {
        StageSurvival survival = row.figures().stages().of(stage);
        if (survival.interval().isEmpty()) {
            return plain("");
        }
        List<String> more = new ArrayList<>();
        more.add(speech.say("summary.stage.of", number(survival.survived()), number(survival.began())));
        if (survival.counted() > 0) {
            more.add(speech.say("summary.stage.counted", survival.counted()));
        }
        if (survival.spread() > 0) {
            more.add(speech.say(survival.isOffByMoreThanChance() ? "summary.stage.offMore" : "summary.stage.off",
                    survival.spread()));
        }
        return figure(SummaryFigure.of(stage), row, survival(survival.share().orElseThrow(),
                survival.interval().orElseThrow()), more);
    }

    private String survival(double share, Wilson interval) {
        return speech.say("summary.survival.interval", percent(share), percent(interval.low()),
                percent(interval.high()));
    }

    private List<Column> waterColumns() {
        return List.of(new Column(speech.say("summary.water.readings"), false),
                new Column(speech.say("summary.water.temperature"), false),
                new Column(speech.say("summary.water.ammonia", linked ? "NH₃" : "NH3"), false),
                new Column(speech.say("summary.water.nitrite"), false));
    }

    private List<Figure> waterLine(Row row) {
        ReadingTally tally = row.figures().readings();
        String readings = tally.corrected() == 0 ? String.valueOf(tally.posted())
                : speech.say("summary.water.corrected", tally.posted(), tally.corrected());
        List<String> span = tally.first().map(first -> List.of(speech.say("summary.water.span",
                day(first, row), day(tally.last().orElseThrow(), row)))).orElse(List.of());
        List<Figure> line = new ArrayList<>(List.of(figure(SummaryFigure.READINGS, row, readings, span)));
        for (Series series : Series.values()) {
            line.add(within(series, row));
        }
        return line;
    }

    private Figure within(Series series, Row row) {
        WithinLimit within = row.figures().of(series);
        if (within.days() == 0) {
            return new Figure(speech.say("summary.water.notTested"), "", "",
                    present(ifAny(within.doubtful(), "summary.water.doubtful")));
        }
        String days = speech.say("summary.water.days", within.within(), within.days() - within.undecided());
        String worst = within.worst()
                .map(found -> speech.say(row.level() == Level.TANK ? "summary.water.worst" : "summary.water.worstOf",
                        Rounded.value(series, found.value()).toPlainString(),
                        speech.written("time.pattern.shortDate", found.day()), found.tank()))
                .orElseGet(() -> speech.say("summary.water.notDetected"));
        String counts = Stream.of(ifAny(within.notDetected(), "summary.water.notDetectedOf", within.values()),
                        ifAny(within.doubtful(), "summary.water.doubtfulOut"))
                .filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
        return figure(SummaryFigure.of(series), row, days,
                present(ifAny(within.undecided(), "summary.water.undecided"), worst, counts));
    }

    private List<Column> actionColumns() {
        return Stream.of("summary.actions.visits", "summary.actions.asked", "summary.actions.done",
                "summary.actions.advice", "summary.actions.changes")
                .map(key -> new Column(speech.say(key), true)).toList();
    }

    private List<Figure> actionLine(Row row) {
        return Stream.of(SummaryFigure.VISITS, SummaryFigure.ASKED, SummaryFigure.DONE, SummaryFigure.ADVICE,
                        SummaryFigure.CHANGES)
                .map(figure -> count(figure, row)).toList();
    }

    private SummaryPage.Delivery delivery(Delivery one) {
        return new SummaryPage.Delivery(day(one.day()), one.school() + ", " + one.classroom(),
                figure(SummaryFigure.RECEIVED, tank(one.tank()), number(one.eggs()), List.of()),
                how(one.method(), one.spread()),
                one.thermalUnitsC().isPresent() ? speech.say("season.lot.units",
                        Formats.number(one.thermalUnitsC().getAsDouble(), 0)) : "",
                one.supplier().orElse(""), one.certificate().orElse(""));
    }

    private String how(CountMethod method, int spread) {
        String how = method == CountMethod.ONE_BY_ONE ? speech.say("summary.site.oneByOne")
                : speech.say("count.method." + method.code());
        return spread == 0 ? how : speech.say("summary.site.off", how, spread);
    }

    private List<SummaryPage.Site> sites() {
        Map<List<String>, List<Release>> sites = summary.chapter().figures().releases().stream()
                .collect(Collectors.groupingBy(one -> List.of(one.place(), one.approval()), LinkedHashMap::new,
                        Collectors.toList()));
        return sites.values().stream().map(this::site).toList();
    }

    private SummaryPage.Site site(List<Release> releases) {
        Release any = releases.get(0);
        int fish = releases.stream().mapToInt(Release::fish).sum();
        return new SummaryPage.Site(any.place(), any.approval().isEmpty() ? speech.say("summary.site.noApproval")
                : speech.say("summary.site.approval", any.approval()), plain(number(fish)),
                releases.stream().map(this::release).toList());
    }

    private SummaryPage.Release release(Release one) {
        Row tank = tank(one.tank());
        return new SummaryPage.Release(day(one.day()), one.school() + ", " + one.classroom(),
                figure(SummaryFigure.RELEASED, tank, number(one.fish()), List.of()),
                how(one.method(), one.spread()),
                one.tankC().isPresent() ? Rounded.value(Series.TEMPERATURE, one.tankC().getAsDouble()).toPlainString()
                        : "",
                one.seen().map(seen -> seen(seen, tank)).orElse(""),
                one.seen().filter(seen -> linked).map(seen -> "/release/plans/" + seen.planId()).orElse(""));
    }

    /** The note belongs to it where it says why fish were kept back. */
    private String seen(ReleaseDay day, Row tank) {
        List<String> parts = new ArrayList<>(new DayWording(celsius(tank.zone())).measured(day));
        if (day.kept().containsKey(KeptBack.REASON)) {
            day.note().ifPresent(parts::add);
        }
        return String.join("; ", parts);
    }

    private SummaryPage.Look look(StreamLook look) {
        StreamSample sample = look.sample();
        boolean looked = sample.animals() > 0;
        return new SummaryPage.Look(day(look.day()), linked ? look.check().address() : "", look.site().name(),
                look.site().details().water(), water(look), looked ? number(sample.animals()) : "",
                sample.index().map(index -> speech.say("stream.result.of", Formats.number(index.value(), 2),
                        speech.say("stream.index." + index.water().name()))).orElse(""),
                looked ? number(sample.eptFamilies()) : "",
                looked ? speech.say("stream.result.of", sample.kindCount().points(),
                        speech.say("stream.kinds." + sample.kindCount().water().name())) : "",
                looked ? speech.say("stream.result.of", Formats.number(sample.groupScore().value(), 1),
                        speech.say("stream.score." + sample.groupScore().water().name())) : "");
    }

    private String water(StreamLook look) {
        List<String> parts = new ArrayList<>();
        look.check().temperatureC().ifPresent(found -> parts.add(celsius(look.zone()).temperature(found, 1)));
        look.check().ph().ifPresent(ph -> parts.add(speech.say("summary.look.ph", Formats.significant(ph, 3))));
        look.check().oxygenMgPerL().ifPresent(oxygen -> parts.add(look.saturationPercent().isPresent()
                ? speech.say("summary.look.oxygenOf", Formats.number(oxygen, 1),
                        Formats.number(look.saturationPercent().getAsDouble(), 0))
                : speech.say("summary.look.oxygen", Formats.number(oxygen, 1))));
        return String.join("; ", parts);
    }

    /** As all temperatures of a summary, whoever reads it. */
    private Formats celsius(ZoneId zone) {
        return new Speech(speech.language(), Scale.CELSIUS).formats(zone, stamp.at());
    }

    private Row tank(String code) {
        return summary.tanks().stream().filter(row -> row.tank().equals(code)).findFirst().orElseThrow();
    }

    private List<SummaryPage.Spell> spells() {
        List<SummaryPage.Spell> spells = new ArrayList<>();
        for (Row tank : summary.tanks()) {
            for (Series series : Series.values()) {
                Optional<Spell> longest = tank.figures().of(series).spell();
                longest.map(spell -> spell(series, tank, spell)).ifPresent(spells::add);
            }
        }
        return spells;
    }

    private SummaryPage.Spell spell(Series series, Row tank, Spell spell) {
        String when = spell.days() == 1 ? day(spell.from())
                : speech.say("summary.water.span", day(spell.from()), day(spell.until()));
        Figure rows = figure(SummaryFigure.of(series), tank, when, List.of());
        return new SummaryPage.Spell(speech.say("summary.series." + series.code()),
                tank.school() + ", " + tank.classroom(),
                rows.linked() ? new Figure(when, rows.to() + "#d" + spell.from(), rows.about(), List.of()) : rows,
                speech.say("summary.spell.read", spell.days(), spell.calendarDays()),
                speech.say("summary.spell.worst", Rounded.value(series, spell.worst().value()).toPlainString(),
                        speech.say("summary.unit." + series.code()), day(spell.worst().day())));
    }

    private Figure count(SummaryFigure figure, Row row) {
        return figure(figure, row, number(figure.value().applyAsInt(row.figures())), List.of());
    }

    private Figure figure(SummaryFigure figure, Row row, String text, List<String> more) {
        if (!linked) {
            return new Figure(text, "", "", more);
        }
        String of = switch (row.level()) {
            case TANK -> "?tank=" + row.tank();
            case SCHOOL -> "?school=" + row.schoolCode();
            case CHAPTER -> "";
        };
        return new Figure(text, address() + "/rows/" + figure.code() + of,
                speech.say("summary.rows.link", speech.say(figure.name()), where(row)), more);
    }

    private String where(Row row) {
        return switch (row.level()) {
            case TANK -> row.school() + ", " + row.classroom();
            case SCHOOL -> row.school();
            case CHAPTER -> speech.say("summary.allSchools");
        };
    }

    private static Figure plain(String text) {
        return new Figure(text, "", "", List.of());
    }

    private static List<String> present(String... parts) {
        return Stream.of(parts).filter(part -> !part.isEmpty()).toList();
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
