package org.tankrounds;

import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.tankrounds.config.CommandException;
import org.tankrounds.config.Config;
import org.tankrounds.people.OperatorTokens;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Bearer tokens for probes and scripts, from the machine that runs the service. */
@Command(
        name = "token",
        mixinStandardHelpOptions = true,
        description = "Issues, lists and revokes bearer tokens for probes and scripts.",
        subcommands = {TokenCommand.Issue.class, TokenCommand.ListAll.class, TokenCommand.Revoke.class},
        synopsisSubcommandLabel = "COMMAND")
final class TokenCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do: issue, list or revoke.");
    }

    /** Where the service keeps its data. */
    private abstract static class OnDatabase implements Callable<Integer> {
        @Mixin
        private DataOption data;

        abstract String answer(OperatorTokens tokens);

        @Override
        public final Integer call() {
            System.out.print(withTokens(data.configured(), this::answer));
            return 0;
        }

        private static String withTokens(Config config, Function<OperatorTokens, String> work) {
            try (Database database = Database.join(config)) {
                return OperatorTokens.on(database.logins(), Clock.systemUTC(), work);
            }
        }
    }

    @Command(name = "issue", mixinStandardHelpOptions = true,
            description = "Prints a new token; it is shown only this once.")
    static final class Issue extends OnDatabase {
        @Option(names = "--tank", paramLabel = "CODE", description = "The one tank that it opens.")
        private String tank;

        @Option(names = "--chapter", paramLabel = "CODE",
                description = "Without --tank: every tank of this chapter, and its rounds. With --tank: "
                        + "where the tank is.")
        private String chapter;

        @Option(names = "--label", defaultValue = "issued by the operator", description = "What it is for.")
        private String label;

        @Override
        String answer(OperatorTokens tokens) {
            if (tank == null && chapter == null) {
                throw CommandException.wrongCall("Say what the token opens: --tank CODE or --chapter CODE.");
            }
            return (tank == null
                    ? tokens.issueForChapter(chapter, label) : tokens.issueForTank(tank, chapter, label))
                    + "\n";
        }
    }

    @Command(name = "list", mixinStandardHelpOptions = true, description = "Prints every token, without its secret.")
    static final class ListAll extends OnDatabase {
        @Override
        String answer(OperatorTokens tokens) {
            List<String> lines = tokens.list();
            return String.join("\n", lines) + "\n";
        }
    }

    @Command(name = "revoke", mixinStandardHelpOptions = true,
            description = "Ends a token at once: from then on it opens nothing.")
    static final class Revoke extends OnDatabase {
        @Parameters(paramLabel = "ID", description = "Its number in the list.")
        private int tokenId;

        @Override
        String answer(OperatorTokens tokens) {
            tokens.revoke(tokenId);
            return "Token " + tokenId + " opens nothing any more.\n";
        }
    }
}
