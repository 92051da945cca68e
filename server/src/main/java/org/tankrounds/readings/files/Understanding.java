package org.tankrounds.readings.files;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.readings.files.WrittenTime.WrittenDate;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/** How a file is read: each guess, and where it comes from. */
public final class Understanding {
    static final String IN_FILE = "file";
    static final String SCHOOL = "school";
    static final String STANDARD = "standard";
    static final String UTC = "utc";
    public static final List<String> ZONES = List.of(SCHOOL, STANDARD, UTC);

    private final FileTable table;
    private final Choices choices;
    private final List<TimeColumns> times;
    private final ValueColumns columns;
    private final Guess<TimeColumns> time;
    private final Guess<DateOrder> order;
    private final Guess<String> zone;
    private final Map<Analyte, Guess<Integer>> values = new LinkedHashMap<>();
    private final Guess<String> temperatureUnit;
    private final Guess<String> oxygenUnit;
    private final Guess<Character> decimal;

    private Understanding(FileTable table, Choices choices) {
        this.table = table;
        this.choices = choices;
        this.times = TimeColumns.all(table);
        this.columns = new ValueColumns(table, times);
        this.time = Guess.of(choices.text(Choices.TIME).flatMap(this::timeCalled), this::timeFound);
        this.order = Guess.of(choices.order(), this::orderFound);
        this.zone = Guess.of(choices.text(Choices.ZONE).filter(ZONES::contains), this::zoneFound);
        values.put(Analyte.TEMPERATURE, column(Choices.TEMPERATURE, columns.temperature()));
        values.put(Analyte.PH, column(Choices.PH, columns.ph()));
        values.put(Analyte.DISSOLVED_OXYGEN, column(Choices.OXYGEN, columns.oxygen()));
        this.temperatureUnit = unit(Analyte.TEMPERATURE, Choices.TEMPERATURE_UNIT);
        this.oxygenUnit = unit(Analyte.DISSOLVED_OXYGEN, Choices.OXYGEN_UNIT);
        this.decimal = Guess.of(choices.decimal(), this::decimalFound);
    }

    static Understanding of(FileTable table, Choices choices) {
        return new Understanding(table, choices);
    }

    /** What somebody said of it; empty where nothing. */
    public String said(String name) {
        return choices.text(name).orElse("");
    }

    /** What the name of the time's column says of its zone, such as UTC or UTC-05:00; empty where nothing. */
    public Optional<String> zoneInHeader() {
        return headerOffset().map(offset -> offset.equals(ZoneOffset.UTC) ? "UTC" : "UTC" + offset.getId());
    }

    /** Whether every row says itself how its time is meant. */
    public boolean saysZoneInEachRow() {
        return time.value().isPresent() && written().noneMatch(this::isLocal);
    }

    public char delimiter() {
        return table.delimiter();
    }

    public boolean delimiterSaid() {
        return choices.delimiter().isPresent();
    }

    public Guess<TimeColumns> time() {
        return time;
    }

    public Guess<DateOrder> order() {
        return order;
    }

    public Guess<String> zone() {
        return zone;
    }

    public Guess<Character> decimal() {
        return decimal;
    }

    public Guess<String> temperatureUnit() {
        return temperatureUnit;
    }

    public Guess<String> oxygenUnit() {
        return oxygenUnit;
    }

    public Guess<Integer> column(Analyte analyte) {
        return values.get(analyte);
    }

    /** The columns that have a value to be kept. */
    public Map<Analyte, Integer> taken() {
        Map<Analyte, Integer> taken = new LinkedHashMap<>();
        values.forEach((analyte, guess) -> guess.value().filter(column -> column != Choices.NO_COLUMN)
                .ifPresent(column -> taken.put(analyte, column)));
        return taken;
    }

    public UnitForm form(Analyte analyte) {
        return switch (analyte) {
            case TEMPERATURE -> UnitForm.of(temperatureUnit.value().orElse(LoggerUnits.CELSIUS));
            case DISSOLVED_OXYGEN -> UnitForm.of(oxygenUnit.value().orElse(LoggerUnits.MG_PER_L));
            default -> analyte.canonical();
        };
    }

    public String name(int column) {
        return table.name(column);
    }

    public List<TimeColumns> timesToChooseFrom() {
        return times;
    }

    public List<Integer> columnsToChooseFrom() {
        return columns.numeric();
    }

