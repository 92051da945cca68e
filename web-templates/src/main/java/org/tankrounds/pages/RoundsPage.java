package org.tankrounds.pages;

import java.util.List;

/**
 * The rounds: which tank first, why, what to bring.
 *
 * @param title the answer
 * @param lead what the odds speak of and until when
 * @param tag the answer's ETag, so that the script can ask for the next one
 * @param past where the mornings before are looked at
 * @param doors to what is near and concerns several tanks
 * @param printed when and on whose clock, for paper
 */
public record RoundsPage(
        String title, String lead, String tag, String past, List<FormPage.Link> doors, String printed,
        List<Group> groups)
        implements Page {

    /** @param key one of today, week, ask, none */
    public record Group(String key, String title, String hint, List<Row> rows) {}

    /**
     * @param code of the tank
     * @param place in the order of the rounds, from 1
     * @param lead the largest reason
     * @param rest what follows it in the same line
     * @param seen what the class saw of its fish; may be empty
     * @param away who looks in during a school break, or does not; may be empty
     * @param more further reasons, smaller
     * @param picture null where nothing is worth drawing
     * @param odds "7 in 10"
     * @param tenths how many of ten dots are filled
     * @param dots whether the dots are drawn
     * @param spread how far apart the ways lie in which it could go, in a few words; may be empty
     */
    public record Row(
            String code, int place, String school, String room, String lead, String rest, String seen,
            String away, String more, SmallPicture picture, String odds, int tenths, boolean dots, String spread,
            String bring, String lastLook) {

        public String to() {
            return "/tanks/" + code;
        }
    }

    public boolean empty() {
        return groups.isEmpty();
    }
}
