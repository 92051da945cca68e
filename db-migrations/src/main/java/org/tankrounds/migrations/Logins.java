package org.tankrounds.migrations;

/**
 * The three ways into the database.
 *
 * @param owner       owns the tables and migrates them
 * @param application what requests run as: row-level security holds it
 * @param backup      sees the rows of all chapters
 */
public record Logins(Login owner, Login application, Login backup) {
}
