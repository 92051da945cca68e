package org.tankrounds.summary;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The formats of a summary; the first is the one that is sent where nobody chooses. */
public enum SummaryFormat {
    JSON("application/json", "application/json; charset=utf-8"),
    CSV("text/csv", "text/csv; charset=utf-8; header=present"),
    XLSX("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", null),
    PDF("application/pdf", null),
    /** The data package. */
    ZIP("application/zip", null);

    private final String mediaType;
    private final String contentType;

    SummaryFormat(String mediaType, String contentType) {
        this.mediaType = mediaType;
        this.contentType = contentType == null ? mediaType : contentType;
    }

    public static Optional<SummaryFormat> of(String extension) {
        return Stream.of(values()).filter(format -> format.extension().equals(extension)).findFirst();
    }

    static Optional<SummaryFormat> ofMediaType(String mediaType) {
        return Stream.of(values()).filter(format -> format.mediaType.equals(mediaType)).findFirst();
    }

    static List<String> mediaTypes() {
        return Stream.of(values()).map(format -> format.mediaType).toList();
    }

    public String extension() {
        return name().toLowerCase(Locale.ROOT);
    }

    String contentType() {
        return contentType;
    }
}
