package org.tankrounds.summary;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.function.BiFunction;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes zips that hang on what is in them and on one moment alone, on no clock and no machine's time zone. */
final class FixedZip {
    private static final int END_SIGNATURE = 0x06054b50;
    private static final int END_LENGTH = 22;

    private final ZipOutputStream zip;
    private final LocalDateTime at;

    FixedZip(OutputStream out, Instant at) {
        this.zip = new ZipOutputStream(out);
        this.at = LocalDateTime.ofInstant(at, ZoneOffset.UTC);
    }

    /** @return where the entry's bytes go, until the next one; not to be closed */
    OutputStream begin(String name) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(at);
        zip.putNextEntry(entry);
        return zip;
    }

    void end() throws IOException {
        zip.closeEntry();
    }

    void finish() throws IOException {
        zip.finish();
    }

    /**
     * The same entries in the same order, read by the directory at the end: what stands before an entry need not tell
     * how long it is.
     *
     * @param edit of an entry's name and bytes
     */
    static byte[] again(byte[] original, Instant at, BiFunction<String, byte[], byte[]> edit) {
        ByteBuffer in = ByteBuffer.wrap(original).order(ByteOrder.LITTLE_ENDIAN);
        int end = original.length - END_LENGTH;
        while (in.getInt(end) != END_SIGNATURE) {
            end--;
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            FixedZip zip = new FixedZip(out, at);
            int entry = in.getInt(end + 16);
            for (int left = in.getShort(end + 10); left > 0; left--) {
                int nameLength = in.getShort(entry + 28);
                String name = new String(original, entry + 46, nameLength, StandardCharsets.UTF_8);
                zip.begin(name).write(edit.apply(name, content(in, entry)));
                zip.end();
                entry += 46 + nameLength + in.getShort(entry + 30) + in.getShort(entry + 32);
            }
            zip.finish();
        } catch (IOException | DataFormatException e) {
            throw new IllegalStateException("not a zip that was written just now", e);
        }
        return out.toByteArray();
    }

    /** @param entry where the directory tells of it */
    private static byte[] content(ByteBuffer in, int entry) throws DataFormatException {
        int local = in.getInt(entry + 42);
        int start = local + 30 + in.getShort(local + 26) + in.getShort(local + 28);
        int packed = in.getInt(entry + 20);
        byte[] content = new byte[in.getInt(entry + 24)];
        if (in.getShort(entry + 10) == ZipEntry.STORED) {
            System.arraycopy(in.array(), start, content, 0, content.length);
            return content;
        }
        Inflater inflater = new Inflater(true);
        inflater.setInput(in.array(), start, packed);
        int read = 0;
        while (read < content.length) {
            read += inflater.inflate(content, read, content.length - read);
        }
        inflater.end();
        return content;
    }
}
