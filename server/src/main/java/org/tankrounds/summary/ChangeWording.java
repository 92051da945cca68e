package org.tankrounds.summary;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tankrounds.fish.Stage;
import org.tankrounds.pages.SummaryPage;
import org.tankrounds.season.DeathCause;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/** Columns of the files for scripts, in the words of the page. */
final class ChangeWording {
    /** Each hangs on others that are told. */
    private static final Pattern DERIVED = Pattern.compile("level|school_code|dead|.*survival|.*_(wilson|exact)_95"
            + "|.*_share_within_limit|worst_.*_(at_utc|tank)|longest_.*_tank");
    private static final Map<String, SummaryFigure> FIGURES = Map.ofEntries(
            Map.entry("eggs_received", SummaryFigure.RECEIVED), Map.entry("dead_as_eggs", SummaryFigure.DEAD_AS_EGGS),
            Map.entry("dead_as_sac_fry", SummaryFigure.DEAD_AS_SAC_FRY),
            Map.entry("dead_feeding", SummaryFigure.DEAD_FEEDING), Map.entry("alive_by_count", SummaryFigure.ALIVE),
            Map.entry("unexplained", SummaryFigure.UNEXPLAINED), Map.entry("readings", SummaryFigure.READINGS),
            Map.entry("taken_out_early", SummaryFigure.THINNED), Map.entry("released", SummaryFigure.RELEASED),
            Map.entry("tasks_asked", SummaryFigure.ASKED), Map.entry("tasks_done", SummaryFigure.DONE),
            Map.entry("advised_acts_done", SummaryFigure.ADVICE), Map.entry("water_changes", SummaryFigure.CHANGES),
            Map.entry("visits", SummaryFigure.VISITS));
    private static final Set<String> OTHERS = Set.of("school", "classroom", "tank", "readings_corrected",
            "first_reading_utc", "last_reading_utc", "moved_in", "moved_out", "counted_as_hatched", "released_at",
            "stream_check", "delivered", "chapter", "season",
            "starts_on", "ends_on");
    private static final Pattern OF_SERIES = Pattern.compile("(?:(worst|longest)_)?"
            + "(temperature|un_ionised_ammonia|nitrite)_(?:spell_)?(.*)");
    private static final Pattern OF_STAGE = Pattern.compile("(egg|sac_fry|feeding)_stage_(.*)");
    private static final String DEAD_OF = "dead_of_";

    private final Speech speech;

    ChangeWording(Speech speech) {
        this.speech = speech;
    }

    static boolean isDerived(String column) {
        return DERIVED.matcher(column).matches();
    }

    List<SummaryPage.Change> changes(List<Change> changes) {
        return changes.stream().map(change -> new SummaryPage.Change(
                change.where().isEmpty() ? change.place() : change.place() + " (" + change.where() + ")",
                speech.say(name(change.column())), change.before(), change.now())).toList();
    }

    private static Saying name(String column) {
        if (FIGURES.containsKey(column)) {
            return FIGURES.get(column).name();
        }
        if (OTHERS.contains(column)) {
            return Saying.of("freeze.column." + column);
        }
        if (column.startsWith(PackageChanges.ROWS_OF)) {
            return Saying.of("freeze.column.rows", column.substring(PackageChanges.ROWS_OF.length()));
        }
        if (column.startsWith(DEAD_OF)) {
            return DeathCause.ofCode(column.substring(DEAD_OF.length())).map(cause -> SummaryFigure.of(cause).name())
                    .orElse(Saying.asIs(column));
        }
        Matcher stage = OF_STAGE.matcher(column);
        if (stage.matches()) {
            return ofStage(Stage.valueOf(stage.group(1).toUpperCase(Locale.ROOT)), stage.group(2));
        }
        Matcher series = OF_SERIES.matcher(column);
        return series.matches() ? ofSeries(series.group(1), series.group(2), series.group(3)) : Saying.asIs(column);
    }

    private static Saying ofStage(Stage stage, String what) {
        return what.equals("survived") ? SummaryFigure.of(stage).name()
                : Saying.of(what.equals("began") ? "freeze.stage.began" : "freeze.stage.off",
                        Saying.of("freeze.stage.of." + SummaryColumns.code(stage)));
    }

    private static Saying ofSeries(String which, String series, String what) {
        Saying name = Saying.of("summary.series." + series);
        if (which == null) {
            return Saying.of("freeze.series.count." + what, name);
        }
        if (which.equals("worst")) {
            return Saying.of("freeze.series.worst", name);
        }
        return Saying.of("freeze.series.spell." + (what.startsWith("worst") ? "worst" : what), name);
    }
}
