package org.tankrounds.web;

/**
 * One thing that is wrong with what was sent.
 *
 * @param field JSON pointer of a body, or the name of a form's field
 * @param message a sentence that says what is allowed
 */
public record FieldError(String field, String message) {}
