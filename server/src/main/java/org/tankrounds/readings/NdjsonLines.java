package org.tankrounds.readings;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;

/** Lines of a body of any length, one at a time; no more than one line and one buffer is in memory. */
final class NdjsonLines {
    static final int LONGEST_LINE_BYTES = 64 * 1024;
    private static final long PATIENCE_NANOS = 2_000_000;

    /** @param bytes without the line's end; empty where it was too long */
    record Line(int number, Optional<byte[]> bytes) {
        boolean isBlank() {
            if (bytes.isEmpty()) {
                return false;
            }
            for (byte b : bytes.get()) {
                if (b != ' ' && b != '\t' && b != '\r') {
                    return false;
                }
            }
            return true;
        }
    }

    private final InputStream in;
    private final byte[] buffer = new byte[32 * 1024];
    private int next;
    private int end;
    private int number;

    NdjsonLines(InputStream in) {
        this.in = in;
    }

    /** @return empty at the end of the body */
    Optional<Line> next() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream(512);
        boolean tooLong = false;
        if (!fill()) {
            return Optional.empty();
        }
        while (fill()) {
            int stop = next;
            while (stop < end && buffer[stop] != '\n') {
                stop++;
            }
            tooLong |= line.size() + stop - next > LONGEST_LINE_BYTES;
            if (!tooLong) {
                line.write(buffer, next, stop - next);
            }
            boolean ended = stop < end;
            next = ended ? stop + 1 : stop;
            if (ended) {
                break;
            }
        }
        number++;
        return Optional.of(new Line(number, tooLong ? Optional.empty() : Optional.of(content(line.toByteArray()))));
    }

    /** Whether the sender makes a pause: then it may be waiting for what we have to say. */
    boolean pausing() throws IOException {
        if (next < end || in.available() > 0) {
            return false;
        }
        LockSupport.parkNanos(PATIENCE_NANOS);
        return in.available() == 0;
    }

    private boolean fill() throws IOException {
        if (next < end) {
            return true;
        }
        next = 0;
        end = Math.max(0, in.read(buffer));
        return end > 0;
    }

    /** Spreadsheets put a byte-order mark before the first line. */
    private byte[] content(byte[] line) {
        boolean marked = number == 1 && line.length >= 3
                && line[0] == (byte) 0xef && line[1] == (byte) 0xbb && line[2] == (byte) 0xbf;
        return marked ? Arrays.copyOfRange(line, 3, line.length) : line;
    }
}
