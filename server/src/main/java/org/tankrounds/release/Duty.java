package org.tankrounds.release;

import java.util.Locale;

/** What somebody does on the day of a release. Who is written down as a duty too: class teacher, mentor, ranger. */
public enum Duty {
    /** Leads at the water, and does nothing else. */
    LEAD,
    COUNT,
    DRIVE,
    /** Reads temperature and oxygen, and keeps time while the fish get used to the stream. */
    MEASURE,
    /** Has first aid and a phone that works there. */
    HELP;

    /** In forms and messages. */
    String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
