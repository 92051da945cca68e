package org.tankrounds.web;

import io.javalin.http.Context;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
import java.util.Optional;
import org.tankrounds.words.Language;
import org.tankrounds.words.Saying;
import org.tankrounds.words.Words;

/** How somebody is spoken to: in which language, and with temperatures on which scale. */
public record Speech(Language language, Scale scale) {
    /** To scripts and machines, and wherever nobody in particular is spoken to. */
    public static final Speech PLAIN = new Speech(Language.ENGLISH, Scale.CELSIUS);

    /** Remembers a language on a browser for those who have not chosen one in an account. */
    public static final String COOKIE = "tkr-language";

    /** What somebody, or the tank of a class, has chosen. */
    public record Chosen(Optional<Language> language, Scale scale) {
        public static final Chosen NOTHING = new Chosen(Optional.empty(), Scale.CELSIUS);
    }

    public static Speech of(Context ctx) {
        if (ctx.path().startsWith("/api/")) {
            return PLAIN;
        }
        Chosen chosen = Caller.of(ctx).chosen();
        return new Speech(chosen.language().orElseGet(() -> asked(ctx)), chosen.scale());
    }

    public Words words() {
        return Words.in(language);
    }

    public String say(String key, Object... with) {
        return words().say(key, with);
    }

    public String say(Saying saying) {
        return words().say(saying);
    }

    /** @param pattern key of a pattern of java.time */
    public String written(String pattern, TemporalAccessor time) {
        return DateTimeFormatter.ofPattern(say(pattern), language.locale()).format(time);
    }

    /** A page's title, which says first that something on the page is to be put right. */
    public String titled(boolean wrong, String title) {
        return wrong ? say("frame.titleWrong", title) : title;
    }

    public Formats formats(ZoneId zone, Instant now) {
        return new Formats(zone, now, this);
    }

    /** What this browser remembers or asks for (RFC 9110, section 12.5.4). */
    private static Language asked(Context ctx) {
        return Optional.ofNullable(ctx.cookie(COOKIE)).flatMap(Language::ofTag)
                .orElseGet(() -> accepted(ctx.header("Accept-Language")));
    }

    private static Language accepted(String header) {
        if (header == null) {
            return Language.ENGLISH;
        }
        try {
            return Locale.LanguageRange.parse(header).stream()
                    .filter(range -> range.getWeight() > 0)
                    .flatMap(range -> Language.ofTag(range.getRange().replaceFirst("-.*", "")).stream())
                    .findFirst().orElse(Language.ENGLISH);
        } catch (IllegalArgumentException e) {
            return Language.ENGLISH;
        }
    }
}
