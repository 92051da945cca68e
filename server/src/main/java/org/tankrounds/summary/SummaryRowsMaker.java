package org.tankrounds.summary;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.pages.FormPage.Link;
import org.tankrounds.pages.SummaryRowsPage;
import org.tankrounds.pages.SummaryRowsPage.Row;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.Reading;
import org.tankrounds.readings.ReadingTally;
import org.tankrounds.readings.Wording;
import org.tankrounds.season.Account;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.Ledger;
import org.tankrounds.season.LineWording;
import org.tankrounds.season.Lot;
import org.tankrounds.season.Survivors;
import org.tankrounds.summary.LimitDays.Verdict;
import org.tankrounds.summary.TankEvidence.Deaths;
import org.tankrounds.tasks.Task;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;

/** From a figure of the summary to the rows that it is made of: of several tanks the tanks, of one tank its rows. */
final class SummaryRowsMaker {
    private static final String MINUS = "\u2212";

    private final SeasonSummary summary;
    private final SummaryFigure figure;
    private final Speech speech;

    SummaryRowsMaker(SeasonSummary summary, SummaryFigure figure, Speech speech) {
        this.summary = summary;
        this.figure = figure;
        this.speech = speech;
    }

    /** Of all tanks, or a school's. */
    SummaryRowsPage ofTanks(Optional<SeasonSummary.Row> school) {
        SeasonSummary.Row sum = school.orElse(summary.chapter());
        List<Row> rows = figure.equals(SummaryFigure.SURVIVAL)
                ? survival(sum.figures(), school.map(one -> "?school=" + one.schoolCode()).orElse(""))
                : tanks(school);
        return page(school.map(SeasonSummary.Row::school).orElseGet(() -> say("summary.allSchools")),
                school.map(one -> new Link(say("summary.allSchools"), here(""))), rows,
                figure.value().applyAsInt(sum.figures()),
                figure.equals(SummaryFigure.SURVIVAL) ? lead() : say("summary.rows.lead.tanks"));
    }

    private List<Row> tanks(Optional<SeasonSummary.Row> school) {
        return summary.tanks().stream()
                .filter(tank -> school.isEmpty() || tank.schoolCode().equals(school.get().schoolCode()))
                .map(tank -> new Row("", "", tank.school() + ", " + tank.classroom(), tank.tank(),
                        number(figure.value().applyAsInt(tank.figures())), here("?tank=" + tank.tank())))
                .toList();
    }

    /** @param readings of each day */
    SummaryRowsPage ofTank(TankEvidence evidence, SortedMap<LocalDate, ReadingTally> readings,
            Map<Integer, Tank> tanks) {
        SeasonSummary.Row tank = SummaryReads.row(evidence);
        return page(tank.school() + ", " + tank.classroom(),
                Optional.of(new Link(tank.school(), here("?school=" + tank.schoolCode()))),
                rows(evidence, readings, tanks), figure.value().applyAsInt(tank.figures()), lead());
    }

    /** What was read on a day; each reading leads to its own page. */
    SummaryRowsPage ofDay(Tank tank, LocalDate day, List<Reading> readings) {
        List<Row> rows = readings.stream().map(one -> new Row("",
                speech.written("time.pattern.clock", one.measuredAt().atZone(tank.zone())),
                one.values().stream().map(value -> say("tank.log.value", Wording.inSentence(value.analyte()),
                        Wording.value(value))).collect(Collectors.joining(", ")),
                one.note().orElse(""), "1", "/tanks/" + tank.code() + "/readings/" + one.code())).toList();
        return new SummaryRowsPage(say("summary.rows.title", say("summary.rows.ofDay", day(day)),
                tank.school() + ", " + tank.classroom()), address(), summary.heading().season(),
                new Link(tank.school() + ", " + tank.classroom(), here("?tank=" + tank.code())), lead(),
                say("summary.rows.column.readings"), rows, say("summary.rows.total"), number(rows.size()));
    }

    private SummaryRowsPage page(String where, Optional<Link> up, List<Row> rows, int total, String lead) {
        return new SummaryRowsPage(say("summary.rows.title", speech.say(figure.name()), where), address(),
                summary.heading().season(), up.orElse(null), lead, column(), rows, say("summary.rows.total"),
                number(total));
    }

    private String lead() {
        if (figure.stage().isPresent()) {
            return say("summary.rows.lead.stage");
        }
        if (figure.series().isPresent()) {
            return say("summary.rows.lead.days");
        }
        return figure.equals(SummaryFigure.SURVIVAL) ? say("summary.rows.lead.survival") : "";
    }

    private String column() {
        if (figure.series().isPresent()) {
            return say("summary.rows.column.days");
        }
        if (figure.equals(SummaryFigure.READINGS)) {
            return say("summary.rows.column.readings");
        }
        boolean ofActions = Stream.of(SummaryFigure.ASKED, SummaryFigure.DONE, SummaryFigure.ADVICE,
                SummaryFigure.CHANGES, SummaryFigure.VISITS).anyMatch(figure::equals);
        return ofActions ? say("summary.rows.column.times") : say("summary.rows.column.fish");
    }

