/** Who looks in on a tank while its school has no lessons, and whether they did. */
package org.tankrounds.breaks;
