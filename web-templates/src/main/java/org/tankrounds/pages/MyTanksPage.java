package org.tankrounds.pages;

import java.util.List;

/** The tanks that a teacher looks after. */
public record MyTanksPage(String title, List<Entry> tanks) implements Page {

    /** @param answer the heading of the tank's own page */
    public record Entry(String code, String school, String answer, String lastLook) {
        public String to() {
            return "/tanks/" + code;
        }

        public String logTo() {
            return "/tanks/" + code + "/log";
        }
    }
}
