package org.tankrounds.readings;

import java.nio.ByteBuffer;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import org.tankrounds.readings.ReadingRepository.Position;
import org.tankrounds.web.Secrets;

/**
 * Where the next page begins, opaque to the caller. Bound to the tank: one tank's cursor means nothing for another.
 * It opens nothing (the tank is checked with every page), so a check sum is enough and no key has to be kept.
 */
final class ReadingCursor {
    private static final int SUM_BYTES = 8;

    private ReadingCursor() {}

    static String of(int chapterId, int tankId, Reading last) {
        long micros = ChronoUnit.MICROS.between(Instant.EPOCH, last.measuredAt());
        byte[] place = ByteBuffer.allocate(16).putLong(micros).putLong(last.readingId()).array();
        byte[] cursor = ByteBuffer.allocate(16 + SUM_BYTES).put(place).put(sum(chapterId, tankId, place)).array();
        return Base64.getUrlEncoder().withoutPadding().encodeToString(cursor);
    }

    /** @return empty where it is not a cursor of this tank */
    static Optional<Position> read(int chapterId, int tankId, String cursor) {
        byte[] bytes;
        try {
            bytes = Base64.getUrlDecoder().decode(cursor);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
        if (bytes.length != 16 + SUM_BYTES) {
            return Optional.empty();
        }
        byte[] place = Arrays.copyOf(bytes, 16);
        if (!Arrays.equals(sum(chapterId, tankId, place), Arrays.copyOfRange(bytes, 16, bytes.length))) {
            return Optional.empty();
        }
        ByteBuffer buffer = ByteBuffer.wrap(place);
        Instant measuredAt = Instant.EPOCH.plus(buffer.getLong(), ChronoUnit.MICROS);
        return Optional.of(new Position(measuredAt, buffer.getLong()));
    }

    private static byte[] sum(int chapterId, int tankId, byte[] place) {
        byte[] bound = ByteBuffer.allocate(24).putInt(chapterId).putInt(tankId).put(place).array();
        return Arrays.copyOf(Secrets.sha256(bound), SUM_BYTES);
    }
}
