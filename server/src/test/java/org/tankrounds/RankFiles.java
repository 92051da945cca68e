package org.tankrounds;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tankrounds.testing.CommandRun;

/** The two files of a ranking in a folder of their own, and the command run on them. */
record RankFiles(Path folder) {
    static final String AS_OF = "2027-03-10T20:00:00Z";
    static final String TANKS_HEADER = "tank,school,volume_l,eggs,eggs_received_at,thermal_units_c,"
            + "source_alkalinity_mg_l,chloride_mg_l,time_zone\n";
    static final String READINGS_HEADER = "tank,measured_at,analyte,value,unit,step\n";
    /** Two tanks and two readings, each line good. */
    static final String TANKS = TANKS_HEADER
            + "T1,Hillthimble,190,100,2026-11-05,240,80,12,America/New_York\nT2,,,,,,,,\n";
    static final String READINGS = READINGS_HEADER
            + "T1,2027-03-10T14:05:00-05:00,temperature,52.3,[degF],1\n"
            + "T1,2027-03-10T14:05:00-05:00,total_ammonia,0.5,mg/L as NH3,0.25\n";

    RankFiles tanks(String text) throws IOException {
        return written("tanks.csv", text);
    }

    RankFiles readings(String text) throws IOException {
        return written("readings.csv", text);
    }

    RankFiles written(String name, String text) throws IOException {
        Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    CommandRun rank() {
        return rank("--as-of", AS_OF);
    }

    /** @param more options beside the two files */
    CommandRun rank(String... more) {
        List<String> arguments = new ArrayList<>(List.of("rank",
                "--tanks", folder.resolve("tanks.csv").toString(),
                "--readings", folder.resolve("readings.csv").toString()));
        arguments.addAll(List.of(more));
        return CommandRun.of(Main.commandLine(), arguments);
    }
}
