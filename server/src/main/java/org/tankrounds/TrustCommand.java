package org.tankrounds;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.tankrounds.advice.Trusts;
import org.tankrounds.config.OutFile;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.lab.TrustLearning;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How far the effects of the advice are to be trusted, learned by following it. */
@Command(name = "trust", mixinStandardHelpOptions = true,
        description = "Follows the advice in worlds drawn at random, and writes how much of what is expected"
                + " of each sort of act came true. Belongs after every new experience; takes some minutes.")
final class TrustCommand implements Callable<Integer> {

    /** Experience is learned from those before. */
    private static final int FIRST_WORLD = 5_001;
    private static final int MOST_WORLDS = EvaluateCommand.NOT_LEARNED_FROM - FIRST_WORLD;

    @Option(names = "--out", required = true, paramLabel = "FILE",
            description = "The file to write it to; replaced when it exists.")
    private Path out;

    @Option(names = "--worlds", paramLabel = "N", defaultValue = "120", description = "Worlds to learn from.")
    private int worlds;

    @Override
    public Integer call() {
        LabCommand.checkFrom(1, "--worlds", worlds, MOST_WORLDS);
        OutFile place = new OutFile(out, "rw-r--r--");
        int last = FIRST_WORLD + worlds - 1;
        Trusts learned = TrustLearning.from(IntStream.rangeClosed(FIRST_WORLD, last).parallel(),
                new Forecaster(), world -> System.err.println("world " + world + " of " + last));
        LabCommand.write(place, learned.lines());
        return 0;
    }
}
