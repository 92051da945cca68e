package org.tankrounds;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.tankrounds.config.CommandException;
import org.tankrounds.config.OutFile;
import org.tankrounds.forecast.Experience;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.lab.LabSeason;
import org.tankrounds.lab.Learning;
import org.tankrounds.lab.SeasonCsv;
import org.tankrounds.lab.World;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Simulated seasons: what the engine is judged by, and what it learns from. */
@Command(name = "lab", mixinStandardHelpOptions = true,
        description = "Plays seasons in worlds that differ, and judges or teaches the forecasts by them.",
        subcommands = {EvaluateCommand.class, AdviceTrialCommand.class, LabCommand.Learn.class,
                TrustCommand.class, LabCommand.Season.class},
        synopsisSubcommandLabel = "COMMAND")
final class LabCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(), "Say what to do: evaluate, advice, learn, trust or season.");
    }

    @Command(name = "learn", mixinStandardHelpOptions = true,
            description = "Makes the engine's experience anew from worlds drawn at random. It takes long.")
    static final class Learn implements Callable<Integer> {

        /** With the fifth more, short of the worlds that the trust in acts is learned from. */
        private static final int MOST_WORLDS = 4_000;

        @Option(names = "--out", required = true, paramLabel = "FILE",
                description = "The file to write it to; replaced when it exists.")
        private Path out;

        @Option(names = "--worlds", paramLabel = "N", defaultValue = "2000",
                description = "Worlds to learn from; a fifth as many more tell how often it comes true.")
        private int worlds;

        @Override
        public Integer call() {
            checkFrom(1, "--worlds", worlds, MOST_WORLDS);
            int all = worlds + Math.max(1, worlds / 5);
            OutFile place = new OutFile(out, "rw-r--r--");
            Experience learned = Learning.from(IntStream.rangeClosed(1, worlds).parallel(),
                    IntStream.rangeClosed(worlds + 1, all).parallel(), new Forecaster(),
                    world -> System.err.println("world " + world + " of " + all));
            write(place, learned.lines());
            return 0;
        }
    }

    @Command(name = "season", mixinStandardHelpOptions = true,
            description = "Writes a season of the usual world as the files that rank reads.")
    static final class Season implements Callable<Integer> {

        @Option(names = "--out", required = true, paramLabel = "DIR",
                description = "Folder for tanks.csv, readings.csv and as-of.txt; made where it is missing.")
        private Path out;

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
            checkFrom(1, "--tanks", tanks, 10_000);
            checkFrom(1, "--every", every, EvaluateCommand.MOST_MORNINGS);
            makeFolder(out);
            LabSeason season = LabSeason.played(World.NAMED.get(0), seed, tanks, every);
            Files.write(out.resolve("tanks.csv"), SeasonCsv.tanks(season));
            Files.write(out.resolve("readings.csv"), SeasonCsv.readings(season));
            Files.write(out.resolve("as-of.txt"), SeasonCsv.mornings(season));
            return 0;
        }
    }

    static void write(OutFile place, List<String> lines) {
        String text = String.join("\n", lines) + "\n";
        place.write(file -> {
            file.write(text.getBytes(StandardCharsets.UTF_8));
            return null;
        });
    }

    static void checkFrom(int least, String option, int number, int most) {
        if (number < least || number > most) {
            throw CommandException.wrongCall(
                    option + " is " + number + "; " + least + " to " + most + " are accepted.");
        }
    }

    static void makeFolder(Path out) throws IOException {
        if (Files.exists(out) && !Files.isDirectory(out)) {
            throw CommandException.wrongCall("--out is " + out + ", which is no folder; a folder is accepted.");
        }
        Files.createDirectories(out);
    }
}
