package org.tankrounds.rounds;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.belief.Observation;
import org.tankrounds.config.CommandException;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.KnownTemperatures;
import org.tankrounds.water.Range;
import org.tankrounds.water.UnitForm;
import org.tankrounds.water.Units;

/** The readings of a CSV file, one value a line in any order, by tank and in canonical units. */
final class ReadingsCsv {

    private static final double WIDEST_STEP = 1000;
    private static final String ALLOWED_ANALYTES =
            Stream.of(Analyte.values()).map(Analyte::code).collect(Collectors.joining(", "));

    private final Set<String> tanks;
    private final Map<String, List<Observation>> byTank = new HashMap<>();
    private final Map<String, KnownTemperatures> temperatures = new HashMap<>();
    private final List<OxygenPercent> oxygenPercents = new ArrayList<>();
    private final Map<String, UnitForm> unitForms = new HashMap<>();

    /** Oxygen as a share of saturation waits until all temperatures are read. */
    private record OxygenPercent(String tank, Instant at, double percent, double halfStep) {
    }

    private final Consumer<String> tell;

    private ReadingsCsv(Set<String> tanks, Consumer<String> tell) {
        this.tanks = tanks;
        this.tell = tell;
    }

    /** @param tell hears of every value that was too high to be true and is not counted */
    static Map<String, List<Observation>> read(Path path, Set<String> tanks, Consumer<String> tell) {
        ReadingsCsv readings = new ReadingsCsv(tanks, tell);
        CsvTable.read(path, List.of("tank", "measured_at", "analyte", "value", "unit"), readings::take);
        readings.oxygenPercents.forEach(readings::settle);
        return readings.byTank;
    }

    private void take(CsvRow row) {
        String tank = row.needed("tank", "every line names its tank.");
        if (!tanks.contains(tank)) {
            throw row.refused("tank", row.shown("tank")
                    + " is not in the tanks file; allowed are the tanks listed there.");
        }
        Instant at = row.neededTime("measured_at");
        if (isOnlyANote(row)) {
            return;
        }
        Analyte analyte = analyte(row);
        UnitForm form = form(row, analyte);
        double typed = row.neededNumber("value");
        double halfStep = step(row) / 2;
        if (analyte == Analyte.DISSOLVED_OXYGEN && form.unit().equals("%")) {
            double percent = row.neededNumber("value", new Range(0, 400));
            oxygenPercents.add(new OxygenPercent(tank, at, percent, halfStep));
            return;
        }
        double value = Units.toCanonical(analyte, form, typed, Double.NaN);
        if (isSlip(analyte, value)) {
            tell.accept(impossible(row, analyte, form).getMessage() + " It does not count.");
            return;
        }
        requirePossible(row, analyte, form, value);
        add(tank, at, analyte, value, Units.stepToCanonical(analyte, form, halfStep, Double.NaN, 0));
    }

    /** As the service writes a reading down that has no value. */
    private static boolean isOnlyANote(CsvRow row) {
        return !row.text("note").isEmpty()
                && Stream.of("analyte", "value", "unit", "step").allMatch(column -> row.text(column).isEmpty());
    }

    /** 0 where the line has none. */
    private static double step(CsvRow row) {
        if (row.text("step").isEmpty()) {
            return 0;
        }
        double step = row.neededNumber("step");
        if (step < 0 || step > WIDEST_STEP) {
            throw row.refused("step", row.shown("step") + " is out of range; allowed is 0 to 1000, or an empty cell"
                    + " where you do not know it.");
        }
        return step;
    }

    private static Analyte analyte(CsvRow row) {
        String code = row.needed("analyte", "allowed are " + ALLOWED_ANALYTES + ".");
        return Analyte.ofCode(code).orElseThrow(() -> row.refused("analyte",
                row.shown("analyte") + " is not known; allowed are " + ALLOWED_ANALYTES + "."));
    }

    private UnitForm form(CsvRow row, Analyte analyte) {
        UnitForm form = unitForms.computeIfAbsent(row.text("unit"), UnitForm::parse);
        if (!analyte.accepts(form)) {
            String typed = row.text("unit").isEmpty() ? "it is empty" : row.shown("unit") + " is not accepted";
            throw row.refused("unit", typed + " for " + analyte.code() + "; allowed is "
                    + analyte.acceptedSpelling() + ".");
        }
        return form;
    }

    private static void requirePossible(CsvRow row, Analyte analyte, UnitForm form, double value) {
        if (!analyte.possible().holds(value)) {
            throw impossible(row, analyte, form);
        }
        if (analyte.isWholeNumber() && value != Math.rint(value)) {
            throw row.refused("value",
                    row.shown("value") + " is not a whole number; allowed is one such as 3.");
        }
    }

    /**
     * A class forgets a decimal point, or takes Celsius for Fahrenheit, and nobody gives up a whole season's file for
     * it: it is told, not counted.
     */
    private static boolean isSlip(Analyte analyte, double value) {
        if (analyte == Analyte.TEMPERATURE) {
            return !analyte.possible().holds(value);
        }
        return analyte != Analyte.DEATHS && analyte != Analyte.FEED && analyte != Analyte.WATER_CHANGE
                && value > analyte.possible().max();
    }

    private static CommandException impossible(CsvRow row, Analyte analyte, UnitForm form) {
        Range possible = analyte.possible();
        return row.refused("value", row.shown("value") + " cannot be " + analyte.code() + " in "
                + form.spelling() + "; allowed is " + bound(analyte, form, possible.min()) + " to "
                + bound(analyte, form, possible.max()) + ".");
    }

    private static String bound(Analyte analyte, UnitForm form, double canonical) {
        return String.valueOf(Math.round(Units.fromCanonical(analyte, form, canonical, Double.NaN, 0)));
    }

    private void settle(OxygenPercent oxygen) {
        double temperatureC = temperatures.getOrDefault(oxygen.tank, new KnownTemperatures()).at(oxygen.at);
        UnitForm percent = UnitForm.of("%");
        double mgPerL = Units.toCanonical(Analyte.DISSOLVED_OXYGEN, percent, oxygen.percent, temperatureC);
        double halfStep = Units.stepToCanonical(
                Analyte.DISSOLVED_OXYGEN, percent, oxygen.halfStep, temperatureC, 0);
        add(oxygen.tank, oxygen.at, Analyte.DISSOLVED_OXYGEN, mgPerL, halfStep);
    }

    /** As the service has it when nobody has said that an unlikely value is right. */
    private void add(String tank, Instant at, Analyte analyte, double value, double halfStep) {
        boolean below = value == 0 && analyte.isUndetectedAtZero();
        boolean doubtful = !analyte.isLikely(value);
        byTank.computeIfAbsent(tank, t -> new ArrayList<>())
                .add(new Observation(at, analyte, value, halfStep, below, doubtful));
        if (analyte == Analyte.TEMPERATURE) {
            temperatures.computeIfAbsent(tank, t -> new KnownTemperatures()).add(at, value, doubtful);
        }
    }
}
