package org.tankrounds.summary;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.tankrounds.fish.Stage;
import org.tankrounds.season.DeathCause;
import org.tankrounds.season.Ledger;
import org.tankrounds.words.Saying;

/**
 * A figure of the summary that has rows behind it.
 *
 * @param code in addresses
 * @param name what it is called above its rows
 * @param value what its rows add up to
 */
record SummaryFigure(String code, Saying name, ToIntFunction<Figures> value) {
    static final SummaryFigure RECEIVED = ledger("received", Ledger::received);
    static final SummaryFigure DEAD_AS_EGGS = ledger("deadAsEggs", Ledger::deadAsEggs);
    static final SummaryFigure DEAD_AS_SAC_FRY = ledger("deadAsSacFry", Ledger::deadAsSacFry);
    static final SummaryFigure DEAD_FEEDING = ledger("deadFeeding", Ledger::deadFeeding);
    static final SummaryFigure DEAD = ledger("dead", Ledger::dead);
    static final SummaryFigure MOVED = ledger("moved", Ledger::movedAway);
    static final SummaryFigure THINNED = ledger("thinned", Ledger::thinned);
    static final SummaryFigure RELEASED = ledger("released", Ledger::released);
    static final SummaryFigure ALIVE = ledger("alive", Ledger::alive);
    static final SummaryFigure UNEXPLAINED = ledger("unexplained", Ledger::unexplained);
    static final SummaryFigure SURVIVAL = figure("survival", figures -> figures.survivors().survived());
    static final SummaryFigure READINGS = figure("readings", figures -> figures.readings().posted());
    static final SummaryFigure ASKED = figure("asked", figures -> figures.tasks().asked());
    static final SummaryFigure DONE = figure("done", figures -> figures.tasks().done());
    static final SummaryFigure ADVICE = figure("advice", figures -> figures.tasks().acts());
    static final SummaryFigure VISITS = figure("visits", Figures::visits);
    static final SummaryFigure CHANGES = figure("changes", Figures::waterChanges);
    private static final String STAGE = "stage-";
    private static final String CAUSE = "cause-";
    private static final List<SummaryFigure> ALL = all();

    static Optional<SummaryFigure> of(String code) {
        return ALL.stream().filter(figure -> figure.code().equals(code)).findFirst();
    }

    /** For each there is a page of rows. */
    static List<SummaryFigure> list() {
        return ALL;
    }

    static SummaryFigure of(Stage stage) {
        return of(STAGE + lower(stage)).orElseThrow();
    }

    static SummaryFigure of(Series series) {
        return of(dashed(series.code())).orElseThrow();
    }

    static SummaryFigure of(DeathCause cause) {
        return of(CAUSE + dashed(cause.code())).orElseThrow();
    }

    Optional<Stage> stage() {
        return List.of(Stage.values()).stream().filter(stage -> code.equals(STAGE + lower(stage))).findFirst();
    }

    Optional<Series> series() {
        return List.of(Series.values()).stream().filter(series -> code.equals(dashed(series.code()))).findFirst();
    }

    Optional<DeathCause> cause() {
        return List.of(DeathCause.values()).stream().filter(cause -> code.equals(CAUSE + dashed(cause.code())))
                .findFirst();
    }

    private static List<SummaryFigure> all() {
        List<SummaryFigure> all = new ArrayList<>(List.of(RECEIVED, DEAD_AS_EGGS, DEAD_AS_SAC_FRY, DEAD_FEEDING, DEAD,
                MOVED, THINNED, RELEASED, ALIVE, UNEXPLAINED, SURVIVAL, READINGS, ASKED, DONE,
                ADVICE, CHANGES, VISITS));
        for (Stage stage : Stage.values()) {
            all.add(new SummaryFigure(STAGE + lower(stage), Saying.of("summary.rows.of." + lower(stage)),
                    figures -> figures.stages().of(stage).survived()));
        }
        for (Series series : Series.values()) {
            all.add(new SummaryFigure(dashed(series.code()), Saying.of("summary.rows.within." + series.code()),
                    figures -> figures.of(series).within()));
        }
        for (DeathCause cause : DeathCause.values()) {
            all.add(new SummaryFigure(CAUSE + dashed(cause.code()),
                    Saying.of("summary.rows.cause", Saying.of("count.cause." + cause.code())),
                    figures -> figures.causes().of(cause)));
        }
        return List.copyOf(all);
    }

    private static SummaryFigure ledger(String name, ToIntFunction<Ledger> value) {
        return figure(name, figures -> value.applyAsInt(figures.ledger()));
    }

    private static SummaryFigure figure(String name, ToIntFunction<Figures> value) {
        return new SummaryFigure(name.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT),
                Saying.of("summary.rows.of." + name), value);
    }

    private static String lower(Stage stage) {
        return dashed(stage.name().toLowerCase(Locale.ROOT));
    }

    private static String dashed(String code) {
        return code.replace('_', '-');
    }
}
