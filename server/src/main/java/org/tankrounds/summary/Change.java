package org.tankrounds.summary;

/**
 * A figure that is otherwise than it was when the summary was frozen.
 *
 * @param where tank's code; empty for what is the chapter's
 * @param school and room of the tank, or the site
 * @param column of the file for scripts in which it stands
 * @param before and now, as they are written there; empty where there was, or is, none
 */
record Change(String where, String place, String column, String before, String now) {}
