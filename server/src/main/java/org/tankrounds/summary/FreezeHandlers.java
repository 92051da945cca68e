package org.tankrounds.summary;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.OptionalInt;
import java.util.UUID;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.FreezePage;
import org.tankrounds.pages.FrozenPage;
import org.tankrounds.season.Season;
import org.tankrounds.web.Asked;
import org.tankrounds.web.Caller;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;

/** Freezing a summary, and what was frozen. */
public final class FreezeHandlers {
    private static final String FORM = "form";

    private final Transactions transactions;
    private final SummaryReads reads;
    private final SummaryVersions versions;
    private final SummaryFreezer freezer;
    private final Pages pages;
    private final Clock clock;

    public FreezeHandlers(Transactions transactions, SummaryReads reads, SummaryVersions versions,
            SummaryFreezer freezer, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.versions = versions;
        this.freezer = freezer;
        this.pages = pages;
        this.clock = clock;
    }

    /** Says what freezing does and what is still open, and asks once. */
    public void showForm(Context ctx) {
        Caller caller = Caller.of(ctx);
        Speech speech = Speech.of(ctx);
        LocalDate today = LocalDate.now(clock.withZone(caller.zone()));
        FreezePage page = transactions.inChapter(caller.chapterId(), tx -> {
            Season season = reads.season(tx, caller.chapterId(), ctx.pathParam("season"));
            SeasonSummary summary = reads.summary(tx, caller.chapterId(), season);
            int next = versions.list(tx, caller.chapterId(), season).stream().findFirst()
                    .map(FrozenVersion::version).orElse(0) + 1;
            return new FreezePage(speech.say("freeze.title", season.name(), next), address(season), season.name(),
                    new StillOpen(summary, speech).list(today),
                    address(season) + "/freeze?" + FORM + "=" + UUID.randomUUID(), speech.say("freeze.do", next));
        });
        pages.show(ctx, "summary/freeze", page);
    }

    public void freeze(Context ctx) {
        int version = freezer.freeze(Caller.of(ctx), ctx.pathParam("season"),
                Asked.submissionId(ctx.queryParam(FORM)));
        ctx.redirect("/season/" + ctx.pathParam("season") + "/summary/versions/" + version, HttpStatus.SEE_OTHER);
    }

    public void showVersion(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        OptionalInt number = TypedNumber.whole(ctx.pathParam("version"));
        FrozenPage page = transactions.inChapter(chapterId, tx -> {
            Season season = reads.season(tx, chapterId, ctx.pathParam("season"));
            FrozenVersion version = number.isEmpty() ? null
                    : versions.find(tx, chapterId, season, number.getAsInt()).orElse(null);
            if (version == null) {
                throw new NotFoundException("version");
            }
            return page(tx, ctx, season, version);
        });
        pages.show(ctx, "summary/frozen", page);
    }

    private FrozenPage page(DSLContext tx, Context ctx, Season season, FrozenVersion version) {
        int chapterId = Caller.of(ctx).chapterId();
        Speech speech = Speech.of(ctx);
        ChangeWording wording = new ChangeWording(speech);
        List<FrozenPage.File> files = new ArrayList<>();
        for (FrozenVersion.File file : version.files()) {
            String[] parts = file.name().split("-", 2);
            String language = parts.length == 1 ? "" : "&language=" + parts[1];
            files.add(new FrozenPage.File(speech.say("freeze.file." + file.name()),
                    address(season) + "." + parts[0] + "?version=" + version.version() + language,
                    HexFormat.of().formatHex(file.sha256()), speech.say("freeze.bytes", file.bytes())));
        }
        boolean isLast = versions.list(tx, chapterId, season).get(0).version() == version.version();
        return new FrozenPage(speech.say("freeze.version.title", season.name(), version.version()), address(season),
                season.name(), speech.say("freeze.version.lead",
                        speech.written("time.pattern.dateYearAndClock", version.at().atZone(ZoneOffset.UTC)), version.by(),
                        version.software()), files, version.version() == 1 ? "" : speech.say("freeze.changes.from",
                        version.version() - 1),
                wording.changes(freezer.changesOf(tx, chapterId, season, version.version())), isLast,
                isLast ? wording.changes(freezer.changesSince(tx, chapterId, season, version.version(),
                        reads.summary(tx, chapterId, season))) : List.of(), address(season) + "/freeze");
    }

    private static String address(Season season) {
        return "/season/" + season.code() + "/summary";
    }
}
