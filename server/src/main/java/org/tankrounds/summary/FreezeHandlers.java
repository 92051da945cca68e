package org.tankrounds.summary;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.UUID;
import org.jooq.DSLContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FreezePage;
import org.tankrounds.pages.FrozenPage;
import org.tankrounds.pages.HandOverPage;
import org.tankrounds.people.SiteAddress;
import org.tankrounds.season.Season;
import org.tankrounds.web.Asked;
import org.tankrounds.web.Caller;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;

/** Freezing a summary, what was frozen, and the links by which others read it. */
public final class FreezeHandlers {
    private static final Logger LOG = LoggerFactory.getLogger(FreezeHandlers.class);
    private static final String FORM = "form";
    private static final String READER = "reader";
    private static final String DAYS = "days";
    /** The number that the form spoke of, and whether another one is shown because it says the same. */
    private static final String NEXT = "next";
    private static final String SAME = "same";
    private static final String SUBMISSION = "submission_id";
    private static final List<Integer> TERMS = List.of(14, 30, 90);

    private final Transactions transactions;
    private final SummaryReads reads;
    private final SummaryVersions versions;
    private final SummaryFreezer freezer;
    private final SummaryLinks links;
    private final SiteAddress site;
    private final Pages pages;
    private final Clock clock;

