package org.tankrounds;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.tankrounds.config.CommandException;
import org.tankrounds.config.Config;
import org.tankrounds.config.OutFile;
import org.tankrounds.db.Pools;
import org.tankrounds.db.Transactions;
import org.tankrounds.migrations.Migrations;
import org.tankrounds.people.Chapter;
import org.tankrounds.people.ChapterRepository;
import org.tankrounds.summary.SummaryFormat;
import org.tankrounds.web.Assets;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What leaves the service as a file. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = "Writes a season's summary into a file.",
        subcommands = {ExportCommand.Season.class},
        synopsisSubcommandLabel = "COMMAND")
final class ExportCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to export: season.");
    }

    @Command(name = "season",
            description = "Writes the season summary, also while the service runs.")
    static final class Season implements Callable<Integer> {
        @Option(names = "--chapter", required = true, paramLabel = "CODE",
                description = "The chapter's code.")
        private String chapter;

        @Option(names = "--season", required = true, paramLabel = "CODE",
                description = "The season's code; it stands in the address of the season's page.")
        private String season;

        @Option(names = "--format", required = true, paramLabel = "FORMAT",
                description = "csv, xlsx, pdf, json, or zip for the data package.")
        private String format;

        @Option(names = "--out", required = true, paramLabel = "F",
                description = "The file to write; replaced when it exists.")
        private Path out;

        @Option(names = "--version", paramLabel = "N",
                description = "The frozen version; without it, the rows as they are now.")
        private Integer version;

        @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help message and exit.")
        private boolean help;

        @Mixin
        private DataOption data;

        @Override
        public Integer call() {
            SummaryFormat chosen = SummaryFormat.of(format.toLowerCase(Locale.ROOT)).orElseThrow(() ->
                    CommandException.wrongCall("There is no format \"" + format
                            + "\"; csv, xlsx, pdf, json and zip are."));
            Config config = data.configured();
            OutFile place = new OutFile(out, "rw-r--r--");
            byte[] summary = summary(config, chosen);
            place.write(file -> {
                file.write(summary);
                return null;
            });
            System.out.println("Wrote the season summary to " + out);
            return 0;
        }

        private byte[] summary(Config config, SummaryFormat chosen) {
            try (Database database = Database.join(config)) {
                Migrations.migrate(database.logins().owner());
                try (HikariDataSource pool = Pools.open(database.logins().application(), "export")) {
                    return summary(new Transactions(pool), chosen);
                }
            }
        }

        private byte[] summary(Transactions transactions, SummaryFormat chosen) {
            Clock clock = Clock.systemUTC();
            Chapter known = new ChapterRepository().find(transactions, chapter).orElseThrow(() ->
                    CommandException.failed("There is no chapter with the code \"" + chapter + "\"."));
            OptionalInt asked = version == null ? OptionalInt.empty() : OptionalInt.of(version);
            return transactions.inChapterAtOneMoment(known.chapterId(), tx -> SeasonPages
                            .summaryFiles(new Pages(new Assets(), clock), clock)
                            .find(tx, known.chapterId(), season, chosen, asked, Speech.PLAIN))
                    .map(Supplier::get)
                    .orElseThrow(() -> CommandException.failed("The chapter " + known.name()
                            + " has no season with the code \"" + season + "\""
                            + (version == null ? "." : ", or nothing of it was frozen as version " + version + ".")));
        }
    }
}
