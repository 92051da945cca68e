package org.tankrounds;

import org.tankrounds.config.Config.LogFormat;
import org.tankrounds.rounds.RankCommand;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line: one subcommand a task. Exit code 0 done, 1 failed, 2 called wrongly. */
@Command(
        name = "tankrounds",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        description = "Which classroom trout tank to visit first, what to bring and what to tell the teacher.",
        subcommands = {
            DemoCommand.class, ServeCommand.class, RankCommand.class, TokenCommand.class,
            ExportCommand.class, BackupCommand.class, RestoreCommand.class, CheckCommand.class,
            WarmUpCommand.class, LabCommand.class
        },
        synopsisSubcommandLabel = "COMMAND")
public final class Main {
    public static void main(String[] arguments) {
        Logs.use("json".equals(System.getenv("TANKROUNDS_LOG")) ? LogFormat.JSON : LogFormat.TEXT);
        System.exit(commandLine().execute(arguments));
    }

    static CommandLine commandLine() {
        return new CommandLine(new Main())
                .setParameterExceptionHandler((e, arguments) -> {
                    e.getCommandLine().getErr().println(e.getMessage() + " (--help explains this command.)");
                    return 2;
                })
                .setExecutionExceptionHandler((e, commandLine, parsed) -> CommandFailure.tell(e, commandLine.getErr()));
    }

    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Main.class.getPackage().getImplementationVersion();
            return new String[] {"Tankrounds " + (version == null ? "from source" : version)};
        }
    }
}