    private List<Row> rows(TankEvidence evidence, SortedMap<LocalDate, ReadingTally> readings,
            Map<Integer, Tank> tanks) {
        if (figure.stage().isPresent()) {
            return stage(evidence);
        }
        if (figure.series().isPresent()) {
            return days(evidence, figure.series().get());
        }
        if (figure.cause().isPresent()) {
            return deaths(evidence, dead -> dead.cause().equals(figure.cause()));
        }
        CountRows count = new CountRows(evidence, tanks);
        return switch (figure.code()) {
            case "received" -> count.lots();
            case "dead-as-eggs" -> deaths(evidence, dead -> dead.stage().name().equals("EGG"));
            case "dead-as-sac-fry" -> deaths(evidence, dead -> dead.stage().name().equals("SAC_FRY"));
            case "dead-feeding" -> deaths(evidence, dead -> dead.stage().name().equals("FEEDING"));
            case "dead" -> deaths(evidence, dead -> true);
            case "moved" -> count.changes(line -> switch (line.what()) {
                case MOVED_OUT -> line.fish();
                case MOVED_IN -> -line.fish();
                default -> 0;
            });
            case "thinned" -> count.changes(line -> line.what() == Account.What.THINNED ? line.fish() : 0);
            case "released" -> count.changes(line -> line.what() == Account.What.RELEASED ? line.fish() : 0);
            case "alive" -> count.changes(SummaryRowsMaker::changeOfLiving);
            case "unexplained" -> count.changes(line -> -line.surplus());
            case "survival" -> survival(evidence.figures(), "?tank=" + evidence.tank().code());
            case "readings" -> readings(evidence.tank(), readings);
            case "asked" -> tasks(evidence, task -> task.act().isEmpty());
            case "done" -> tasks(evidence, task -> task.act().isEmpty() && !task.isOpen());
            case "advice" -> tasks(evidence, task -> task.act().isPresent());
            case "visits" -> visits(evidence);
            case "changes" -> waterChanges(evidence);
            default -> throw new IllegalStateException("no rows of " + figure.code());
        };
    }

    private static int changeOfLiving(Account.Line line) {
        return switch (line.what()) {
            case RECEIVED, MOVED_IN -> line.fish();
            case DIED, MOVED_OUT, THINNED, RELEASED -> line.surplus() - line.fish();
            case COUNTED -> line.surplus();
            case HATCHED -> 0;
        };
    }

    private List<Row> deaths(TankEvidence evidence, Predicate<Deaths> which) {
        return evidence.deaths().stream().filter(which).map(dead -> new Row("", day(dead.day()),
                say("summary.rows.died." + SummaryColumns.code(dead.stage())),
                dead.cause().map(cause -> say("count.cause." + cause.code())).orElse(""), number(dead.fish()),
                ofDay(evidence.tank(), dead.day()))).toList();
    }

    /** Fish that were moved among several tanks neither came nor went: survivors of tanks do not add up. */
    private List<Row> survival(Figures figures, String asked) {
        Ledger ledger = figures.ledger();
        Survivors survivors = figures.survivors();
        List<Row> rows = new ArrayList<>();
        rows.add(part(SummaryFigure.RECEIVED, ledger.received(), asked));
        if (survivors.came() > ledger.received()) {
            rows.add(part(SummaryFigure.MOVED, survivors.came() - ledger.received(), asked));
        }
        rows.add(part(SummaryFigure.DEAD, -ledger.dead(), asked));
        int missing = survivors.came() - ledger.dead() - survivors.survived();
        if (missing != 0) {
            rows.add(part(SummaryFigure.UNEXPLAINED, -missing, asked));
        }
        return rows;
    }

    private Row part(SummaryFigure of, int fish, String asked) {
        return new Row("", "", speech.say(of.name()), "", number(fish), address() + "/rows/" + of.code() + asked);
    }

    private List<Row> stage(TankEvidence evidence) {
        return evidence.stages().lines().getOrDefault(figure.stage().orElseThrow(), List.of()).stream()
                .filter(line -> line.fish() != 0)
                .map(line -> new Row("", day(line.at(), evidence), say("summary.rows.stage." + line.what().name()), "",
                        number(line.fish()), line.what() == Stages.What.DIED
                                ? ofDay(evidence.tank(), evidence.day(line.at())) : count(evidence.tank())))
                .toList();
    }

    private List<Row> days(TankEvidence evidence, Series series) {
        List<Row> rows = new ArrayList<>();
        evidence.days().days(series).forEach((day, of) -> rows.add(new Row("d" + day, day(day),
                say("summary.rows.verdict." + of.verdict().name()), detail(series, of),
                of.verdict() == Verdict.WITHIN ? "1" : "0", ofDay(evidence.tank(), day))));
        return rows;
    }

    private String detail(Series series, LimitDays.Day day) {
        String values = say("summary.rows.values", day.values());
        String worst = day.worst().map(found -> say("summary.rows.worst",
                Rounded.value(series, found.value()).toPlainString(), say("summary.unit." + series.code()))).orElse("");
        String none = day.notDetected() == 0 ? "" : say("summary.water.notDetectedOf", day.notDetected(), day.values());
        return Stream.of(values, worst, none).filter(part -> !part.isEmpty()).collect(Collectors.joining(" · "));
    }

