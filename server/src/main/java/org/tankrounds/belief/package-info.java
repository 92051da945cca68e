/** Belief: observations in, what we hold about a tank's hidden state out. Pure; knows {@code water fish}. */
package org.tankrounds.belief;
