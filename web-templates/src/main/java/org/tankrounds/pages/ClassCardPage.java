package org.tankrounds.pages;

/**
 * A tank's class card, for those in charge of the tank.
 *
 * @param place school and room
 * @param card number of the card in use; empty where there is none
 * @param made when and by whom; empty where there is none
 * @param lastUsed when, or "never"
 * @param revoked when the last one was; empty while one is in use, and where there was none
 * @param overtaken whether a card was asked for on a form that is out of date
 */
public record ClassCardPage(
        String title, String heading, String place, String tankTo, String card, String made, String lastUsed,
        String revoked, boolean overtaken) implements Page {

    public boolean inUse() {
        return !card.isEmpty();
    }

    public String cardTo() {
        return tankTo + "/card";
    }
}
