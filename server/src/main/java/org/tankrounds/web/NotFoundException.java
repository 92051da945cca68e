package org.tankrounds.web;

/** What was asked for does not exist, or belongs to somebody else: the answer is the same. */
public final class NotFoundException extends RuntimeException {
    public NotFoundException(String what) {
        super(what);
    }
}
