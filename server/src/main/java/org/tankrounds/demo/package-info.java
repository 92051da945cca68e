/**
 * The invented chapters that a visitor can try: a scenario, a small simulator that lives it up to today, and a loader
 * that writes it through the same code as real data.
 */
package org.tankrounds.demo;
