/** What a class sees and does beside its readings: its tank in words for children, its fish, what it is asked to do. */
package org.tankrounds.classroom;
