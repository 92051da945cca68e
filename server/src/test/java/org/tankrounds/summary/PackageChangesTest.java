package org.tankrounds.summary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class PackageChangesTest {

    @Test
    void rowsThatAreGone_andThoseThatCame_areCountedByTable() {
        byte[] before = zip("lots.csv", "tank,eggs\r\na,100\r\nb,50\r\nb,50\r\n", "tanks.csv", "tank\r\na\r\n");
        byte[] now = zip("tanks.csv", "tank\r\na\r\n", "lots.csv", "tank,eggs\r\nb,50\r\na,101\r\nb,50\r\nc,7\r\n");
        assertThat(PackageChanges.between(before, now)).containsExactly(new Change("", "", "rows_of_lots", "1", "2"));
        assertThat(PackageChanges.between(now, now)).isEmpty();
    }

    /** Rows in another order are the same rows; one that stands twice is not the same as once. */
    @Test
    void order_saysNothing_andNumberDoes() {
        assertThat(PackageChanges.between(
                zip("acts.csv", "a\r\n1\r\n2\r\n"), zip("acts.csv", "a\r\n2\r\n1\r\n"))).isEmpty();
        assertThat(PackageChanges.between(zip("acts.csv", "a\r\n1\r\n1\r\n"), zip("acts.csv", "a\r\n1\r\n")))
                .containsExactly(new Change("", "", "rows_of_acts", "1", "0"));
    }

    /** Its rows are the figures, and what describes the package has its moment in it. */
    @Test
    void figuresAndDescriptor_areToldElsewhere() {
        assertThat(PackageChanges.between(zip("summary.csv", "a\r\n1\r\n", "datapackage.json", "{}"),
                zip("summary.csv", "a\r\n2\r\n", "datapackage.json", "{ }"))).isEmpty();
    }

    private static byte[] zip(String... namesAndContents) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            FixedZip zip = new FixedZip(out, Instant.parse("2026-07-01T12:00:00Z"));
            for (int i = 0; i < namesAndContents.length; i += 2) {
                zip.begin(namesAndContents[i]).write(namesAndContents[i + 1].getBytes(StandardCharsets.UTF_8));
                zip.end();
            }
            zip.finish();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
