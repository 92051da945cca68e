/** Fish: how eggs develop and which stage a lot has reached. Pure; knows {@code water}. */
package org.tankrounds.fish;
