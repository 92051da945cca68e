package org.tankrounds.summary;

import java.time.Instant;
import java.util.List;

/**
 * A summary that was frozen.
 *
 * @param by who froze it
 * @param software version that made it
 */
record FrozenVersion(int version, Instant at, String by, String software, List<File> files) {

    /** @param name as the database has it, such as {@code pdf-en} */
    record File(String name, byte[] sha256, int bytes) {}
}
