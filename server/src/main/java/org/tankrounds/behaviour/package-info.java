/**
 * How the fish behave, as a class sees it. It stands beside the forecast and does not enter it: how often a class sees
 * a sign of which trouble, and how often without any, nobody has published, and {@code rank} could not be told.
 */
package org.tankrounds.behaviour;
