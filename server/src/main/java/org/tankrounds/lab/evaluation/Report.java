package org.tankrounds.lab.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.lab.evaluation.Table.Column;

/**
 * The evaluation as tables: first all worlds together, then each by itself.
 *
 * @param alarmChance chance from which the engine's answer counts as an alarm
 */
public record Report(Examination whole, double alarmChance) {

    private static final String ENGINE = Examiner.ENGINE;

    /** A world, or all of them. */
    private record Part(String name, Examination examination) {

        Answered answered(String voice) {
            return examination.answered(examination.voice(voice));
        }
    }

    /** What stands in a row behind the names of its part and its voice. */
    private interface Cells {
        Stream<Cell> of(Part part, String voice);
    }

    /** What was asked, in a sentence. */
    public String heading() {
        int worlds = whole.worlds().size();
        double trues = whole.questions().stream().filter(Question::beyond).count();
        return String.format(Locale.ROOT, "%,d questions about %,d tanks in %s; %.1f %% came true.",
                whole.questions().size(), whole.courses().size(),
                worlds == 1 ? "one world" : worlds + " worlds", 100 * trues / whole.questions().size());
    }

    /** All tables; those of single worlds only where there are several. */
    public List<Table> tables() {
        List<Part> worlds = worlds();
        List<Table> tables = new ArrayList<>(List.of(scores("scores", "Scores", List.of(all())), gains()));
        if (!whole.touched().isEmpty()) {
            tables.add(withouts());
        }
        tables.addAll(List.of(reliability(), brier(), alarms("alarms", "As an alarm", List.of(all()))));
        if (worlds.size() > 1) {
            tables.add(scores("scores-by-world", "Scores, world by world", worlds));
            tables.add(alarms("alarms-by-world", "As an alarm, world by world", worlds));
        }
        return tables;
    }

    /** The reliability table as an SVG picture. */
    public List<String> plot() {
        return ReliabilityPlot.of(tenths(), heading());
    }

    private Part all() {
        return new Part("all", whole);
    }

    private List<Part> worlds() {
        return whole.worlds().stream()
                .map(world -> new Part(world, whole.of(tank -> tank.world().equals(world)))).toList();
    }

    private Table scores(String name, String title, List<Part> parts) {
        return new Table(name, title, "± half the span of 95 of 100 resamplings of tanks, or of chapters.",
                Table.columns(Column.words("world", "who"), measures()),
                rows(parts, compared(), (part, voice) -> Stream.of(Measure.values())
                        .map(measure -> Cell.of(Bootstrap.of(measure.of(part.answered(voice)))))));
    }

    private Table gains() {
        List<String> references = compared().stream().filter(voice -> !voice.equals(ENGINE)).toList();
        return new Table("gains", "Engine less each reference", "Both on the same resamplings.",
                Table.columns(Column.words("less"), measures()),
                references.stream().map(reference -> row(reference, Stream.of(Measure.values())
                        .map(measure -> gain(all(), reference, measure)))).toList());
    }

    private static Cell gain(Part part, String other, Measure measure) {
        Resampled engine = measure.of(part.answered(ENGINE));
        return Cell.of(Bootstrap.of(engine.minus(measure.of(part.answered(other)))));
    }

    private Table withouts() {
        return new Table("without", "Engine with everything less engine without a source",
                "Of the tanks that the source tells of, and of the chapters that they are in.",
                Table.columns(Column.words("without"), Column.numbers("tanks"), measures()),
                whole.touched().entrySet().stream().map(this::without).toList());
    }

    private List<Cell> without(Map.Entry<String, Set<LabTank>> source) {
        Stream<Cell> gains = Stream.of(Measure.values()).map(measure ->
                gain(chaptersOf(source.getValue(), measure.chapter()), source.getKey(), measure));
        return row(source.getKey(), Stream.concat(Stream.of(Cell.of(source.getValue().size())), gains));
    }

