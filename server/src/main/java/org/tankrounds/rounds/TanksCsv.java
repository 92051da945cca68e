package org.tankrounds.rounds;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.water.Range;

/** The tanks of a CSV file, in its order. Only the code is needed. */
final class TanksCsv {

    private static final Range VOLUME_L = new Range(0.1, 1_000_000);
    private static final Range EGGS = new Range(0, 10_000_000);
    private static final Range THERMAL_UNITS_C = new Range(0, 5000);
    private static final Range MG_PER_L = new Range(0, 100_000);

    private TanksCsv() {
    }

    static Map<String, TankFacts> read(Path path) {
        Map<String, TankFacts> tanks = new LinkedHashMap<>();
        CsvTable.read(path, List.of("tank"), row -> {
            TankFacts facts = facts(row);
            if (tanks.put(facts.tank(), facts) != null) {
                throw row.refused("tank", row.shown("tank") + " is there twice; give each tank one line.");
            }
        });
        return tanks;
    }

    private static TankFacts facts(CsvRow row) {
        ZoneId zone = zone(row);
        return TankFacts.of(row.needed("tank", "every line names its tank."))
                .volumeL(row.number("volume_l", VOLUME_L).orElse(null))
                .eggs(row.wholeNumber("eggs", EGGS).orElse(null))
                .eggsReceivedAt(eggsReceivedAt(row, zone))
                .thermalUnitsC(row.number("thermal_units_c", THERMAL_UNITS_C).orElse(null))
                .sourceAlkalinityMgPerL(row.number("source_alkalinity_mg_l", MG_PER_L).orElse(null))
                .chlorideMgPerL(row.number("chloride_mg_l", MG_PER_L).orElse(null))
                .zone(zone)
                .build();
    }

    /** A day alone is taken as its noon at the school, because eggs come with a date on the box. */
    private static Instant eggsReceivedAt(CsvRow row, ZoneId zone) {
        String text = row.text("eggs_received_at");
        if (text.isEmpty()) {
            return null;
        }
        try {
            return LocalDate.parse(text).atTime(LocalTime.NOON).atZone(zone).toInstant();
        } catch (DateTimeParseException e) {
            return row.neededTime("eggs_received_at");
        }
    }

    private static ZoneId zone(CsvRow row) {
        String text = row.text("time_zone");
        try {
            return text.isEmpty() ? ZoneOffset.UTC : ZoneId.of(text);
        } catch (DateTimeException e) {
            throw row.refused("time_zone", row.shown("time_zone")
                    + " is no time zone; allowed is an IANA name such as America/New_York.");
        }
    }
}
