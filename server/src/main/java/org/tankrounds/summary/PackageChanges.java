package org.tankrounds.summary;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * How many rows of a data package are not the same as in another: what stands behind the figures may change where they
 * do not. A table can have millions of rows, so each is known by a number of 64 bits only.
 */
final class PackageChanges {
    static final String ROWS_OF = "rows_of_";
    private static final String ENDING = ".csv";
    /** Its rows are the figures themselves. */
    private static final Set<String> TOLD_ELSEWHERE = Set.of("summary");
    /** The hash of Fowler, Noll and Vo, FNV-1a of 64 bits. */
    private static final long BASIS = 0xcbf29ce484222325L;
    private static final long PRIME = 0x100000001b3L;

    private PackageChanges() {}

    /** By table, with the rows that are gone and those that came; tables that the older one does not have are new. */
    static List<Change> between(byte[] before, byte[] now) {
        Map<String, long[]> old = rows(before);
        List<Change> changes = new ArrayList<>();
        rows(now).forEach((table, rows) -> {
            long[] then = old.getOrDefault(table, new long[0]);
            int same = shared(then, rows);
            if (same < then.length || same < rows.length) {
                changes.add(new Change("", "", ROWS_OF + table, Integer.toString(then.length - same),
                        Integer.toString(rows.length - same)));
            }
        });
        return changes;
    }

    /** Each table's rows, sorted; its head is one of them. */
    private static Map<String, long[]> rows(byte[] zip) {
        Map<String, long[]> tables = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                String table = entry.getName().replaceFirst("\\" + ENDING + "$", "");
                if (entry.getName().endsWith(ENDING) && !TOLD_ELSEWHERE.contains(table)) {
                    tables.put(table, rows(in));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return tables;
    }

    private static long[] rows(InputStream table) throws IOException {
        InputStream in = new BufferedInputStream(table, 1 << 16);
        long[] rows = new long[1024];
        int count = 0;
        long row = BASIS;
        for (int next = in.read(); next >= 0; next = in.read()) {
            row = (row ^ next) * PRIME;
            if (next == '\n') {
                if (count == rows.length) {
                    rows = Arrays.copyOf(rows, 2 * count);
                }
                rows[count++] = row;
                row = BASIS;
            }
        }
        rows = Arrays.copyOf(rows, count);
        Arrays.sort(rows);
        return rows;
    }

    /** How many stand in both, each as often as it does. */
    private static int shared(long[] one, long[] other) {
        int shared = 0;
        int i = 0;
        int j = 0;
        while (i < one.length && j < other.length) {
            int order = Long.compare(one[i], other[j]);
            shared += order == 0 ? 1 : 0;
            i += order <= 0 ? 1 : 0;
            j += order >= 0 ? 1 : 0;
        }
        return shared;
    }
}
