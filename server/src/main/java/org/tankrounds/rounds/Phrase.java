package org.tankrounds.rounds;

/**
 * One reason in words.
 *
 * @param lead starts with the number, its unit and its change
 * @param rest what it looks like, what bounds it, how old it is; may be empty
 */
record Phrase(String lead, String rest) {

    static Phrase of(String lead) {
        return new Phrase(lead, "");
    }

    String whole() {
        return rest.isEmpty() ? lead : lead + " " + rest;
    }
}
