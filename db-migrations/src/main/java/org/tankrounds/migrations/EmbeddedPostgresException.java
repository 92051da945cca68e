package org.tankrounds.migrations;

/** The PostgreSQL that comes along could not do what was asked. The message is meant for the operator. */
public final class EmbeddedPostgresException extends RuntimeException {

    EmbeddedPostgresException(String message) {
        super(message);
    }

    EmbeddedPostgresException(String message, Throwable cause) {
        super(message, cause);
    }
}
