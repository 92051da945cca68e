package org.tankrounds;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.tankrounds.forecast.Experience;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.lab.LabSeason;
import org.tankrounds.lab.Learning;
import org.tankrounds.lab.SeasonCsv;
import org.tankrounds.lab.World;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Simulated seasons: what the engine is judged by, and what it learns from. */
@Command(name = "lab", hidden = true, mixinStandardHelpOptions = true,
        description = "Plays seasons in worlds that differ, and judges or teaches the forecasts by them.",
        subcommands = {EvaluateCommand.class, LabCommand.Learn.class, LabCommand.Season.class},
        synopsisSubcommandLabel = "COMMAND")
final class LabCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do: evaluate, learn or season.");
    }

    @Command(name = "learn", mixinStandardHelpOptions = true,
            description = "Makes the engine's experience anew from worlds drawn at random. It takes long.")
    static final class Learn implements Callable<Integer> {

        @Parameters(paramLabel = "FILE", description = "The file to write it to.")
        private Path file;

        @Option(names = "--worlds", paramLabel = "N", defaultValue = "400",
                description = "Worlds to learn from.")
        private int worlds;

        @Override
        public Integer call() throws IOException {
            Experience learned = Learning.from(worlds, new Forecaster(),
                    world -> System.err.println("world " + world + " of " + worlds));
            Files.write(file, learned.lines());
            return 0;
        }
    }

    @Command(name = "season", mixinStandardHelpOptions = true,
            description = "Writes a season of the usual world as the files that rank reads.")
    static final class Season implements Callable<Integer> {

        @Parameters(paramLabel = "DIR", description = "Folder for tanks.csv, readings.csv and as-of.txt.")
        private Path folder;

        @Option(names = "--seed", paramLabel = "N", defaultValue = "1",
                description = "Another seed, another season.")
        private long seed;

        @Option(names = "--tanks", paramLabel = "N", defaultValue = "60", description = "Tanks in it.")
        private int tanks;

        @Option(names = "--every", paramLabel = "N", defaultValue = "5",
                description = "Name every Nth school morning in as-of.txt.")
        private int every;

        @Override
        public Integer call() throws IOException {
            LabSeason season = LabSeason.played(World.NAMED.get(0), seed, tanks, every);
            Files.createDirectories(folder);
            Files.write(folder.resolve("tanks.csv"), SeasonCsv.tanks(season));
            Files.write(folder.resolve("readings.csv"), SeasonCsv.readings(season));
            Files.write(folder.resolve("as-of.txt"), SeasonCsv.mornings(season));
            return 0;
        }
    }
}
