package org.tankrounds.summary;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.tankrounds.fish.Stage;
import org.tankrounds.readings.ReadingTally;
import org.tankrounds.release.KeptBack;
import org.tankrounds.release.ReleaseDay;
import org.tankrounds.season.Ledger;
import org.tankrounds.stream.StreamSample;
import org.tankrounds.summary.SeasonSummary.Row;
import org.tankrounds.words.Words;

/** The summary as JSON; names in the order in which they are put here. */
final class SummaryJson {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String WILSON = "Wilson, 95 %";

    private SummaryJson() {}

    /** As the rows are now: it hangs on them alone. */
    static byte[] write(SeasonSummary summary) {
        return write(summary, Optional.empty());
    }

    static byte[] write(SeasonSummary summary, Stamp stamp) {
        return write(summary, stamp.version().isPresent() ? Optional.of(stamp) : Optional.empty());
    }

    private static byte[] write(SeasonSummary summary, Optional<Stamp> frozen) {
        SeasonSummary.Heading heading = summary.heading();
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("chapter", object("code", heading.chapterCode(), "name", heading.chapter()));
        all.put("season", object("code", heading.seasonCode(), "name", heading.season(),
                "startsOn", heading.startsOn().toString(), "endsOn", heading.endsOn().toString()));
        frozen.ifPresent(stamp -> all.put("frozen", object("version", stamp.version().orElseThrow(),
                "at", SummaryColumns.text(stamp.at()), "software", stamp.software(),
                "changes", stamp.changes().stream().map(SummaryJson::change).toList())));
        all.put("tanks", summary.tanks().stream().map(SummaryJson::tank).toList());
        all.put("schools", summary.schools().stream().map(SummaryJson::school).toList());
        all.put("total", figures(summary.chapter().figures()));
        all.put("streamChecks", summary.looks().stream().map(SummaryJson::look).toList());
        all.put("notes", SummaryNotes.in(Words.english()));
        try {
            return JSON.writeValueAsBytes(all);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a summary can always be written", e);
        }
    }

    private static Map<String, Object> tank(Row row) {
        Map<String, Object> tank = object("tank", row.tank(), "schoolCode", row.schoolCode(),
                "school", row.school(), "classroom", row.classroom());
        tank.putAll(figures(row.figures()));
        return tank;
    }

    private static Map<String, Object> school(Row row) {
        Map<String, Object> school = object("schoolCode", row.schoolCode(), "school", row.school());
        school.putAll(figures(row.figures()));
        return school;
    }

    private static Map<String, Object> figures(Figures figures) {
        Map<String, Object> all = object("ledger", ledger(figures.ledger()));
        all.put("deliveries", figures.deliveries().stream().map(SummaryJson::delivery).toList());
        all.put("countedAsHatched", figures.hatched());
        all.put("deathsByCause", figures.causes().dead().entrySet().stream().collect(Collectors.toMap(
                cause -> cause.getKey().code(), Map.Entry::getValue, Integer::sum, LinkedHashMap::new)));
        figures.survivalInterval().ifPresent(interval -> all.put("survival", object(
                "share", Rounded.share(figures.survival().orElseThrow()),
                "low", Rounded.share(interval.low()),
                "high", Rounded.share(interval.high()),
                "interval", WILSON,
                "exact", exact(figures.exactSurvivalInterval().orElseThrow()))));
        all.put("readings", readings(figures.readings()));
        all.put("temperature", within(Series.TEMPERATURE, figures));
        all.put("unIonisedAmmonia", within(Series.UN_IONISED_AMMONIA, figures));
        all.put("nitrite", within(Series.NITRITE, figures));
        all.put("survivalByStage", object("egg", stage(figures, Stage.EGG), "sacFry", stage(figures, Stage.SAC_FRY),
                "feeding", stage(figures, Stage.FEEDING)));
        all.put("releases", figures.releases().stream().map(SummaryJson::release).toList());
        all.put("actions", object("tasksAsked", figures.tasks().asked(), "tasksDone", figures.tasks().done(),
                "advisedActsDone", figures.tasks().acts(), "waterChanges", figures.waterChanges(),
                "visits", figures.visits()));
        return all;
    }

    private static Map<String, Object> delivery(Delivery one) {
        return object("day", one.day().toString(), "schoolCode", one.schoolCode(), "tank", one.tank(),
                "eggs", one.eggs(), "countOffBy", one.spread(), "countedHow", one.method().code(),
                "thermalUnitsC", one.thermalUnitsC().isPresent()
                        ? Rounded.to(one.thermalUnitsC().getAsDouble(), 1) : null,
                "supplier", one.supplier().orElse(null), "certificate", one.certificate().orElse(null));
    }

    private static Map<String, Object> change(Change change) {
        return object("tank", text(change.where()), "place", text(change.place()), "column", change.column(),
                "before", text(change.before()), "now", text(change.now()));
    }

    /** Null where no tank's stage tells anything. */
    private static Map<String, Object> stage(Figures figures, Stage stage) {
        StageSurvival survival = figures.stages().of(stage);
        return survival.interval().map(interval -> object("began", survival.began(), "survived", survival.survived(),
                "share", Rounded.share(survival.share().orElseThrow()), "low", Rounded.share(interval.low()),
                "high", Rounded.share(interval.high()), "interval", WILSON,
                "exact", exact(survival.exactInterval().orElseThrow()), "tanks", survival.tanks(),
                "tanksWithHatchCounted", survival.counted(), "countsOffBy", survival.spread(),
                "countsOffByMoreThanChance", survival.isOffByMoreThanChance())).orElse(null);
    }

