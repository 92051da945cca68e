/** How good forecasts are against what then happened, beside plain references. */
package org.tankrounds.lab.evaluation;
