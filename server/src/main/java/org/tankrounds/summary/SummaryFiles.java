package org.tankrounds.summary;

import java.io.ByteArrayOutputStream;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.jooq.DSLContext;
import org.tankrounds.season.Season;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Language;

/** A season's summary as a file of one of the formats, as it is now or as it was frozen. */
public final class SummaryFiles {
    private final SummaryReads reads;
    private final SummaryVersions versions;
    private final SummaryPaper paper;
    private final DataPackage dataPackage;
    private final String software;
    private final Clock clock;

    /** @param software its version, as it stands on paper */
    public SummaryFiles(SummaryReads reads, SummaryVersions versions, SummaryPaper paper, DataPackage dataPackage,
            String software, Clock clock) {
        this.reads = reads;
        this.versions = versions;
        this.paper = paper;
        this.dataPackage = dataPackage;
        this.software = software;
        this.clock = clock;
    }

    /**
     * Empty where the chapter has no such season, or the season no such version.
     *
     * @return what makes the file of the rows that were read, when the transaction is over:
     *     laying paper out takes a while
     */
    public Optional<Supplier<byte[]>> find(
            DSLContext tx, int chapterId, String season, SummaryFormat format, OptionalInt version, Speech speech) {
        return reads.find(tx, chapterId, season).flatMap(found -> version.isPresent()
                ? versions.content(tx, chapterId, found, version.getAsInt(), name(format, speech.language()))
                        .map(content -> () -> content)
                : Optional.of(now(tx, chapterId, found, format, speech)));
    }

    private Supplier<byte[]> now(DSLContext tx, int chapterId, Season season, SummaryFormat format, Speech speech) {
        Stamp stamp = stamp();
        if (format == SummaryFormat.ZIP) {
            byte[] zip = zip(tx, chapterId, season, stamp);
            return () -> zip;
        }
        SeasonSummary summary = reads.summary(tx, chapterId, season);
        return () -> write(summary, format, speech, stamp);
    }

    /** Of the rows as they are now. */
    Stamp stamp() {
        return Stamp.now(moment(), software);
    }

    /** Of a version that is frozen now. */
    Stamp stamp(int version) {
        return new Stamp(moment(), software, OptionalInt.of(version), List.of());
    }

    private Instant moment() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }

    /**
     * Each file of a version, by the name under which it is kept; what is printed, in each language.
     *
     * @param zip made of the same rows
     */
    Map<String, byte[]> all(SeasonSummary summary, Stamp stamp, byte[] zip) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (SummaryFormat format : List.of(SummaryFormat.JSON, SummaryFormat.CSV, SummaryFormat.XLSX)) {
            files.put(name(format, Language.ENGLISH), write(summary, format, Speech.PLAIN, stamp));
        }
        for (Language language : Language.values()) {
            files.put(name(SummaryFormat.PDF, language),
                    write(summary, SummaryFormat.PDF, new Speech(language, Scale.CELSIUS), stamp));
        }
        files.put(name(SummaryFormat.ZIP, Language.ENGLISH), zip);
        return files;
    }

    /** @param speech of whoever reads what is printed; the other formats are English for everybody */
    byte[] write(SeasonSummary summary, SummaryFormat format, Speech speech, Stamp stamp) {
        return switch (format) {
            case JSON -> SummaryJson.write(summary, stamp);
            case CSV -> SummaryCsv.write(summary);
            case XLSX -> SummaryWorkbook.write(summary, stamp);
            case PDF -> paper.write(new SummaryPageMaker(summary, stamp, speech, false).page(), speech.language(),
                    stamp.at());
            case ZIP -> throw new IllegalArgumentException("a package is written from the rows");
        };
    }

    static String name(SummaryFormat format, Language language) {
        return format == SummaryFormat.PDF ? format.extension() + "-" + language.tag() : format.extension();
    }

    byte[] zip(DSLContext tx, int chapterId, Season season, Stamp stamp) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        dataPackage.write(tx, chapterId, season, stamp, bytes);
        return bytes.toByteArray();
    }
}
