package org.tankrounds.release;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.FormPage;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Clashes;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Pages;
import org.tankrounds.web.TypedNumber;

/** Writing down what an agency allowed at a site, putting it right, and taking it back. */
public final class ApprovalHandlers {
    private static final String TAKEN = "release.approval.taken";

    private final Transactions transactions;
    private final ReleaseReads reads;
    private final Pages pages;
    private final Clock clock;

    public ApprovalHandlers(Transactions transactions, ReleaseReads reads, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.pages = pages;
        this.clock = clock;
    }

    /** @param approval empty of one that is about to be added */
    private record Where(Site site, Optional<Approval> approval) {
        String address() {
            return site.address() + "/approvals" + approval.map(known -> "/" + known.approvalId()).orElse("");
        }
    }

    public void showNew(Context ctx) {
        show(ctx, load(ctx), FormInput.showing(ctx, ApprovalForm.blank()), List.of());
    }

    public void create(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Where where = load(ctx);
        FormInput form = FormInput.of(ctx, ApprovalForm.LABELS.keySet());
        Optional<Approval.Details> details = ApprovalForm.parse(form);
        if (details.isPresent() && form.saves(() -> transactions.inChapter(chapterId,
                tx -> reads.approvals().add(tx, chapterId, where.site().siteId(), details.get())),
                ApprovalForm.NUMBER, TAKEN)) {
            ctx.redirect(where.site().address(), HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, where, form, List.of());
    }

    public void showEdit(Context ctx) {
        Where where = load(ctx);
        show(ctx, where, FormInput.showing(ctx, ApprovalForm.textOf(where.approval().orElseThrow().details())),
                List.of());
    }

    public void update(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Where where = load(ctx);
        FormInput form = FormInput.of(ctx, ApprovalForm.LABELS.keySet());
        Optional<Approval.Details> details = ApprovalForm.parse(form);
        Clashes clashes = new Clashes(form, ApprovalForm.LABELS);
        boolean saved = details.isPresent() && form.saves(() -> transactions.inChapter(chapterId, tx -> {
            Approval current = lock(tx, ctx, where);
            if (!clashes.with(ApprovalForm.textOf(current.details()))) {
                reads.approvals().update(tx, chapterId, current.approvalId(), details.get());
            }
            return null;
        }), ApprovalForm.NUMBER, TAKEN);
        if (saved && clashes.found().isEmpty()) {
            ctx.redirect(where.site().address(), HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(clashes.status());
        show(ctx, where, form, clashes.found());
    }

    public void withdraw(Context ctx) {
        Caller caller = Caller.of(ctx);
        Where where = load(ctx);
        transactions.inChapter(caller.chapterId(), tx -> {
            reads.approvals().withdraw(tx, caller.chapterId(), lock(tx, ctx, where).approvalId(),
                    caller.personId().orElseThrow(), clock.instant());
            return null;
        });
        ctx.redirect(where.site().address(), HttpStatus.SEE_OTHER);
    }

    /** Whatever hangs on a site's approvals is decided behind the site's lock. */
    private Approval lock(DSLContext tx, Context ctx, Where where) {
        int chapterId = Caller.of(ctx).chapterId();
        reads.sites().lock(tx, chapterId, TypedNumber.whole(ctx.pathParam("site")));
        return reads.approvals().get(tx, chapterId, where.site().siteId(),
                TypedNumber.whole(ctx.pathParam("approval")));
    }

    private Where load(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        return transactions.inChapter(chapterId, tx -> {
            Site site = reads.sites().get(tx, chapterId, TypedNumber.whole(ctx.pathParam("site")));
            return new Where(site, ctx.pathParamMap().containsKey("approval") ? Optional.of(reads.approvals().get(
                    tx, chapterId, site.siteId(), TypedNumber.whole(ctx.pathParam("approval")))) : Optional.empty());
        });
    }

    private void show(Context ctx, Where where, FormInput form, List<FormPage.Clash> clashes) {
        String heading = where.approval()
                .map(known -> form.say("release.approval.named", known.number(), where.site().name()))
                .orElseGet(() -> form.say("release.approval.addAt", where.site().name()));
        List<FormPage.Act> acts = where.approval().filter(known -> known.withdrawnAt().isEmpty())
                .map(known -> new FormPage.Act(form.say("release.approval.withdraw"),
                        form.say("release.approval.withdraw.what"), where.address() + "/withdrawn",
                        form.say("release.approval.withdraw.do")))
                .map(List::of).orElseGet(List::of);
        pages.show(ctx, "form-page", new FormPage(form.titled(heading), heading,
                List.of(new FormPage.Link(form.say("release.door"), "/release"),
                        new FormPage.Link(where.site().name(), where.site().address())),
                form.say("release.notThePermit"), where.address(),
                form.say(where.approval().isPresent() ? "frame.form.save" : "release.approval.addThis"), form.shown(),
                ApprovalForm.groups(form), clashes, acts));
    }
}