    private static Map<String, Object> exact(ClopperPearson interval) {
        return object("low", Rounded.share(interval.low()), "high", Rounded.share(interval.high()),
                "interval", "Clopper-Pearson, 95 %");
    }

    private static Map<String, Object> release(Release release) {
        Map<String, Object> all = object("site", release.place(), "approval", text(release.approval()),
                "day", release.day().toString(), "schoolCode", release.schoolCode(), "tank", release.tank(),
                "fish", release.fish(), "countOffBy", release.spread(), "countedHow", release.method().code(),
                "tankTemperatureC",
                release.tankC().isPresent() ? Rounded.value(Series.TEMPERATURE, release.tankC().getAsDouble()) : null);
        all.put("atTheWater", release.seen().map(SummaryJson::seen).orElse(null));
        return all;
    }

    private static Map<String, Object> seen(ReleaseDay day) {
        Map<String, Object> kept = new LinkedHashMap<>();
        for (KeptBack why : KeptBack.values()) {
            kept.put(why.code(), day.kept().getOrDefault(why, 0));
        }
        return object("boxTemperatureC", temperature(day.boxC()), "streamTemperatureC", temperature(day.streamC()),
                "temperedMinutes", day.temperedMinutes().isPresent() ? day.temperedMinutes().getAsInt() : null,
                "lengthsMm", day.lengthsMm(), "keptBack", kept);
    }

    private static Map<String, Object> look(StreamLook look) {
        Map<String, Object> all = object("check", look.check().checkId(), "site", look.site().name(),
                "stream", look.site().details().water(), "lookedAt", SummaryColumns.text(look.check().at()),
                "day", look.day().toString(), "temperatureC", temperature(look.check().temperatureC()),
                "ph", rounded(look.check().ph()), "oxygenMgPerL", rounded(look.check().oxygenMgPerL()),
                "found", look.sample().counts().entrySet().stream().collect(Collectors.toMap(
                        found -> found.getKey().code(), Map.Entry::getValue, Integer::sum, LinkedHashMap::new)));
        StreamSample sample = look.sample();
        all.put("familyBioticIndex", sample.index().map(index -> object("value", Rounded.to(index.value(), 2),
                "animals", index.animals(), "class", SummaryColumns.code(index.water()))).orElse(null));
        boolean looked = sample.animals() > 0;
        all.put("eptFamilies", looked ? sample.eptFamilies() : null);
        all.put("kindCount", looked ? object("points", sample.kindCount().points(),
                "class", SummaryColumns.code(sample.kindCount().water())) : null);
        all.put("groupScore", looked ? object("value", Rounded.to(sample.groupScore().value(), 1),
                "class", SummaryColumns.code(sample.groupScore().water())) : null);
        return all;
    }

    private static Object temperature(OptionalDouble celsius) {
        return celsius.isPresent() ? Rounded.value(Series.TEMPERATURE, celsius.getAsDouble()) : null;
    }

    private static Object rounded(OptionalDouble value) {
        return value.isPresent() ? Rounded.to(value.getAsDouble(), 2) : null;
    }

    private static Map<String, Object> spell(Series series, Spell spell) {
        return object("from", spell.from().toString(), "until", spell.until().toString(),
                "daysRead", spell.days(), "worst", Rounded.value(series, spell.worst().value()), "unit", series.unit(),
                "tank", spell.worst().tank());
    }

    private static String text(String text) {
        return text.isEmpty() ? null : text;
    }

    private static Map<String, Object> ledger(Ledger ledger) {
        return object("eggsReceived", ledger.received(), "deadAsEggs", ledger.deadAsEggs(),
                "deadAsSacFry", ledger.deadAsSacFry(), "deadFeeding", ledger.deadFeeding(), "dead", ledger.dead(),
                "movedIn", ledger.movedIn(), "movedOut", ledger.movedOut(), "takenOutEarly", ledger.thinned(),
                "released", ledger.released(), "aliveByCount", ledger.alive(), "unexplained", ledger.unexplained());
    }

    private static Map<String, Object> readings(ReadingTally tally) {
        return object("posted", tally.posted(), "corrected", tally.corrected(),
                "first", time(tally.first()), "last", time(tally.last()));
    }

    private static Map<String, Object> within(Series series, Figures figures) {
        WithinLimit within = figures.of(series);
        OptionalDouble share = within.share();
        Map<String, Object> all = object("days", within.days(), "daysWithinLimit", within.within(),
                "daysUndecided", within.undecided(),
                "shareWithinLimit", share.isPresent() ? Rounded.share(share.getAsDouble()) : null,
                "values", within.values(), "valuesNotDetected", within.notDetected(),
                "valuesDoubtfulLeftOut", within.doubtful(), "worst", null,
                "longestSpell", within.spell().map(spell -> spell(series, spell)).orElse(null));
        within.worst().ifPresent(worst -> all.put("worst", object("value", Rounded.value(series, worst.value()),
                "unit", series.unit(), "at", SummaryColumns.text(worst.at()), "day", worst.day().toString(),
                "tank", worst.tank())));
        return all;
    }

    private static String time(Optional<Instant> at) {
        return at.map(SummaryColumns::text).orElse(null);
    }

    private static Map<String, Object> object(Object... namesAndValues) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            object.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return object;
    }
}
