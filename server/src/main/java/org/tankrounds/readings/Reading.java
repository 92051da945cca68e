package org.tankrounds.readings;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One look at a tank at one time, by somebody: one version of it.
 *
 * @param code the same for all versions
 * @param by free label such as "period 3"; empty where none was given
 * @param personId who was signed in; empty where a token or a class card posted it
 * @param cardId the class card that posted it; empty otherwise
 * @param fileId the logger file that it came with, corrected or not; empty otherwise
 * @param flags what the judge found, such as {@code unlikely:ph} or {@code time_doubtful}
 * @param reason why this version took the place of the one before; empty in version 1
 * @param supersededAt empty for the version that holds
 */
public record Reading(
        long readingId,
        int tankId,
        String code,
        int version,
        Instant measuredAt,
        Instant receivedAt,
        String channel,
        Optional<String> by,
        OptionalInt personId,
        OptionalInt cardId,
        OptionalInt fileId,
        List<EnteredValue> values,
        Optional<String> note,
        List<String> flags,
        Optional<String> reason,
        Optional<Instant> supersededAt) {

    /** Flag of the version that says that a reading was taken back: by whom, when and why. It never holds. */
    static final String TAKEN_BACK = "taken_back";

    public static final String CHANNEL_PAGE = "page";
    public static final String CHANNEL_API = "api";
    public static final String CHANNEL_BATCH = "batch";
    public static final String CHANNEL_CARD = "card";
    public static final String CHANNEL_FILE = "file";
    public static final String CHANNEL_PROBE = "probe";

    /** The clock that told its time was far off, or the time is still to come. */
    public boolean timeDoubtful() {
        return flags.contains(Judge.TIME_DOUBTFUL);
    }

    /** Not a version of what was seen, but the word that none counts any more. */
    boolean isTakingBack() {
        return flags.contains(TAKEN_BACK);
    }

    public boolean holds() {
        return supersededAt.isEmpty();
    }
}