    private Part chaptersOf(Set<LabTank> tanks, int size) {
        Set<LabTank> chapters = tanks.stream().map(tank -> tank.chapter(size)).collect(Collectors.toSet());
        return new Part("some", whole.of(tank -> chapters.contains(tank.chapter(size))));
    }

    private Table reliability() {
        return new Table("reliability", "What came true of the engine's chances", "All worlds together.",
                Table.columns(Column.words("chance"), Column.numbers("cases", "said", "came true"),
                        Column.estimates("miss")),
                tenths().stream().map(tenth -> row(tenth.title(), Stream.of(Cell.of(tenth.cases()),
                        Cell.of(tenth.said(), 3), Cell.of(tenth.cameTrue(), 3), Cell.of(tenth.miss()))))
                        .toList());
    }

    private List<Reliability> tenths() {
        return Reliability.of(all().answered(ENGINE));
    }

    private Table brier() {
        return new Table("brier", "The engine's Brier score and what it is made of",
                "Score = reliability - resolution + uncertainty + within.",
                Table.columns(Column.words("world", "who"),
                        Column.numbers("score", "reliability", "resolution", "uncertainty", "within", "skill",
                                "largest miss", "of cases")),
                rows(Stream.concat(Stream.of(all()), worlds().stream()).toList(), List.of(ENGINE),
                        (part, voice) -> cells(Brier.of(part.answered(voice)))));
    }

    private static Stream<Cell> cells(Brier brier) {
        return Stream.of(Cell.of(brier.score(), 4), Cell.of(brier.reliability(), 4),
                Cell.of(brier.resolution(), 4), Cell.of(brier.uncertainty(), 4), Cell.of(brier.within(), 4),
                Cell.of(brier.skill(), 3), Cell.of(brier.worst().miss(), 3), Cell.of(brier.worst().cases()));
    }

    private Table alarms(String name, String title, List<Part> parts) {
        List<String> voices = compared().stream()
                .filter(voice -> !voice.equals(Reference.TRUTH.title())).toList();
        return new Table(name, title, String.format(Locale.ROOT,
                "The engine's from a chance of %.2f; a reference's from the number that makes it raise as many"
                        + " in all. Alarms per tank and month of 30 days.", alarmChance),
                Table.columns(Column.words("world", "who"),
                        Column.numbers("from", "alarms", "false", "episodes", "foreseen", "median lead h")),
                rows(parts, voices, (part, voice) ->
                        cells(Alarms.of(part.examination, part.answered(voice), threshold(voice)))));
    }

    private static Stream<Cell> cells(Alarms alarms) {
        return Stream.of(Cell.of(alarms.threshold(), 3), Cell.of(alarms.perTankMonth(), 2),
                Cell.of(alarms.falsePerTankMonth(), 2), Cell.of(alarms.episodes()),
                Cell.of(alarms.foreseen(), 3), Cell.of(alarms.medianLeadHours(), 0));
    }

    /** The same in every world. */
    private double threshold(String voice) {
        if (voice.equals(ENGINE)) {
            return alarmChance;
        }
        long wanted = whole.voice(ENGINE).answers().stream()
                .filter(answer -> answer.chance() >= alarmChance).count();
        return Alarms.threshold(all().answered(voice).said(), (int) wanted);
    }

    /** The engine and what it is held against. */
    private List<String> compared() {
        return whole.voices().stream().map(Voice::name).filter(name -> !whole.touched().containsKey(name))
                .toList();
    }

    private static List<List<Cell>> rows(List<Part> parts, List<String> voices, Cells cells) {
        return parts.stream().flatMap(part -> voices.stream().map(voice ->
                row(part.name, Stream.concat(Stream.of(Cell.of(voice)), cells.of(part, voice))))).toList();
    }

    private static List<Cell> row(String name, Stream<Cell> cells) {
        return Stream.concat(Stream.of(Cell.of(name)), cells).toList();
    }

    private static Stream<Column> measures() {
        return Column.estimates(Stream.of(Measure.values()).map(Measure::title).toArray(String[]::new));
    }
}
