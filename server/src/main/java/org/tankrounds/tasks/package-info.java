/** What a class is asked to do, and what it ticked as done: tasks of people, and acts of the advice. */
package org.tankrounds.tasks;
