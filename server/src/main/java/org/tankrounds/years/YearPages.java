package org.tankrounds.years;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import org.tankrounds.pages.YearsPage;
import org.tankrounds.season.DeathCause;
import org.tankrounds.summary.Wilson;
import org.tankrounds.web.Formats;

/** From the counts of seasons to the page that shows them beside each other. */
final class YearPages {
    /** More do not fit beside each other. */
    private static final int MOST = 6;
    private static final double PERCENT = 100;

    private final Formats formats;

    YearPages(Formats formats) {
        this.formats = formats;
    }

    /** @param years the oldest first */
    YearsPage page(List<Year> years, String saved) {
        List<Year> shown = years.subList(Math.max(0, years.size() - MOST), years.size());
        return new YearsPage(title(shown), saved, shown.stream().map(Year::name).toList(), rows(shown), changes(shown),
                years.size() > MOST ? say("years.more", years.size() - MOST) : "", sheets(years));
    }

    /** Of all seasons: one that no longer fits into the table can still be had back and taken away. */
    private static List<YearsPage.Sheet> sheets(List<Year> years) {
        List<YearsPage.Sheet> sheets = new ArrayList<>();
        years.forEach(year -> year.past().ifPresent(code -> sheets.add(0,
                new YearsPage.Sheet(year.name(), "/years/" + code + ".csv", "/years/" + code + "/withdrawn"))));
        return sheets;
    }

    private String title(List<Year> years) {
        List<Year> counted = years.stream().filter(year -> year.came() > 0).toList();
        if (counted.size() < 2) {
            return say("years.title.alone");
        }
        Year last = counted.get(counted.size() - 1);
        Year before = counted.get(counted.size() - 2);
        return say(last.running() ? "years.title.running" : "years.title", percent(share(last)), last.name(),
                percent(share(before)), before.name());
    }

    private List<YearsPage.Row> rows(List<Year> years) {
        List<YearsPage.Row> rows = new ArrayList<>();
        rows.add(count("years.row.received", years, year -> year.ledger().received()));
        rows.add(count("years.row.deadAsEggs", years, year -> year.ledger().deadAsEggs()));
        rows.add(count("years.row.deadAsSacFry", years, year -> year.ledger().deadAsSacFry()));
        rows.add(count("years.row.deadFeeding", years, year -> year.ledger().deadFeeding()));
        if (years.stream().anyMatch(year -> year.deadUnstaged() > 0)) {
            rows.add(count("years.row.deadUnstaged", years, Year::deadUnstaged));
        }
        rows.add(count("years.row.thinned", years, year -> year.ledger().thinned()));
        rows.add(count("years.row.released", years, year -> year.ledger().released()));
        rows.add(count("years.row.alive", years, year -> year.ledger().alive()));
        rows.add(count("years.row.unexplained", years, year -> year.ledger().unexplained() - year.deadUnstaged()));
        rows.add(row(say("years.row.survival"), years, year -> year.came() == 0 ? ""
                : say("years.survival", percent(share(year)), percent(interval(year).low()),
                        percent(interval(year).high()))));
        Arrays.stream(DeathCause.values()).filter(cause -> years.stream().anyMatch(year -> year.causes().of(cause) > 0))
                .forEach(cause -> rows.add(row(say("years.row.cause", say("count.cause." + cause.code())), years,
                        year -> number(year.causes().of(cause)))));
        return rows;
    }

    private YearsPage.Row count(String key, List<Year> years, ToIntFunction<Year> count) {
        return row(say(key), years, year -> year.came() == 0 ? "" : number(count.applyAsInt(year)));
    }

    private static YearsPage.Row row(String name, List<Year> years, Function<Year, String> cell) {
        return new YearsPage.Row(name, years.stream().map(cell).toList());
    }

    /** What changed from one season to the next, the newest first. */
    private List<String> changes(List<Year> years) {
        List<Year> counted = years.stream().filter(year -> year.came() > 0 && !year.running()).toList();
        List<String> changes = new ArrayList<>();
        years.stream().filter(Year::running).forEach(year -> changes.add(say("years.change.running", year.name())));
        for (int i = counted.size() - 1; i > 0; i--) {
            Year before = counted.get(i - 1);
            Year after = counted.get(i);
            changes.add(survival(before, after));
            stage(before, after).ifPresent(changes::add);
        }
        return changes;
    }

    private String survival(Year before, Year after) {
        boolean isApart = interval(before).high() < interval(after).low()
                || interval(after).high() < interval(before).low();
        String key = !isApart ? "years.change.chance"
                : share(after) > share(before) ? "years.change.more" : "years.change.fewer";
        return say(key, after.name(), percent(share(after)), before.name(), percent(share(before)));
    }

    /** The stage of life whose losses changed most; empty where stages are not told. */
    private Optional<String> stage(Year before, Year after) {
        if (before.deadUnstaged() > 0 || after.deadUnstaged() > 0) {
            return Optional.empty();
        }
        List<String> keys = List.of("years.stage.eggs", "years.stage.sacFry", "years.stage.feeding");
        List<ToIntFunction<Year>> dead = List.of(year -> year.ledger().deadAsEggs(),
                year -> year.ledger().deadAsSacFry(), year -> year.ledger().deadFeeding());
        int most = 0;
        for (int i = 1; i < dead.size(); i++) {
            if (Math.abs(change(dead.get(i), before, after)) > Math.abs(change(dead.get(most), before, after))) {
                most = i;
            }
        }
        double change = change(dead.get(most), before, after);
        return Math.abs(change) < 0.01 ? Optional.empty() : Optional.of(say("years.change.stage", say(keys.get(most)),
                percent(part(dead.get(most), after)), percent(part(dead.get(most), before))));
    }

    private static double change(ToIntFunction<Year> dead, Year before, Year after) {
        return part(dead, after) - part(dead, before);
    }

    private static double part(ToIntFunction<Year> dead, Year year) {
        return (double) dead.applyAsInt(year) / year.came();
    }

    private static double share(Year year) {
        return (double) year.survived() / year.came();
    }

    private static Wilson interval(Year year) {
        return Wilson.of(year.survived(), year.came());
    }

    private static String percent(double share) {
        return Formats.number(PERCENT * share, 0);
    }

    private static String number(int count) {
        return count < 0 ? "\u2212" + -count : Integer.toString(count);
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