    /** By the names that the form gives them; empty where all is clear. */
    public List<String> questions() {
        Map<String, Guess<?>> guesses = new LinkedHashMap<>();
        guesses.put(Choices.TIME, time);
        guesses.put(Choices.ORDER, order);
        guesses.put(Choices.ZONE, zone);
        guesses.put(Choices.TEMPERATURE, values.get(Analyte.TEMPERATURE));
        guesses.put(Choices.TEMPERATURE_UNIT, temperatureUnit);
        guesses.put(Choices.PH, values.get(Analyte.PH));
        guesses.put(Choices.OXYGEN, values.get(Analyte.DISSOLVED_OXYGEN));
        guesses.put(Choices.OXYGEN_UNIT, oxygenUnit);
        guesses.put(Choices.DECIMAL, decimal);
        return guesses.entrySet().stream().filter(entry -> entry.getValue().isAsked()).map(Map.Entry::getKey).toList();
    }

    /** The zone to read local times in. */
    ZoneId zone(ZoneId school, Instant now) {
        return switch (zone.value().orElse(UTC)) {
            case SCHOOL -> school;
            case STANDARD -> school.getRules().getStandardOffset(now);
            default -> headerOffset().orElse(ZoneOffset.UTC);
        };
    }

    private Optional<TimeColumns> timeCalled(String code) {
        return times.stream().filter(one -> one.code().equals(code)).findFirst();
    }

    private Guess<TimeColumns> timeFound() {
        return times.size() == 1 && times.get(0).sure() ? Guess.found(times.get(0)) : Guess.asked();
    }

    private Guess<DateOrder> orderFound() {
        List<WrittenDate> dates = written().filter(one -> one.epoch().isEmpty())
                .flatMap(one -> one.date().stream()).filter(date -> !date.yearFirst()).toList();
        if (dates.isEmpty()) {
            return Guess.noMatter();
        }
        boolean dayFirst = dates.stream().anyMatch(date -> date.first() > 12);
        boolean monthFirst = dates.stream().anyMatch(date -> date.second() > 12);
        return dayFirst == monthFirst ? Guess.asked()
                : Guess.found(dayFirst ? DateOrder.DAY_MONTH : DateOrder.MONTH_DAY);
    }

    private Guess<String> zoneFound() {
        if (written().anyMatch(this::isLocal)) {
            return headerOffset().isPresent() ? Guess.found(IN_FILE) : Guess.asked();
        }
        return written().findAny().isPresent() ? Guess.found(IN_FILE) : Guess.noMatter();
    }

    private boolean isLocal(WrittenTime time) {
        return time.epoch().isEmpty() && time.offset().isEmpty();
    }

    /** "Time (UTC-05:00)" */
    private Optional<ZoneOffset> headerOffset() {
        return time.value().flatMap(columns -> HeaderOffset.in(table.name(columns.clock())));
    }

    private Guess<Integer> column(String name, Guess<Integer> found) {
        OptionalInt said = choices.column(name);
        boolean there = said.isPresent()
                && (said.getAsInt() == Choices.NO_COLUMN || columns.numeric().contains(said.getAsInt()));
        return there ? Guess.said(said.getAsInt()) : found;
    }

    private Guess<String> unit(Analyte analyte, String name) {
        Integer column = taken().get(analyte);
        if (column == null) {
            return Guess.noMatter();
        }
        Optional<String> said = choices.text(name)
                .filter(unit -> analyte.accepted().contains(UnitForm.of(unit)));
        return Guess.of(said, () -> analyte == Analyte.TEMPERATURE
                ? LoggerUnits.ofTemperature(table, column) : LoggerUnits.ofOxygen(table, column));
    }

    private Guess<Character> decimalFound() {
        var marks = table.rows().stream().flatMap(row -> taken().values().stream().map(row::cell))
                .flatMap(cell -> WrittenNumber.mark(cell).stream()).collect(Collectors.toSet());
        if (marks.size() > 1) {
            return Guess.asked();
        }
        return marks.isEmpty() ? Guess.noMatter() : Guess.found(marks.iterator().next());
    }

    private Stream<WrittenTime> written() {
        return time.value().stream()
                .flatMap(columns -> table.rows().stream().flatMap(row -> columns.read(row).stream()));
    }

    FileTable table() {
        return table;
    }

    List<FileRow> firstRows(int most) {
        return new ArrayList<>(table.rows().subList(0, Math.min(most, table.rows().size())));
    }
}
