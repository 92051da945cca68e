/** When somebody of the chapter stood before a tank, and what was done there. */
package org.tankrounds.visits;
