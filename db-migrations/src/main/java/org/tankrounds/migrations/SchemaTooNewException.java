package org.tankrounds.migrations;

/** The database was migrated by a later version of the service. The message is meant for the operator. */
public final class SchemaTooNewException extends RuntimeException {

    SchemaTooNewException(String found, int known) {
        super("The database was made by a newer Tankrounds (schema version " + found + "; this one knows "
                + "up to " + known + "). Run that version or a later one; nothing was changed.");
    }
}
