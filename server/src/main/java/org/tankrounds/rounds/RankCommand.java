package org.tankrounds.rounds;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.config.CommandException;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.forecast.Ranking;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Ranks the tanks of two CSV files with the engine of the service, without server or database. */
@Command(name = "rank", mixinStandardHelpOptions = true,
        description = "Ranks tanks from two CSV files; no server, no database. Writes CSV.")
public final class RankCommand implements Callable<Integer> {

    private static final int FIRST_YEAR = 2000;
    private static final int LAST_YEAR = 9999;

    @Option(names = "--tanks", required = true, paramLabel = "FILE",
            description = "CSV with a line per tank; only the column tank is needed.")
    private Path tanks;

    @Option(names = "--readings", required = true, paramLabel = "FILE",
            description = "CSV with a value per line: tank,measured_at,analyte,value,unit,step.")
    private Path readings;

    @Option(names = "--as-of", paramLabel = "TIME",
            description = "From when to look ahead, such as 2027-01-12T14:00:00-05:00. Repeat it for more.")
    private List<String> asOf = new ArrayList<>();

    @Option(names = "--as-of-file", paramLabel = "FILE", description = "More such times, one a line.")
    private Path asOfFile;

    @Spec
    private CommandSpec command;

    private final Forecaster forecaster = new Forecaster();

    @Override
    public Integer call() throws IOException {
        List<Instant> times = times();
        Map<String, TankFacts> facts = TanksCsv.read(tanks);
        Map<String, List<Observation>> observations = ReadingsCsv.read(
                readings, facts.keySet(), slip -> command.commandLine().getErr().println("tankrounds: " + slip));
        // Not the console's own character set: the file has to be the same on every machine.
        Writer out = new BufferedWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8), 1 << 16);
        RankingCsv csv = new RankingCsv(out);
        for (Instant time : times) {
            csv.write(ranked(facts, observations, time));
        }
        csv.flush();
        return 0;
    }

    /** Tanks side by side on all cores; each result depends on its own tank only. */
    private List<Forecast> ranked(
            Map<String, TankFacts> facts, Map<String, List<Observation>> observations, Instant time) {
        return Ranking.order(List.copyOf(facts.values()).parallelStream()
                .map(tank -> forecaster.forecast(
                        tank, observations.getOrDefault(tank.tank(), List.of()), time))
                .toList());
    }

    private List<Instant> times() throws IOException {
        List<Instant> times = new ArrayList<>();
        for (String text : asOf) {
            times.add(time(text, "--as-of"));
        }
        if (asOfFile != null) {
            int line = 0;
            for (String text : linesOf(asOfFile)) {
                line++;
                if (!text.isBlank()) {
                    times.add(time(text, asOfFile.getFileName() + ", line " + line));
                }
            }
        }
        if (times.isEmpty()) {
            throw CommandException.wrongCall(
                    "From when is the ranking to look ahead? Give --as-of TIME or --as-of-file FILE.");
        }
        return times;
    }

    private static List<String> linesOf(Path file) throws IOException {
        if (!Files.isReadable(file) || Files.isDirectory(file)) {
            throw CommandException.wrongCall(
                    "There is no readable file " + file + "; name a file with one time a line.");
        }
        try {
            return Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (MalformedInputException e) {
            throw CommandException.wrongCall(file + " is not UTF-8 text; it needs one time a line.");
        }
    }

    private static Instant time(String text, String where) {
        try {
            OffsetDateTime time = OffsetDateTime.parse(text.replace("\uFEFF", "").strip());
            if (time.getYear() < FIRST_YEAR || time.getYear() > LAST_YEAR) {
                throw CommandException.wrongCall(where + ": '" + text.strip()
                        + "' is out of range; allowed are the years "
                        + FIRST_YEAR + " to " + LAST_YEAR + ".");
            }
            return time.toInstant();
        } catch (DateTimeParseException e) {
            throw CommandException.wrongCall(
                    where + ": '" + text.strip() + "' is no such time; " + CsvRow.timeAllowed());
        }
    }
}
