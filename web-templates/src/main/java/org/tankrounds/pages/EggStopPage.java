package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/**
 * What is done with the eggs at one tank: tempering, and the receipt.
 *
 * @param heading the answer
 * @param up where the page belongs
 * @param saved what was just done; empty for nothing
 * @param refusal why a receipt was not written; empty almost always
 * @param to the page's own address
 * @param shown goes back with the temperatures, so that nobody overwrites what they have not seen
 * @param temper the boxes of the temperatures
 * @param clashes what somebody else changed meanwhile; empty almost always
 * @param bars why the eggs must not go over as things stand; empty where they may
 * @param hints what else to beware of here
 * @param answer when they go over, in a sentence; empty while nobody knows
 * @param steps of the tempering
 * @param twice that eggs were added by hand already; empty where not
 * @param receipt what was received, once it is written down
 * @param receiptTo where the receipt is sent
 * @param fields the boxes of the receipt; empty once it is written down
 * @param asks what is asked back once; empty almost always
 * @param answered what was answered to that; empty where nothing was
 */
public record EggStopPage(
        String title, String heading, List<FormPage.Link> up, String saved, String refusal, String to, String shown,
        List<FormField> temper, List<FormPage.Clash> clashes, List<String> bars, List<String> hints, String answer,
        List<Step> steps, String twice, Received receipt, String receiptTo, List<List<FormField>> fields,
        List<AskBack> asks, String answered) implements Page {

    public static final Received NOTHING = new Received(List.of(), "", "", "");

    /** @param share which part of the water is replaced until then */
    public record Step(String by, String water, String share) {}

    /**
     * @param lines what it says
     * @param countTo the tank's count
     * @param readingTo the reading that was written with it; empty for none
     * @param undo where it is taken back; empty for who may not
     */
    public record Received(List<String> lines, String countTo, String readingTo, String undo) {}

    public String temperTo() {
        return to + "/tempering";
    }

    public boolean received() {
        return !receipt.lines().isEmpty();
    }

    public List<FormField> wrong() {
        return Stream.concat(temper.stream(), fields.stream().flatMap(List::stream)).filter(FormField::wrong).toList();
    }
}
