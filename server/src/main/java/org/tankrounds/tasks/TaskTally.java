package org.tankrounds.tasks;

/**
 * How much a class was asked to do, and did.
 *
 * @param asked tasks of people
 * @param done how many of those were ticked
 * @param acts of the advice that were ticked
 */
public record TaskTally(int asked, int done, int acts) {
    public static final TaskTally NONE = new TaskTally(0, 0, 0);

    public TaskTally plus(TaskTally other) {
        return new TaskTally(asked + other.asked, done + other.done, acts + other.acts);
    }
}
