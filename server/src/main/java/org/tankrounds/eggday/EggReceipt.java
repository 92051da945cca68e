package org.tankrounds.eggday;

import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.tankrounds.season.CountMethod;

/**
 * What a class received at a stop.
 *
 * @param lotId the lot that the count of the tank begins with; 0 of one that was taken back
 * @param readingCode the reading with the dead and the tank's water; empty where there was nothing to read
 * @param by who wrote it down
 */
record EggReceipt(int receiptId, int stopId, Details details, int lotId, Optional<String> readingCode, String by) {

    /**
     * @param eggs handed over, the dead among them included
     * @param dead of these, dead on arrival and picked out; empty where nobody looked
     * @param spread eggs more or less that their count may be off, 95 %
     * @param classLabel such as "Room 12, period 3": never a pupil
     */
    record Details(Instant receivedAt, int eggs, OptionalInt dead, CountMethod method, int spread, String classLabel,
            Adult adult, Optional<String> note) {

        /** Whether the same was written; when it was is the form's, and may be the moment of sending. */
        boolean saysAs(Details other) {
            return eggs == other.eggs && dead.equals(other.dead) && method == other.method && spread == other.spread
                    && classLabel.equals(other.classLabel) && adult == other.adult && note.equals(other.note);
        }
    }

    boolean holds() {
        return lotId != 0;
    }

    /** By duty, the adult who was there: no name is asked for. */
    enum Adult {
        TEACHER, AIDE, SUBSTITUTE, OFFICE, MENTOR, COORDINATOR;

        /** In forms and the database. */
        String code() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Optional<Adult> ofCode(String code) {
            return Arrays.stream(values()).filter(adult -> adult.code().equals(code)).findFirst();
        }
    }
}
