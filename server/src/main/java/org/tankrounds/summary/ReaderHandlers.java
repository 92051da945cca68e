package org.tankrounds.summary;

import io.javalin.http.Context;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.HexFormat;
import java.util.function.BiFunction;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.FrozenPage;
import org.tankrounds.pages.ReaderPage;
import org.tankrounds.season.Season;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Secrets;
import org.tankrounds.web.Speech;

/** What somebody reads by a link, without an account: one version of a summary, and its files. */
public final class ReaderHandlers {
    private final Transactions transactions;
    private final SummaryReads reads;
    private final SummaryVersions versions;
    private final Pages pages;
    private final Clock clock;

    private record Opened(DSLContext tx, SummaryLinks.Link link, Season season, FrozenVersion version) {}

    public ReaderHandlers(Transactions transactions, SummaryReads reads, SummaryVersions versions, Pages pages,
            Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.versions = versions;
        this.pages = pages;
        this.clock = clock;
    }

    public void show(Context ctx) {
        Speech speech = Speech.of(ctx);
        ReaderPage page = open(ctx, (opened, address) -> new ReaderPage(
                speech.say("freeze.reader.title", opened.season().name(), opened.version().version()),
                reads.heading(opened.tx(), opened.link().chapterId(), opened.season()).chapter(),
                speech.say("freeze.reader.lead",
                        speech.written("time.pattern.dateYearAndClock", opened.version().at().atZone(ZoneOffset.UTC)),
                        opened.version().software(), opened.link().reader(),
                        speech.written("time.pattern.dateYearAndClock",
                                opened.link().expiresAt().atZone(ZoneOffset.UTC))),
                opened.version().files().stream().map(file -> new FrozenPage.File(
                        speech.say("freeze.file." + file.name()), address + "/" + file.name(),
                        HexFormat.of().formatHex(file.sha256()), speech.say("freeze.bytes", file.bytes()))).toList()));
        ctx.header("Cache-Control", "no-store");
        pages.show(ctx, "summary/reader", page);
    }

    public void download(Context ctx) {
        String name = ctx.pathParam("file");
        SummaryFormat format = SummaryFormat.of(name.replaceFirst("-.*", ""))
                .orElseThrow(() -> new NotFoundException("file"));
        byte[] content = open(ctx, (opened, address) -> {
            ctx.header("Content-Disposition", "attachment; filename=\"season-summary-" + opened.season().code() + "-v"
                    + opened.link().version() + "." + format.extension() + "\"");
            return versions.content(opened.tx(), opened.link().chapterId(), opened.season(),
                            opened.link().version(), name)
                    .orElseThrow(() -> new NotFoundException("file"));
        });
        ctx.header("Cache-Control", "no-store");
        ctx.contentType(format.contentType()).result(content);
    }

    private <T> T open(Context ctx, BiFunction<Opened, String, T> work) {
        String secret = ctx.pathParam("link");
        byte[] sha256 = Secrets.sha256(secret);
        return transactions.bySecret(sha256, tx -> {
            SummaryLinks.Link link = SummaryLinks.find(tx, sha256).filter(one -> one.opensAt(clock.instant()))
                    .orElseThrow(() -> new NotFoundException("link"));
            Transactions.enter(tx, link.chapterId());
            Season season = reads.season(tx, link.chapterId(), link.seasonId());
            FrozenVersion version = versions.find(tx, link.chapterId(), season, link.version()).orElseThrow();
            return work.apply(new Opened(tx, link, season, version), "/handed-over/" + secret);
        });
    }
}
