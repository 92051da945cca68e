package org.tankrounds.summary;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.tankrounds.fish.Stage;
import org.tankrounds.season.DeathCause;
import org.tankrounds.summary.Column.Kind;
import org.tankrounds.summary.SeasonSummary.Row;
import org.tankrounds.summary.WithinLimit.Worst;

/** The columns that CSV and workbook share. Units stand in the names. */
final class SummaryColumns {
    static final List<Column<Row>> ALL = all();

    private SummaryColumns() {}

    private static List<Column<Row>> all() {
        List<Column<Row>> columns = new ArrayList<>();
        columns.add(text("level", row -> row.level().name().toLowerCase(Locale.ROOT)));
        columns.add(text("school_code", Row::schoolCode));
        columns.add(text("school", Row::school));
        columns.add(text("classroom", Row::classroom));
        columns.add(text("tank", Row::tank));
        columns.add(count("eggs_received", row -> row.figures().ledger().received()));
        columns.add(count("dead_as_eggs", row -> row.figures().ledger().deadAsEggs()));
        columns.add(count("dead_as_sac_fry", row -> row.figures().ledger().deadAsSacFry()));
        columns.add(count("dead_feeding", row -> row.figures().ledger().deadFeeding()));
        columns.add(count("dead", row -> row.figures().ledger().dead()));
        columns.add(count("alive_by_count", row -> row.figures().ledger().alive()));
        columns.add(count("unexplained", row -> row.figures().ledger().unexplained()));
        columns.add(new Column<>("survival", Kind.SHARE, row -> share(row.figures().survival())));
        columns.add(new Column<>("survival_low_wilson_95", Kind.SHARE, row -> row.figures().survivalInterval()
                .map(interval -> Rounded.share(interval.low())).orElse(null)));
        columns.add(new Column<>("survival_high_wilson_95", Kind.SHARE, row -> row.figures().survivalInterval()
                .map(interval -> Rounded.share(interval.high())).orElse(null)));
        columns.add(count("readings", row -> row.figures().readings().posted()));
        columns.add(count("readings_corrected", row -> row.figures().readings().corrected()));
        columns.add(new Column<>("first_reading_utc", Kind.TIME, row -> row.figures().readings().first().orElse(null)));
        columns.add(new Column<>("last_reading_utc", Kind.TIME, row -> row.figures().readings().last().orElse(null)));
        for (Series series : Series.values()) {
            addSeries(columns, series);
        }
        // Behind all that were there before them.
        columns.add(count("moved_in", row -> row.figures().ledger().movedIn()));
        columns.add(count("moved_out", row -> row.figures().ledger().movedOut()));
        columns.add(count("taken_out_early", row -> row.figures().ledger().thinned()));
        columns.add(count("released", row -> row.figures().ledger().released()));
        columns.add(count("counted_as_hatched", row -> row.figures().hatched()));
        for (DeathCause cause : DeathCause.values()) {
            columns.add(count("dead_of_" + cause.code(), row -> row.figures().causes().of(cause)));
        }
        for (Stage stage : Stage.values()) {
            addStage(columns, stage);
        }
        columns.add(count("tasks_asked", row -> row.figures().tasks().asked()));
        columns.add(count("tasks_done", row -> row.figures().tasks().done()));
        columns.add(count("advised_acts_done", row -> row.figures().tasks().acts()));
        columns.add(count("water_changes", row -> row.figures().waterChanges()));
        for (Series series : Series.values()) {
            addSpell(columns, series);
        }
        columns.add(count("visits", row -> row.figures().visits()));
        addExact(columns, "survival_", row -> row.figures().exactSurvivalInterval());
        for (Stage stage : Stage.values()) {
            addExact(columns, code(stage) + "_stage_", row -> row.figures().stages().of(stage).exactInterval());
        }
        return List.copyOf(columns);
    }

