package org.tankrounds.testing;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;

/** One run of the command line in this process: its exit code and what it printed. */
public record CommandRun(int exitCode, String out, String err) {

    /** The console's own streams are put back afterwards. */
    public static CommandRun of(CommandLine commandLine, List<String> arguments) {
        PrintStream console = System.out;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        try {
            PrintWriter complaints = new PrintWriter(err, true, StandardCharsets.UTF_8);
            int exitCode = commandLine.setErr(complaints).execute(arguments.toArray(String[]::new));
            complaints.flush();
            return new CommandRun(exitCode, out.toString(StandardCharsets.UTF_8),
                    err.toString(StandardCharsets.UTF_8));
        } finally {
            System.setOut(console);
        }
    }

    public List<String> lines() {
        return out.lines().toList();
    }
}
