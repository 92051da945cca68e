package org.tankrounds.readings;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/** A logger's file says the same over and over: packed it is a tenth of itself. */
final class Packed {
    private Packed() {}

    static byte[] pack(byte[] content) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            out.write(content);
        } catch (IOException e) {
            throw new UncheckedIOException("memory can always be written to", e);
        }
        return packed.toByteArray();
    }

    static byte[] unpack(byte[] packed) {
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the database holds a file that cannot be unpacked", e);
        }
    }
}
