/**
 * The mechanistic tank, one step forward in time: nitrogen, filter bacteria, alkalinity, heat. Pure; knows
 * {@code water fish}.
 */
package org.tankrounds.tankmodel;
