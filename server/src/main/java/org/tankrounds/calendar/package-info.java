/**
 * What is ahead of a tank in its season: when eggs hatch, fry feed and fish are long enough, and how long there is
 * room.
 */
package org.tankrounds.calendar;
