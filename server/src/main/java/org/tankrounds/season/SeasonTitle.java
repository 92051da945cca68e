package org.tankrounds.season;

import org.tankrounds.web.Speech;

/** A season in one line: what became of its eggs. */
public final class SeasonTitle {
    private SeasonTitle() {}

    /** @param total of all its tanks */
    public static String of(String season, Ledger total, Speech speech) {
        if (total.received() == 0) {
            return speech.say("season.title.noEggs", season);
        }
        return total.released() == 0 ? speech.say("season.title", season, total.alive(), total.received())
                : speech.say("season.title.released", season, total.released(), total.alive(), total.received());
    }
}
