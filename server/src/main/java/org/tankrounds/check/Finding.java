package org.tankrounds.check;

/**
 * One line of what "check" prints.
 *
 * @param what is looked at
 * @param works false only where something that is needed does not work
 * @param detail what is configured and what was seen; never a secret
 */
public record Finding(String what, boolean works, String detail) {
    public static Finding fine(String what, String detail) {
        return new Finding(what, true, detail);
    }

    public static Finding wrong(String what, String detail) {
        return new Finding(what, false, detail);
    }
}
