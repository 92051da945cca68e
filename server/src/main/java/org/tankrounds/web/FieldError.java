package org.tankrounds.web;

/**
 * One thing that is wrong with what was sent.
 *
 * @param field JSON pointer into a body, a slash and the name of a parameter or header, or the name of a form's field
 * @param message a sentence that says what is allowed
 */
public record FieldError(String field, String message) {}