    private List<Row> readings(Tank tank, SortedMap<LocalDate, ReadingTally> readings) {
        List<Row> rows = new ArrayList<>();
        readings.forEach((day, tally) -> rows.add(new Row("", day(day), "",
                tally.corrected() == 0 ? "" : say("summary.rows.corrected", tally.corrected()), number(tally.posted()),
                ofDay(tank, day))));
        return rows;
    }

    private List<Row> tasks(TankEvidence evidence, Predicate<Task> which) {
        return evidence.tasks().stream().filter(which).map(task -> new Row("", day(task.askedAt(), evidence),
                task.words(), Stream.of(task.askedBy().map(name -> say("summary.rows.askedBy", name)),
                        task.doneAt().map(at -> say("summary.rows.done", day(at, evidence))))
                        .flatMap(Optional::stream).collect(Collectors.joining(" · ")),
                "1", "/tanks/" + evidence.tank().code() + "/class")).toList();
    }

    private List<Row> visits(TankEvidence evidence) {
        return evidence.visits().stream().map(visit -> new Row("", day(visit.at(), evidence),
                visit.deeds().stream().map(deed -> say("visits.did." + deed.code())).collect(Collectors.joining(", ")),
                visit.by(), "1", "/tanks/" + evidence.tank().code() + "/visits")).toList();
    }

    private List<Row> waterChanges(TankEvidence evidence) {
        return evidence.waterChanges().stream().map(one -> new Row("", day(one.at(), evidence),
                say("summary.rows.changed", TypedNumber.text(one.value(), 1)), "", "1",
                ofDay(evidence.tank(), evidence.day(one.at())))).toList();
    }

    /** Lines of the count. */
    private final class CountRows {
        private final TankEvidence evidence;
        private final LineWording wording;

        CountRows(TankEvidence evidence, Map<Integer, Tank> tanks) {
            this.evidence = evidence;
            this.wording = new LineWording(tanks, speech);
        }

        List<Row> lots() {
            List<Row> rows = new ArrayList<>();
            // Numbers in addresses count in the order of writing down.
            List<Lot> written = evidence.lots().stream().sorted(Comparator.comparing(Lot::lotId)).toList();
            for (int i = 0; i < written.size(); i++) {
                Lot lot = written.get(i);
                rows.add(new Row("", day(lot.receivedAt(), evidence), say("count.line.received"), papers(lot),
                        number(lot.eggs()), "/season/" + summary.heading().seasonCode() + "/tanks/"
                                + evidence.tank().code() + "/lots/" + (i + 1)));
            }
            return rows;
        }

        private String papers(Lot lot) {
            return Stream.of(lot.supplier(),
                            lot.certificate().map(number -> say("season.lot.certificate", number)),
                            how(lot.method(), lot.spread()))
                    .flatMap(Optional::stream).collect(Collectors.joining(" · "));
        }

        /** @param change of the figure by a line */
        List<Row> changes(ToIntFunction<Account.Line> change) {
            return evidence.account().lines().stream().filter(line -> change.applyAsInt(line) != 0)
                    .map(line -> new Row("", day(line.at(), evidence), wording.what(line), detail(line),
                            number(change.applyAsInt(line)), line.what() == Account.What.DIED
                                    ? ofDay(evidence.tank(), evidence.day(line.at())) : count(evidence.tank())))
                    .toList();
        }

        private String detail(Account.Line line) {
            List<String> parts = new ArrayList<>();
            wording.unexplained(line).ifPresent(parts::add);
            line.entry().ifPresent(entry -> {
                entry.approval().ifPresent(number -> parts.add(say("count.line.approval", number)));
                how(entry.method(), entry.spread()).ifPresent(parts::add);
                entry.by().ifPresent(parts::add);
            });
            return String.join(" · ", parts);
        }

        private Optional<String> how(CountMethod method, int spread) {
            String how = say("count.method." + method.code());
            return spread == 0 ? Optional.of(how) : Optional.of(say("summary.site.off", how, spread));
        }
    }

    private String count(Tank tank) {
        return "/season/" + summary.heading().seasonCode() + "/tanks/" + tank.code() + "/count";
    }

    private String ofDay(Tank tank, LocalDate day) {
        return address() + "/rows/readings?tank=" + tank.code() + "&day=" + day;
    }

    private String here(String asked) {
        return address() + "/rows/" + figure.code() + asked;
    }

    private String address() {
        return "/season/" + summary.heading().seasonCode() + "/summary";
    }

    private String day(Instant at, TankEvidence evidence) {
        return day(evidence.day(at));
    }

    private String day(LocalDate day) {
        return speech.written("time.pattern.dateAndYear", day);
    }

    private String number(int number) {
        String text = String.format(speech.language().locale(), "%,d", Math.abs(number));
        return number < 0 ? MINUS + text : text;
    }

    private String say(String key, Object... with) {
        return speech.say(key, with);
    }
}
