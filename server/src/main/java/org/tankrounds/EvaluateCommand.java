package org.tankrounds;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tankrounds.config.CommandException;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.lab.LabSeason;
import org.tankrounds.lab.World;
import org.tankrounds.lab.evaluation.Examination;
import org.tankrounds.lab.evaluation.Examiner;
import org.tankrounds.lab.evaluation.Report;
import org.tankrounds.lab.evaluation.Source;
import org.tankrounds.lab.evaluation.Table;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How good the forecasts are: seasons played, the engine and plain references asked, the answers scored. */
@Command(name = "evaluate", mixinStandardHelpOptions = true,
        description = "Plays seasons, asks the engine and plain references about every tank each school"
                + " morning, and prints how good the answers were against what then happened.")
final class EvaluateCommand implements Callable<Integer> {

    /** Learning begins with world 1. */
    static final int NOT_LEARNED_FROM = 9_001;
    static final int MOST_MORNINGS = 60;
    private static final int MOST_TANKS = 999;
    static final int MOST_DRAWN = 1_000;

    @Option(names = "--seeds", split = ",", paramLabel = "N", defaultValue = "1",
            description = "Seasons to play in each world; another seed, another season.")
    private List<Long> seeds;

    @Option(names = "--tanks", paramLabel = "N", defaultValue = "60",
            description = "Tanks in each season. The scores of chapters of thirty want a multiple of thirty.")
    private int tanks;

    @Option(names = "--every", paramLabel = "N", defaultValue = "1",
            description = "Ask on every Nth school morning only. Lead times are true with 1 alone.")
    private int every;

    @Option(names = "--drawn", paramLabel = "N", defaultValue = "0",
            description = "Besides the named worlds so many drawn at random, of which the engine knows none.")
    private int drawn;

    @Option(names = "--alarm", paramLabel = "CHANCE", defaultValue = "0.5",
            description = "Chance from which an answer counts as an alarm.")
    private double alarm;

    @Option(names = "--without", split = ",", paramLabel = "SOURCE",
            description = "Ask the engine again without this source of information, each by itself; \"all\""
                    + " for every one.")
    private List<String> without = List.of();

    @Option(names = "--out", paramLabel = "DIR",
            description = "Folder to write the tables to as CSV, and the reliability plot as SVG.")
    private Path out;

    @Override
    public Integer call() throws IOException {
        checkNumbers();
        Examiner examiner = new Examiner(new Forecaster(), sources());
        if (out != null) {
            LabCommand.makeFolder(out);
        }
        // Seasons side by side on all cores; each depends on its own world and seed only.
        List<Examination> examined = plays(drawn, seeds).parallelStream()
                .map(play -> examined(play, examiner)).toList();
        tell(new Report(Examination.joined(examined), alarm));
        return 0;
    }

    private void checkNumbers() {
        LabCommand.checkFrom(2, "--tanks", tanks, MOST_TANKS);
        LabCommand.checkFrom(1, "--every", every, MOST_MORNINGS);
        LabCommand.checkFrom(0, "--drawn", drawn, MOST_DRAWN);
        if (!(alarm > 0 && alarm < 1)) {
            throw CommandException.wrongCall(
                    "--alarm is " + alarm + "; a chance between 0 and 1 is accepted.");
        }
    }

    private List<Source> sources() {
        if (without.equals(List.of("all"))) {
            return List.of(Source.values());
        }
        return without.stream().distinct().map(name -> Source.named(name).orElseThrow(() ->
                CommandException.wrongCall("There is no source \"" + name + "\"; there are "
                        + Source.names() + "."))).toList();
    }

    record Play(World world, long seed) {
    }

    static List<Play> plays(int drawn, List<Long> seeds) {
        Stream<World> more = IntStream.range(0, drawn).mapToObj(i -> World.drawn(NOT_LEARNED_FROM + i));
        return Stream.concat(World.NAMED.stream(), more)
                .flatMap(world -> seeds.stream().distinct().map(seed -> new Play(world, seed))).toList();
    }

    private Examination examined(Play play, Examiner examiner) {
        LabSeason season = LabSeason.played(play.world, play.seed, tanks, every);
        Examination examination = examiner.examine(season, every);
        System.err.println("played " + play.world.name() + ", seed " + play.seed);
        return examination;
    }

    private void tell(Report report) throws IOException {
        System.out.println(report.heading());
        for (Table table : report.tables()) {
            System.out.println();
            table.text().forEach(System.out::println);
            if (out != null) {
                Files.write(out.resolve(table.name() + ".csv"), table.csv());
            }
        }
        if (out != null) {
            Files.write(out.resolve("reliability.svg"), report.plot());
        }
    }
}
