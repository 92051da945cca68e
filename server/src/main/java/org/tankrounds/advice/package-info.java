/** Advice: what to bring and do, as acts with amounts. Pure; knows all the core before it. */
package org.tankrounds.advice;
