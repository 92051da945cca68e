package org.tankrounds;

import java.util.List;
import java.util.concurrent.Callable;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.lab.AdviceTrial;
import org.tankrounds.lab.World;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What following the advice does to simulated tanks, beside what it was said to do. */
@Command(name = "advice", mixinStandardHelpOptions = true,
        description = "Plays seasons in the named worlds, follows the advice on school mornings, each act alone"
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

    @Override
    public Integer call() {
        LabCommand.checkFrom(1, "--tanks", tanks, MOST_TANKS);
        LabCommand.checkFrom(1, "--every", every, EvaluateCommand.MOST_MORNINGS);
        AdviceTrial.report(World.NAMED, seeds, tanks, every, new Forecaster()).forEach(System.out::println);
        return 0;
    }
}
