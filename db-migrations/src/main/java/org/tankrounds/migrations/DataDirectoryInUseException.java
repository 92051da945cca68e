package org.tankrounds.migrations;

import java.nio.file.Path;

/** Another process of the service holds the data directory. The message is meant for the operator. */
public final class DataDirectoryInUseException extends RuntimeException {

    DataDirectoryInUseException(Path directory, String holder) {
        super("The data directory " + directory + " is in use by another Tankrounds" + holder
                + ". Stop that one first, or choose another directory with --data.");
    }
}
