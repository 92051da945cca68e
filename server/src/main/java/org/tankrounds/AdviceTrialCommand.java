package org.tankrounds;

import java.util.List;
import java.util.concurrent.Callable;
import org.tankrounds.advice.Advisor;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.lab.AdviceReport;
import org.tankrounds.lab.AdviceTrial;
import org.tankrounds.lab.Followed;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What following the advice does to simulated tanks, beside what it was said to do. */
@Command(name = "advice", mixinStandardHelpOptions = true,
        description = "Plays seasons, follows the advice on school mornings, each act alone"
                + " and all together, and prints what was promised and what came of it in 72 hours.")
final class AdviceTrialCommand implements Callable<Integer> {

    private static final int MOST_TANKS = 999;

    @Option(names = "--seeds", split = ",", paramLabel = "N", defaultValue = "1",
            description = "Seasons to play in each world; another seed, another season.")
    private List<Long> seeds;

    @Option(names = "--tanks", paramLabel = "N", defaultValue = "24", description = "Tanks in each season.")
    private int tanks;

    @Option(names = "--every", paramLabel = "N", defaultValue = "10",
            description = "Follow the advice of every Nth school morning.")
    private int every;

    @Option(names = "--drawn", paramLabel = "N", defaultValue = "0",
            description = "Besides the named worlds so many drawn at random, of which the engine knows none.")
    private int drawn;

    @Option(names = "--mornings", description = "List each morning on which what was done made it worse.")
    private boolean mornings;

    @Override
    public Integer call() {
        LabCommand.checkFrom(1, "--tanks", tanks, MOST_TANKS);
        LabCommand.checkFrom(1, "--every", every, EvaluateCommand.MOST_MORNINGS);
        LabCommand.checkFrom(0, "--drawn", drawn, EvaluateCommand.MOST_DRAWN);
        Forecaster forecaster = new Forecaster();
        Advisor advisor = new Advisor();
        List<Followed> all = EvaluateCommand.plays(drawn, seeds).parallelStream().flatMap(play ->
                AdviceTrial.of(play.world(), play.seed(), tanks, every, forecaster, advisor).stream()).toList();
        AdviceReport.of(all, drawn == 0).forEach(System.out::println);
        if (mornings) {
            AdviceReport.worse(all).forEach(System.out::println);
        }
        return 0;
    }
}
