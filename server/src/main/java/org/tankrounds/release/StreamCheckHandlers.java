package org.tankrounds.release;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import org.tankrounds.db.Transactions;
import org.tankrounds.readings.DeviceClock;
import org.tankrounds.readings.OutboxAnswers;
import org.tankrounds.web.Asked;
import org.tankrounds.web.Caller;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Role;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;

/** Looking at a stream, and what it tells. */
public final class StreamCheckHandlers {
    private final Transactions transactions;
    private final ReleaseReads reads;
    private final Pages pages;
    private final Clock clock;

    public StreamCheckHandlers(Transactions transactions, ReleaseReads reads, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.pages = pages;
        this.clock = clock;
    }

    public void showNew(Context ctx) {
        showForm(ctx, site(ctx), FormInput.showing(ctx, StreamCheckForm.blank()), UUID.randomUUID(),
                Speech.of(ctx).scale());
    }

    /** Stored once, however often the form comes and whichever way. */
    public void create(Context ctx) {
        if (OutboxAnswers.refuseAnothers(ctx)) {
            return;
        }
        Caller caller = Caller.of(ctx);
        Site site = site(ctx);
        UUID submission = Asked.submissionId(ctx.formParam(StreamCheckForm.SUBMISSION));
        FormInput form = FormInput.of(ctx, StreamCheckForm.NAMES);
        Instant filledIn = DeviceClock.takenAt(
                name -> Optional.ofNullable(ctx.formParam(name)).orElse(""), clock.instant());
        Optional<String> stored = StreamCheckForm.parse(form, site.siteId(), caller.zone(), filledIn)
                .flatMap(check -> store(caller, submission, check, form));
        if (OutboxAnswers.wanted(ctx)) {
            stored.ifPresentOrElse(at -> OutboxAnswers.stored(ctx, submission.toString(), at),
                    () -> OutboxAnswers.needsFixing(ctx, form.faults()));
        } else if (stored.isPresent()) {
            ctx.redirect(stored.get(), HttpStatus.SEE_OTHER);
        } else {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            showForm(ctx, site, form, submission, Scale.ofUnit(form.text(StreamCheckForm.SCALE)));
        }
    }

    /** @return where it is shown; empty where the same form stored something else before */
    private Optional<String> store(Caller caller, UUID submission, StreamCheck check, FormInput form) {
        return transactions.inChapter(caller.chapterId(), tx -> {
            reads.checks().lock(tx, caller.chapterId());
            Optional<StreamCheck> before =
                    reads.checks().writtenBy(tx, caller.chapterId(), check.siteId(), submission);
            if (before.filter(one -> !one.saysAs(check)).isPresent()) {
                form.refuse(StreamCheckForm.TEMPERATURE, "stream.used");
                return Optional.empty();
            }
            int checkId = before.map(StreamCheck::checkId).orElseGet(() -> reads.checks().add(
                    tx, caller.chapterId(), submission, check, caller.personId().orElseThrow()));
            return Optional.of("/release/sites/" + check.siteId() + "/checks/" + checkId);
        });
    }

    public void show(Context ctx) {
        Caller caller = Caller.of(ctx);
        Site site = site(ctx);
        StreamCheck check = transactions.inChapter(caller.chapterId(), tx -> reads.checks().get(
                tx, caller.chapterId(), site.siteId(), TypedNumber.whole(ctx.pathParam("streamCheck"))));
        Formats formats = Speech.of(ctx).formats(caller.zone(), clock.instant());
        pages.show(ctx, "release/stream", new StreamPages(site, formats).page(check,
                caller.role() == Role.COORDINATOR));
    }

    public void withdraw(Context ctx) {
        Caller caller = Caller.of(ctx);
        Site site = site(ctx);
        OptionalInt checkId = TypedNumber.whole(ctx.pathParam("streamCheck"));
        transactions.inChapter(caller.chapterId(), tx -> {
            reads.checks().list(tx, caller.chapterId(), site.siteId()).stream()
                    .filter(check -> check.checkId() == checkId.orElse(0)).findFirst()
                    .ifPresent(check -> reads.checks().withdraw(
                            tx, caller.chapterId(), check.checkId(), clock.instant()));
            return null;
        });
        ctx.redirect(site.address(), HttpStatus.SEE_OTHER);
    }

    private Site site(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        return transactions.inChapter(chapterId,
                tx -> reads.sites().get(tx, chapterId, TypedNumber.whole(ctx.pathParam("site"))));
    }

    private void showForm(Context ctx, Site site, FormInput form, UUID submission, Scale scale) {
        Formats formats = Speech.of(ctx).formats(Caller.of(ctx).zone(), clock.instant());
        pages.show(ctx, "release/stream-form", new StreamPages(site, formats).form(form, submission, scale));
    }
}
