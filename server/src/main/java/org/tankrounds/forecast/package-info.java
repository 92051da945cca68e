/** Forecast: 72 hours from a belief; limits, chance, exposure, driver, reasons, ranking. Pure. */
package org.tankrounds.forecast;
