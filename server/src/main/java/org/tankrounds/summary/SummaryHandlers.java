package org.tankrounds.summary;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.SummaryPage;
import org.tankrounds.season.Season;
import org.tankrounds.web.Accept;
import org.tankrounds.web.Caller;
import org.tankrounds.web.FieldError;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Language;

/** The season summary: a page, its files as they are now or were frozen, and the same for scripts. */
public final class SummaryHandlers {
    private static final String VERSION = "version";

    private final Transactions transactions;
    private final SummaryReads reads;
    private final SummaryVersions versions;
    private final SummaryFreezer freezer;
    private final SummaryFiles files;
    private final Pages pages;

    public SummaryHandlers(Transactions transactions, SummaryReads reads, SummaryVersions versions,
            SummaryFreezer freezer, SummaryFiles files, Pages pages) {
        this.transactions = transactions;
        this.reads = reads;
        this.versions = versions;
        this.freezer = freezer;
        this.files = files;
        this.pages = pages;
    }

    public void showPage(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        SummaryPage page = transactions.inChapter(chapterId, tx -> {
            Season season = reads.season(tx, chapterId, ctx.pathParam("season"));
            return page(tx, chapterId, season, Speech.of(ctx));
        });
        pages.show(ctx, "summary/summary", page);
    }

    private SummaryPage page(DSLContext tx, int chapterId, Season season, Speech speech) {
        SeasonSummary summary = reads.summary(tx, chapterId, season);
        List<FrozenVersion> frozen = versions.list(tx, chapterId, season);
        String address = "/season/" + season.code() + "/summary";
        List<SummaryPage.Frozen> listed = frozen.stream().map(one -> new SummaryPage.Frozen(
                speech.say("freeze.version", one.version()),
                speech.written("time.pattern.dateYearAndClock", one.at().atZone(ZoneOffset.UTC)),
                address + "/versions/" + one.version())).toList();
        SummaryPage.Standing standing = frozen.stream().findFirst().map(last -> {
            int changes = freezer.changesSince(tx, chapterId, season, last.version(), summary).size();
            return new SummaryPage.Standing(changes == 0 ? speech.say("freeze.asFrozen", last.version())
                    : speech.say("freeze.changed", changes, last.version()), address + "/versions/" + last.version());
        }).orElse(SummaryPage.Standing.NONE);
        return new SummaryPageMaker(summary, files.stamp(), speech, true)
                .page(standing, new SummaryPage.Freeze(address + "/freeze", listed));
    }

    /** For scripts: the format by what they accept. */
    public void show(Context ctx) {
        ctx.header("Vary", "Accept");
        List<String> offered = SummaryFormat.mediaTypes();
        SummaryFormat format = Accept.choose(ctx.header("Accept"), offered)
                .flatMap(SummaryFormat::ofMediaType)
                .orElseThrow(() -> RefusedException.of(HttpStatus.NOT_ACCEPTABLE.getCode(),
                        "The summary is there as " + String.join(", ", offered)
                                + ", and as .csv, .xlsx, .pdf and .zip."));
        send(ctx, format, false);
    }

    public void showCsv(Context ctx) {
        send(ctx, SummaryFormat.CSV, true);
    }

    public void showXlsx(Context ctx) {
        send(ctx, SummaryFormat.XLSX, true);
    }

    public void showPdf(Context ctx) {
        send(ctx, SummaryFormat.PDF, true);
    }

    public void showZip(Context ctx) {
        send(ctx, SummaryFormat.ZIP, true);
    }

    public void showJson(Context ctx) {
        send(ctx, SummaryFormat.JSON, false);
    }

    private void send(Context ctx, SummaryFormat format, boolean asFile) {
        int chapterId = Caller.of(ctx).chapterId();
        String season = ctx.pathParam("season");
        OptionalInt version = version(ctx);
        Optional<Supplier<byte[]>> found = transactions.inChapterAtOneMoment(chapterId,
                tx -> files.find(tx, chapterId, season, format, version, speech(ctx)));
        byte[] file = found.orElseThrow(() -> new NotFoundException("season")).get();
        if (asFile) {
            ctx.header("Content-Disposition", "attachment; filename=\"season-summary-" + season
                    + (version.isPresent() ? "-v" + version.getAsInt() : "") + "." + format.extension() + "\"");
        }
        ctx.contentType(format.contentType()).result(file);
    }

    /** Each file of a version can be had by everybody, in whichever language they read. */
    private static Speech speech(Context ctx) {
        Speech own = Speech.of(ctx);
        return Optional.ofNullable(ctx.queryParam("language")).flatMap(Language::ofTag)
                .map(language -> new Speech(language, own.scale())).orElse(own);
    }

    private static OptionalInt version(Context ctx) {
        String text = ctx.queryParam(VERSION);
        if (text == null) {
            return OptionalInt.empty();
        }
        OptionalInt version = TypedNumber.whole(text);
        if (version.isEmpty() || version.getAsInt() < 1) {
            throw new RefusedException(HttpStatus.BAD_REQUEST.getCode(), "There is no such version.",
                    List.of(new FieldError("/" + VERSION, "A version is a whole number from 1.")));
        }
        return version;
    }
}
