package org.tankrounds;

import java.util.Map;
import java.util.stream.Collectors;
import org.tankrounds.config.Config.LogFormat;
import org.tankrounds.rounds.RankCommand;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;
import picocli.CommandLine.Spec;

/** The command line: one subcommand a task. Exit code 0 done, 1 failed, 2 called wrongly. */
@Command(
        name = "tankrounds",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Which classroom trout tank to visit first, what to bring and what to tell the teacher.",
        subcommands = {
            DemoCommand.class, ServeCommand.class, RankCommand.class, TokenCommand.class,
            ExportCommand.class, CombineCommand.class, BackupCommand.class, RestoreCommand.class, CheckCommand.class,
            WarmUpCommand.class, LabCommand.class
        },
        synopsisSubcommandLabel = "COMMAND")
public final class Main implements Runnable {
    @Spec
    private CommandSpec spec;

    public static void main(String[] arguments) {
        Logs.use("json".equals(System.getenv("TANKROUNDS_LOG")) ? LogFormat.JSON : LogFormat.TEXT);
        System.exit(commandLine().execute(arguments));
    }

    static CommandLine commandLine() {
        return new CommandLine(new Main())
                .setParameterExceptionHandler((e, arguments) -> WrongCall.tell(e))
                .setExecutionStrategy(Main::runAndSeeItPrinted)
                .setExecutionExceptionHandler((e, commandLine, parsed) ->
                        CommandFailure.tell(e, commandLine.getErr()));
    }

    /**
     * The console's stream keeps its failures to itself: a full disk behind it must not look like success.
     */
    private static int runAndSeeItPrinted(ParseResult parsed) {
        int exitCode = new RunLast().execute(parsed);
        if (System.out.checkError() && exitCode == 0) {
            parsed.commandSpec().commandLine().getErr()
                    .println("The output could not be written whole; see where it goes.");
            return 1;
        }
        return exitCode;
    }

    @Override
    public void run() {
        String commands = spec.subcommands().entrySet().stream()
                .filter(command -> !command.getValue().getCommandSpec().usageMessage().hidden())
                .map(Map.Entry::getKey)
                .collect(Collectors.joining(", "));
        throw new ParameterException(spec.commandLine(), "Say what to do: " + commands + ".");
    }

    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Main.class.getPackage().getImplementationVersion();
            return new String[] {"Tankrounds " + (version == null ? "from source" : version)};
        }
    }
}