    public FreezeHandlers(Transactions transactions, SummaryReads reads, SummaryVersions versions,
            SummaryFreezer freezer, SummaryLinks links, SiteAddress site, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.versions = versions;
        this.freezer = freezer;
        this.links = links;
        this.site = site;
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
            int last = versions.list(tx, caller.chapterId(), season).stream().findFirst()
                    .map(FrozenVersion::version).orElse(0);
            boolean same = last > 0
                    && freezer.changesSince(tx, caller.chapterId(), season, last, summary).isEmpty();
            return new FreezePage(speech.say("freeze.title", season.name(), last + 1), address(season), season.name(),
                    new StillOpen(summary, speech).list(today), same ? speech.say("freeze.same", last) : "",
                    address(season) + "/freeze?" + FORM + "=" + UUID.randomUUID() + "&" + NEXT + "=" + (last + 1),
                    speech.say("freeze.do", last + 1));
        });
        pages.show(ctx, "summary/freeze", page);
    }

    public void freeze(Context ctx) {
        int version = freezer.freeze(Caller.of(ctx), ctx.pathParam("season"),
                Asked.submissionId(ctx.queryParam(FORM)));
        String made = ctx.queryParam(NEXT);
        boolean isAnOlder = made != null && !made.equals(Integer.toString(version));
        ctx.redirect("/season/" + ctx.pathParam("season") + "/summary/versions/" + version
                + (isAnOlder ? "?" + SAME : ""), HttpStatus.SEE_OTHER);
    }

    public void showVersion(Context ctx) {
        show(ctx, FormInput.showing(ctx, Map.of(READER, "", DAYS, Integer.toString(TERMS.get(1)))));
    }

    /** The link is shown once: it is kept as a hash. */
    public void makeLink(Context ctx) {
        Caller caller = Caller.of(ctx);
        FormInput form = FormInput.of(ctx, List.of(READER, DAYS));
        String reader = form.required(READER, 80, "freeze.link.noReader");
        int days = TypedNumber.whole(form.text(DAYS)).orElse(0);
        if (!TERMS.contains(days)) {
            form.refuse(DAYS, "freeze.link.noDays");
        }
        if (!form.ok()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, form);
            return;
        }
        Instant until = clock.instant().plus(Duration.ofDays(days));
        String secret = transactions.inChapter(caller.chapterId(), tx -> {
            Where where = where(tx, ctx);
            return links.add(tx, caller.chapterId(), where.season(), where.version().version(),
                    Asked.submissionId(ctx.formParam(SUBMISSION)), reader,
                    caller.personId().orElseThrow(), clock.instant(), until);
        });
        LOG.info("a link to a summary of chapter {} was made by person {}", caller.chapterId(),
                caller.personId().orElseThrow());
        pages.show(ctx, "people/hand-over", new HandOverPage(form.say("freeze.link.made", reader),
                form.say("freeze.link.made.explanation",
                        Speech.of(ctx).written("time.pattern.dateAndYear", until.atZone(caller.zone()))),
                form.say("freeze.link"), site.of(ctx, "/handed-over/" + secret), versionAddress(ctx),
                form.say("freeze.link.back")));
    }

    public void withdrawLink(Context ctx) {
        Caller caller = Caller.of(ctx);
        transactions.inChapter(caller.chapterId(), tx -> {
            Where where = where(tx, ctx);
            TypedNumber.whole(ctx.pathParam("handover")).ifPresent(link -> links.withdraw(tx, caller.chapterId(),
                    where.season(), where.version().version(), link, caller.personId().orElseThrow(), clock.instant()));
            return null;
        });
        ctx.redirect(versionAddress(ctx), HttpStatus.SEE_OTHER);
    }

    private record Where(Season season, FrozenVersion version) {}

    private Where where(DSLContext tx, Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Season season = reads.season(tx, chapterId, ctx.pathParam("season"));
        OptionalInt number = TypedNumber.whole(ctx.pathParam("version"));
        if (number.isEmpty()) {
            throw new NotFoundException("version");
        }
        return new Where(season, versions.find(tx, chapterId, season, number.getAsInt())
                .orElseThrow(() -> new NotFoundException("version")));
    }

    private void show(Context ctx, FormInput form) {
        FrozenPage page = transactions.inChapter(Caller.of(ctx).chapterId(), tx -> {
            Where where = where(tx, ctx);
            return page(tx, ctx, where.season(), where.version(), form);
        });
        pages.show(ctx, "summary/frozen", page);
    }

    private static String versionAddress(Context ctx) {
        return "/season/" + ctx.pathParam("season") + "/summary/versions/" + ctx.pathParam("version");
    }

    private FrozenPage.HandOver handOver(DSLContext tx, Context ctx, Season season, FrozenVersion version,
            FormInput form) {
        Caller caller = Caller.of(ctx);
        Speech speech = Speech.of(ctx);
        String address = address(season) + "/versions/" + version.version() + "/links";
        List<FrozenPage.Link> made = links.list(tx, caller.chapterId(), season, version.version()).stream()
                .map(link -> {
                    boolean opens = link.opensAt(clock.instant());
                    String until = speech.written("time.pattern.dateAndYear", link.expiresAt().atZone(caller.zone()));
                    String state = opens ? speech.say("freeze.link.until", until)
                            : link.withdrawn() ? speech.say("freeze.link.withdrawn")
                            : speech.say("freeze.link.expired", until);
                    return new FrozenPage.Link(link.reader(), state,
                            opens ? address + "/" + link.linkId() + "/withdrawn" : "");
                }).toList();
        List<FormField.Option> terms = TERMS.stream().map(days -> new FormField.Option(Integer.toString(days),
                speech.say("freeze.link.days", days))).toList();
        return new FrozenPage.HandOver(address, UUID.randomUUID().toString(),
                form.textBox(READER, "freeze.link.reader"), form.choice(DAYS, "freeze.link.term", terms), made);
    }

    private FrozenPage page(DSLContext tx, Context ctx, Season season, FrozenVersion version, FormInput form) {
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
        return new FrozenPage(form.titled(speech.say("freeze.version.title", season.name(), version.version())),
                speech.say("freeze.version.title", season.name(), version.version()), address(season),
                season.name(), ctx.queryParamMap().containsKey(SAME) ? speech.say("freeze.nothing") : "",
                speech.say("freeze.version.lead",
                        speech.written("time.pattern.dateYearAndClock", version.at().atZone(ZoneOffset.UTC)),
                        version.by(), version.software()), files,
                version.version() == 1 ? "" : speech.say("freeze.changes.from", version.version() - 1),
                wording.changes(freezer.changesOf(tx, chapterId, season, version.version())), isLast,
                isLast ? wording.changes(freezer.changesSince(tx, chapterId, season, version.version(),
                        reads.summary(tx, chapterId, season))) : List.of(), address(season) + "/freeze",
                handOver(tx, ctx, season, version, form));
    }

    private static String address(Season season) {
        return "/season/" + season.code() + "/summary";
    }
}
