package org.tankrounds;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.tankrounds.forecast.Experience;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.lab.Answer;
import org.tankrounds.lab.Evaluation;
import org.tankrounds.lab.LabSeason;
import org.tankrounds.lab.Learning;
import org.tankrounds.lab.ScoreRow;
import org.tankrounds.lab.SeasonCsv;
import org.tankrounds.lab.World;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Plays seasons in worlds that differ and prints how good the engine's order was in each. */
@Command(name = "lab", hidden = true, mixinStandardHelpOptions = true,
        description = "Scores the forecasts on simulated seasons, world by world.")
final class LabCommand implements Callable<Integer> {

    /** Learning begins with world 1. */
    private static final int NOT_LEARNED_FROM = 9_001;

    @Option(names = "--seed", defaultValue = "1", description = "Another seed, another season.")
    private long seed;

    @Option(names = "--tanks", defaultValue = "60", description = "Tanks in each world.")
    private int tanks;

    @Option(names = "--every", defaultValue = "5", description = "Ask on every n-th school morning.")
    private int every;

    @Option(names = "--drawn", defaultValue = "0", description = "So many worlds drawn at random besides.")
    private int drawn;

    @Option(names = "--learn", paramLabel = "FILE",
            description = "Learn from drawn worlds instead, and write it here.")
    private Path learn;

    @Option(names = "--worlds", defaultValue = "1000", description = "Worlds to learn from.")
    private int worlds;

    @Option(names = "--write", paramLabel = "DIR",
            description = "Write a season of the usual world as the files that rank reads instead.")
    private Path write;

    @Override
    public Integer call() throws IOException {
        if (learn != null) {
            Files.write(learn, learned().lines());
        } else if (write != null) {
            writeFiles(LabSeason.played(World.NAMED.get(0), seed, tanks, every));
        } else {
            System.out.println("world           who    " + ScoreRow.HEADING);
            World.NAMED.forEach(this::score);
            IntStream.range(0, drawn).mapToObj(i -> World.drawn(NOT_LEARNED_FROM + i)).forEach(this::score);
        }
        return 0;
    }

    private Experience learned() {
        return Learning.from(IntStream.rangeClosed(1, worlds).parallel(), new Forecaster(),
                world -> System.err.println("world " + world + " of " + worlds));
    }

    private void writeFiles(LabSeason season) throws IOException {
        Files.createDirectories(write);
        Files.write(write.resolve("tanks.csv"), SeasonCsv.tanks(season));
        Files.write(write.resolve("readings.csv"), SeasonCsv.readings(season));
        Files.write(write.resolve("as-of.txt"), SeasonCsv.mornings(season));
    }

    private void score(World world) {
        LabSeason season = LabSeason.played(world, seed, tanks, every);
        print(world, "engine", Evaluation.ofEngine(season, new Forecaster()));
        print(world, "latest", Evaluation.ofLatestReadings(season));
        print(world, "truth", Evaluation.ofTruthNow(season));
    }

    private static void print(World world, String who, List<Answer> answers) {
        System.out.println(String.format(Locale.ROOT, "%-15s %-7s%s", world.name(), who, ScoreRow.of(answers)));
    }
}
