/** Eggs and fish on the way: tempering, oxygen in the box, ice, where they go. Pure; knows {@code water fish}. */
package org.tankrounds.transport;
