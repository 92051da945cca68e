package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Stream;

/** Tokens of probes and scripts. */
public record TokensPage(String title, List<Row> live, List<Row> gone, FormField label, FormField opens)
        implements Page {
    /** @param revoked when; empty while it opens something */
    public record Row(int id, String label, String opens, String issued, String lastUsed, String revoked) {}

    public List<FormField> errors() {
        return Stream.of(label, opens).filter(FormField::wrong).toList();
    }
}
