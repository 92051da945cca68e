package org.tankrounds.readings.files;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Which columns hold what, by their names and by what stands in them. */
final class ValueColumns {
    private static final Pattern TEMPERATURE = Pattern.compile("temp|[°º]\\s?[cf]|celsius|fahrenheit|thermo");
    private static final Pattern WATER = Pattern.compile("water|tank|aquarium|agua|probe|external|\\bext\\b");
    private static final Pattern PH = Pattern.compile("(^|[^a-z])ph([^a-z]|$)");
    private static final Pattern OXYGEN = Pattern.compile("oxygen|ox[ií]geno|(^|[^a-z])(do|o2|od)([^a-z]|$)");
    private static final Pattern NOT_IN_WATER =
            Pattern.compile("air|room|ambient|board|internal|humid|dew|battery|aire");
    private static final double MOST_OF = 0.5;

    private final FileTable table;
    private final List<TimeColumns> times;

    /** @param times columns that hold times, which are no values */
    ValueColumns(FileTable table, List<TimeColumns> times) {
        this.table = table;
        this.times = times;
    }

    /** The temperature of the water; asked where several could be it, or where no name says it. */
    Guess<Integer> temperature() {
        List<Integer> named = named(TEMPERATURE);
        List<Integer> inWater = named.stream().filter(column -> WATER.matcher(name(column)).find()).toList();
        if (named.size() == 1 && !NOT_IN_WATER.matcher(name(named.get(0))).find()) {
            return Guess.found(named.get(0));
        }
        if (inWater.size() == 1) {
            return Guess.found(inWater.get(0));
        }
        boolean othersSayAll = named.isEmpty() && (ph().value().isPresent() || oxygen().value().isPresent());
        return othersSayAll || numeric().isEmpty() ? Guess.noMatter() : Guess.asked();
    }

    Guess<Integer> ph() {
        return only(PH);
    }

    Guess<Integer> oxygen() {
        return only(OXYGEN);
    }

    /** What a value can be looked for in. */
    List<Integer> numeric() {
        return IntStream.range(0, table.width()).filter(column -> !isTime(column) && holdsNumbers(column)
                && !counts(column)).boxed().toList();
    }

    private Guess<Integer> only(Pattern pattern) {
        List<Integer> named = named(pattern).stream()
                .filter(column -> !TEMPERATURE.matcher(name(column)).find()).toList();
        return named.size() == 1 ? Guess.found(named.get(0)) : named.isEmpty() ? Guess.noMatter() : Guess.asked();
    }

    private List<Integer> named(Pattern pattern) {
        return numeric().stream().filter(column -> pattern.matcher(name(column)).find()).toList();
    }

    private boolean isTime(int column) {
        return times.stream().anyMatch(time -> time.has(column));
    }

    private boolean holdsNumbers(int column) {
        long cells = table.sample().stream().filter(row -> !row.cell(column).isBlank()).count();
        long numbers = table.sample().stream().filter(row -> WrittenNumber.isOne(row.cell(column))).count();
        return numbers > 0 && numbers >= MOST_OF * cells
                || cells > 0 && TEMPERATURE.matcher(name(column)).find();
    }

    /** 1, 2, 3 …: the rows' own number. */
    private boolean counts(int column) {
        List<FileRow> rows = table.sample();
        OptionalInt first = whole(rows.get(0).cell(column));
        return rows.size() > 2 && first.isPresent() && IntStream.range(0, rows.size()).allMatch(i ->
                whole(rows.get(i).cell(column)).equals(OptionalInt.of(first.getAsInt() + i)));
    }

    private static OptionalInt whole(String cell) {
        String text = cell.strip();
        return text.matches("\\d{1,8}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
    }

    private String name(int column) {
        return table.name(column).toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
