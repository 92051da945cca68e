package org.tankrounds.readings;

import io.javalin.http.Context;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Scale;

/**
 * What was typed into the page of a month: of each day a reading, whose fields have the day before their name, and what
 * holds for all of them.
 */
final class MonthForm {
    static final String TIME = "usual_time";
    static final String SCALE = Analyte.TEMPERATURE.code() + LogForm.UNIT;
    private static final String USUAL_TIME = "10:00";
    private static final int LONGEST_ID = 100;

    private final Map<String, String> typed;

    private MonthForm(Map<String, String> typed) {
        this.typed = typed;
    }

    /** An empty one. */
    static MonthForm fresh(String thermometerUnit) {
        return new MonthForm(Map.of(
                LogForm.SUBMISSION, UUID.randomUUID().toString(), TIME, USUAL_TIME, SCALE, thermometerUnit));
    }

    static MonthForm of(Context ctx) {
        Map<String, String> typed = new HashMap<>();
        ctx.formParamMap().keySet().forEach(name -> typed.put(name, LogForm.cut(ctx.formParam(name))));
        String id = typed.getOrDefault(LogForm.SUBMISSION, "");
        if (!IdempotencyKey.isKey(id) || id.length() > LONGEST_ID) {
            typed.put(LogForm.SUBMISSION, UUID.randomUUID().toString());
        }
        return new MonthForm(typed);
    }

    String text(String name) {
        return typed.getOrDefault(name, "");
    }

    /** Of a field of a day's reading. */
    static String name(LocalDate day, String field) {
        return prefix(day) + field;
    }

    private static String prefix(LocalDate day) {
        return "d%02d_".formatted(day.getDayOfMonth());
    }

    /** One for each day of a sheet: sent twice, each stores once. */
    String key(LocalDate day) {
        return text(LogForm.SUBMISSION) + "-" + day;
    }

    /** When a day's reading was taken, as long as nobody says otherwise; empty where that cannot be read. */
    Optional<LocalTime> time() {
        try {
            return Optional.of(LocalTime.parse(text(TIME).strip().replaceFirst("^(\\d):", "0$1:")));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** As if nobody had typed any dead of those days. */
    MonthForm withoutDead(Set<String> days) {
        Map<String, String> left = new HashMap<>(typed);
        days.stream().map(LocalDate::parse).forEach(day -> left.remove(name(day, Analyte.DEATHS.code())));
        return new MonthForm(left);
    }

    List<LocalDate> typedDays(SheetMonth month) {
        return month.days().stream().filter(this::isTyped).toList();
    }

    private boolean isTyped(LocalDate day) {
        return ofDay(day).entrySet().stream()
                .anyMatch(field -> !field.getKey().startsWith(LogForm.SURE) && !field.getValue().isBlank());
    }

    /** The reading of a day, as its own form would have it. */
    LogForm day(LocalDate day) {
        Map<String, String> fields = ofDay(day);
        fields.put(SCALE, text(SCALE));
        fields.put(LogForm.MEASURED_AT, time().map(time -> day + " " + time).orElse(""));
        return inItsScale(new LogForm(fields).settled());
    }

    private Map<String, String> ofDay(LocalDate day) {
        Map<String, String> fields = new TreeMap<>();
        typed.forEach((name, value) -> {
            if (name.startsWith(prefix(day))) {
                fields.put(name.substring(prefix(day).length()), value);
            }
        });
        return fields;
    }

    /** Of a day that was answered to be in the other scale, the box says so from then on. */
    private LogForm inItsScale(LogForm settled) {
        String unit = settled.text(SCALE);
        return unit.equals(text(SCALE)) ? settled : settled.with(SCALE, text(SCALE)).with(Analyte.TEMPERATURE.code(),
                settled.text(Analyte.TEMPERATURE) + " " + Scale.ofUnit(unit).sign());
    }
}
