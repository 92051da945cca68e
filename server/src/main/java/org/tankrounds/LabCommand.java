package org.tankrounds;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.tankrounds.forecast.Experience;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.lab.Answer;
import org.tankrounds.lab.Evaluation;
import org.tankrounds.lab.LabSeason;
import org.tankrounds.lab.Learning;
import org.tankrounds.lab.ScoreRow;
import org.tankrounds.lab.World;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Plays seasons in worlds that differ and prints how good the engine's order was in each. */
@Command(name = "lab", hidden = true, mixinStandardHelpOptions = true,
        description = "Scores the forecasts on simulated seasons, world by world.")
final class LabCommand implements Callable<Integer> {

    @Option(names = "--seed", defaultValue = "1", description = "Another seed, another season.")
    private long seed;

    @Option(names = "--tanks", defaultValue = "60", description = "Tanks in each world.")
    private int tanks;

    @Option(names = "--every", defaultValue = "5", description = "Ask on every n-th school morning.")
    private int every;

    @Option(names = "--drawn", defaultValue = "0", description = "So many worlds drawn at random besides.")
    private int drawn;

    @Option(names = "--learn", paramLabel = "FILE", description = "Learn from drawn worlds instead, and write it here.")
    private Path learn;

    @Option(names = "--worlds", defaultValue = "200", description = "Worlds to learn from.")
    private int worlds;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        if (learn != null) {
            Files.write(learn, learnt().lines());
            return 0;
        }
        out.println("world           who    " + ScoreRow.HEADING);
        World.NAMED.forEach(world -> score(world, out));
        for (int number = 1; number <= drawn; number++) {
            score(World.drawn(number), out);
        }
        return 0;
    }

    private Experience learnt() {
        PrintWriter err = spec.commandLine().getErr();
        return Learning.from(worlds, new Forecaster(), world -> err.println("world " + world + " of " + worlds));
    }

    private void score(World world, PrintWriter out) {
        LabSeason season = LabSeason.played(world, seed, tanks, every);
        print(world, "engine", Evaluation.ofEngine(season, new Forecaster()), out);
        print(world, "latest", Evaluation.ofLatestReadings(season), out);
        print(world, "truth", Evaluation.ofTruthNow(season), out);
    }

    private static void print(World world, String who, List<Answer> answers, PrintWriter out) {
        out.println(String.format(Locale.ROOT, "%-15s %-7s%s", world.name(), who, ScoreRow.of(answers)));
        out.flush();
    }
}
