package org.tankrounds.migrations;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.util.HexFormat;
import java.util.Map;
import org.jooq.codegen.GenerationTool;
import org.jooq.meta.jaxb.Configuration;
import org.jooq.meta.jaxb.Database;
import org.jooq.meta.jaxb.ForcedType;
import org.jooq.meta.jaxb.Generate;
import org.jooq.meta.jaxb.Generator;
import org.jooq.meta.jaxb.Logging;
import org.jooq.meta.jaxb.Target;

/**
 * Build step: writes the jOOQ classes of the migrated schema. The migrations stay the only description
 * of the schema; a real server reads them. Runs inside the build's own JVM, so it leaves nothing behind.
 */
public final class GenerateSchemaClasses {

    private static final String PACKAGE = "org.tankrounds.db.schema";
    /** Raise it when the settings below change, so that an old result is not kept. */
    private static final String SETTINGS_VERSION = "1";

    private GenerateSchemaClasses() {
    }

    /** Arguments: where the sources go; where PostgreSQL's unpacked programs are kept. */
    public static void main(String[] arguments) throws Exception {
        Path output = Path.of(arguments[0]).toAbsolutePath();
        Path work = Path.of(arguments[1]).toAbsolutePath();
        Path stamp = work.resolve("schema.sha256");
        String wanted = fingerprint();
        if (Files.exists(output) && Files.exists(stamp) && Files.readString(stamp).equals(wanted)) {
            return;
        }
        Files.createDirectories(work);
        Files.deleteIfExists(stamp);
        generate(output, work);
        Files.writeString(stamp, wanted);
    }

    private static void generate(Path output, Path work) throws Exception {
        System.setProperty("slf4j.internal.verbosity", "ERROR");
        System.setProperty("org.jooq.no-logo", "true");
        System.setProperty("org.jooq.no-tips", "true");
        Path data = Files.createTempDirectory(work, "schema-");
        try (EmbeddedPostgres postgres = EmbeddedPostgres.start(data, work.resolve("programs"))) {
            Login owner = postgres.logins().owner();
            Migrations.migrate(owner);
            try (Connection connection = owner.open()) {
                GenerationTool tool = new GenerationTool();
                tool.setConnection(connection);
                tool.run(configuration(output));
            }
        } finally {
            Folders.delete(data);
        }
    }

    private static Configuration configuration(Path output) {
        Database database = new Database()
                .withName("org.jooq.meta.postgres.PostgresDatabase")
                .withInputSchema("public")
                .withOutputSchemaToDefault(true)
                .withExcludes("flyway_schema_history|measurements_.*")
                .withForcedTypes(new ForcedType()
                        .withName("INSTANT")
                        .withIncludeTypes("(?i:timestamptz|timestamp with time zone)"));
        Generate generate = new Generate()
                .withRecords(true)
                .withPojos(false)
                .withDaos(false)
                .withJavadoc(false)
                .withGeneratedAnnotation(false);
        return new Configuration()
                .withLogging(Logging.WARN)
                .withGenerator(new Generator()
                        .withDatabase(database)
                        .withGenerate(generate)
                        .withTarget(new Target()
                                .withPackageName(PACKAGE)
                                .withDirectory(output.toString())
                                .withClean(true)));
    }

    private static String fingerprint() throws IOException, NoSuchAlgorithmException {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        digest.update((SETTINGS_VERSION + org.jooq.Constants.FULL_VERSION).getBytes(StandardCharsets.UTF_8));
        for (Map.Entry<String, byte[]> file : MigrationFiles.read().entrySet()) {
            digest.update(file.getKey().getBytes(StandardCharsets.UTF_8));
            digest.update(file.getValue());
        }
        return HexFormat.of().formatHex(digest.digest());
    }
}
