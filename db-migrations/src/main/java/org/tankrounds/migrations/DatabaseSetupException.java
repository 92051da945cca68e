package org.tankrounds.migrations;

/** An outside database cannot be used as it is. The message tells the operator what to do. */
public final class DatabaseSetupException extends RuntimeException {

    DatabaseSetupException(String message) {
        super(message);
    }

    DatabaseSetupException(String message, Throwable cause) {
        super(message, cause);
    }
}
