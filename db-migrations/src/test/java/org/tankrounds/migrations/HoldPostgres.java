package org.tankrounds.migrations;

import java.io.IOException;
import java.nio.file.Path;

/** The other JVM of the tests: starts the server, says its process id, holds it until killed. */
final class HoldPostgres {

    private HoldPostgres() {
    }

    public static void main(String[] arguments) throws IOException {
        EmbeddedPostgres postgres = EmbeddedPostgres.start(Path.of(arguments[0]), Path.of(arguments[1]));
        System.out.println(postgres.pid());
        if (System.in.read() < 0) {
            postgres.close();
        }
    }
}
