package org.tankrounds;

import java.io.PrintWriter;
import org.slf4j.LoggerFactory;
import org.tankrounds.config.ConfigException;
import org.tankrounds.config.CommandException;

/** From an exception to one clear sentence and an exit code. */
final class CommandFailure {
    private CommandFailure() {}

    static int tell(Exception e, PrintWriter err) {
        if (e instanceof CommandException expected) {
            err.println(expected.getMessage());
            return expected.exitCode();
        }
        if (e instanceof ConfigException config) {
            config.faults().forEach(err::println);
            return 2;
        }
        LoggerFactory.getLogger(CommandFailure.class).debug("command failed", e);
        err.println("It failed: " + (e.getMessage() == null ? e.toString() : e.getMessage()));
        return 1;
    }
}
