/** The lab: seasons simulated by seed in worlds that differ, and scores of an order. Pure. */
package org.tankrounds.lab;
