package org.tankrounds.pages;

import java.util.List;

/**
 * A question about one unlikely value, asked once.
 *
 * @param name of the field that carries the answer
 * @param question such as "You typed 54 °C. Is that right?"
 */
public record AskBack(String name, String question, List<Choice> choices) {
    public record Choice(String id, String value, String text) {}
}