    private static void addStage(List<Column<Row>> columns, Stage stage) {
        String code = code(stage) + "_stage_";
        columns.add(count(code + "began", row -> row.figures().stages().of(stage).began()));
        columns.add(count(code + "survived", row -> row.figures().stages().of(stage).survived()));
        columns.add(new Column<>(code + "survival", Kind.SHARE,
                row -> share(row.figures().stages().of(stage).share())));
        columns.add(new Column<>(code + "low_wilson_95", Kind.SHARE, row -> row.figures().stages().of(stage).interval()
                .map(interval -> Rounded.share(interval.low())).orElse(null)));
        columns.add(new Column<>(code + "high_wilson_95", Kind.SHARE, row -> row.figures().stages().of(stage).interval()
                .map(interval -> Rounded.share(interval.high())).orElse(null)));
        columns.add(new Column<>(code + "counts_off_by_95", Kind.NUMBER,
                row -> row.figures().stages().of(stage).spread()));
    }

    private static void addExact(
            List<Column<Row>> columns, String code, Function<Row, Optional<ClopperPearson>> interval) {
        columns.add(new Column<>(code + "low_exact_95", Kind.SHARE, row -> interval.apply(row)
                .map(exact -> Rounded.share(exact.low())).orElse(null)));
        columns.add(new Column<>(code + "high_exact_95", Kind.SHARE, row -> interval.apply(row)
                .map(exact -> Rounded.share(exact.high())).orElse(null)));
    }

    private static void addSpell(List<Column<Row>> columns, Series series) {
        String code = "longest_" + series.code() + "_spell_";
        columns.add(new Column<>(code + "from", Kind.DAY, row -> spell(row, series, Spell::from)));
        columns.add(new Column<>(code + "until", Kind.DAY, row -> spell(row, series, Spell::until)));
        columns.add(new Column<>(code + "days_read", Kind.NUMBER, row -> spell(row, series, Spell::days)));
        columns.add(new Column<>(code + "worst_" + series.unitInColumns(), Kind.NUMBER,
                row -> spell(row, series, spell -> Rounded.value(series, spell.worst().value()))));
        columns.add(text(code + "tank", row -> spell(row, series, spell -> spell.worst().tank())));
    }

    private static Object spell(Row row, Series series, Function<Spell, Object> part) {
        return row.figures().of(series).spell().map(part).orElse(null);
    }

    /** In column names and JSON. */
    static String code(Enum<?> one) {
        return one.name().toLowerCase(Locale.ROOT);
    }

    private static void addSeries(List<Column<Row>> columns, Series series) {
        String code = series.code();
        columns.add(count(code + "_days", row -> row.figures().of(series).days()));
        columns.add(count(code + "_days_within_limit", row -> row.figures().of(series).within()));
        columns.add(count(code + "_days_undecided", row -> row.figures().of(series).undecided()));
        columns.add(new Column<>(code + "_share_within_limit", Kind.SHARE,
                row -> share(row.figures().of(series).share())));
        columns.add(count(code + "_values", row -> row.figures().of(series).values()));
        columns.add(count(code + "_values_not_detected", row -> row.figures().of(series).notDetected()));
        columns.add(count(code + "_values_doubtful_left_out", row -> row.figures().of(series).doubtful()));
        columns.add(new Column<>("worst_" + code + "_" + series.unitInColumns(), Kind.NUMBER,
                row -> worst(row, series, worst -> Rounded.value(series, worst.value()))));
        columns.add(new Column<>("worst_" + code + "_at_utc", Kind.TIME, row -> worst(row, series, Worst::at)));
        columns.add(text("worst_" + code + "_tank", row -> worst(row, series, Worst::tank)));
    }

    private static Object worst(Row row, Series series, Function<Worst, Object> part) {
        return row.figures().of(series).worst().map(part).orElse(null);
    }

    private static BigDecimal share(OptionalDouble share) {
        return share.isPresent() ? Rounded.share(share.getAsDouble()) : null;
    }

    private static Column<Row> text(String name, Function<Row, Object> value) {
        return new Column<>(name, Kind.TEXT, value);
    }

    private static Column<Row> count(String name, Function<Row, Object> value) {
        return new Column<>(name, Kind.COUNT, value);
    }

    /** ISO 8601 in UTC. */
    static String text(Instant at) {
        return at.toString();
    }
}
