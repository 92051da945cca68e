package org.tankrounds.words;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A language that every page is complete in. Each is written as in the Americas: with a decimal point. */
public enum Language {
    ENGLISH("en", Locale.ENGLISH, "English"),
    SPANISH("es", Locale.forLanguageTag("es-US"), "Español");

    private final String tag;
    private final Locale locale;
    private final String ownName;

    Language(String tag, Locale locale, String ownName) {
        this.tag = tag;
        this.locale = locale;
        this.ownName = ownName;
    }

    /** BCP 47, for {@code lang} attributes; the files of messages carry it too. */
    public String tag() {
        return tag;
    }

    /** How numbers and dates are written in it. */
    public Locale locale() {
        return locale;
    }

    /** As those call it who speak it. */
    public String ownName() {
        return ownName;
    }

    public static Optional<Language> ofTag(String tag) {
        return Arrays.stream(values()).filter(language -> language.tag.equals(tag)).findFirst();
    }

    public static Language of(Locale locale) {
        return ofTag(locale.getLanguage()).orElse(ENGLISH);
    }
}
