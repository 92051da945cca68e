/** Where and how fish are released: sites and what an agency allowed there, plans, the day itself, the stream. */
package org.tankrounds.release;
