package org.tankrounds.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;

/** A season as the two CSV files that {@code rank} reads, line by line. */
public final class SeasonCsv {

    private SeasonCsv() {
    }

    public static List<String> tanks(LabSeason season) {
        List<String> lines = new ArrayList<>();
        lines.add("tank,volume_l,eggs,eggs_received_at,thermal_units_c,source_alkalinity_mg_l,chloride_mg_l,time_zone");
        season.tanks().forEach(tank -> lines.add(line(tank.facts())));
        return lines;
    }

    public static List<String> readings(LabSeason season) {
        List<String> lines = new ArrayList<>();
        lines.add("tank,measured_at,analyte,value,unit,step");
        for (TankSeason tank : season.tanks()) {
            tank.observations().forEach(reading -> lines.add(line(tank.facts().tank(), reading)));
        }
        return lines;
    }

    /** The mornings on which the season is ranked, one a line. */
    public static List<String> mornings(LabSeason season) {
        return season.mornings().stream().map(hour -> LabSeason.at(hour).toString()).toList();
    }

    private static String line(TankFacts facts) {
        return String.join(",", facts.tank(), text(facts.volumeL()),
                facts.eggs().isPresent() ? String.valueOf(facts.eggs().getAsInt()) : "",
                facts.eggsReceivedAt().map(Object::toString).orElse(""), text(facts.thermalUnitsC()),
                text(facts.sourceAlkalinityMgPerL()), text(facts.chlorideMgPerL()), facts.zone().getId());
    }

    private static String text(OptionalDouble number) {
        return number.isPresent() ? String.valueOf(number.getAsDouble()) : "";
    }

    private static String line(String tank, Observation reading) {
        Optional<Double> step = Optional.of(2 * reading.halfStep()).filter(known -> known > 0);
        return String.join(",", tank, reading.at().toString(), reading.analyte().code(),
                String.valueOf(reading.value()), reading.analyte().canonical().spelling(),
                step.map(String::valueOf).orElse(""));
    }
}
