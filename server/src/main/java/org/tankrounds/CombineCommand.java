package org.tankrounds;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.tankrounds.config.CommandException;
import org.tankrounds.config.OutFile;
import org.tankrounds.summary.SummarySum;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Adds up several chapters' summaries for whoever gets them all, such as a state's agency; no server, no database. */
@Command(
        name = "combine",
        mixinStandardHelpOptions = true,
        description = "Adds up the season summaries of several chapters, as CSV, in one file;"
                + " refuses to count an egg twice. No server, no database.")
final class CombineCommand implements Callable<Integer> {
    @Option(names = "--in", required = true, paramLabel = "F", arity = "1..*",
            description = "The summaries, as \"export season --format csv\" or the summary's page wrote them.")
    private List<Path> in;

    @Option(names = "--out", required = true, paramLabel = "F",
            description = "The file to write; replaced when it exists.")
    private Path out;

    @Override
    public Integer call() {
        OutFile place = new OutFile(out, "rw-r--r--");
        SummarySum sum = new SummarySum();
        in.forEach(file -> sum.add(file.toString(), read(file)));
        place.write(file -> {
            file.write(sum.write());
            return null;
        });
        System.out.println("Wrote " + out + ": " + sum.words() + ".");
        return 0;
    }

    private static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw CommandException.wrongCall("--in is " + file + "; a file that can be read is accepted.");
        }
    }
}
