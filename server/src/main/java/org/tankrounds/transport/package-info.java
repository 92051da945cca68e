/** Eggs and fish on the way: tempering, oxygen in the box, ice, the water they go into. Pure; knows {@code water fish}. */
package org.tankrounds.transport;
