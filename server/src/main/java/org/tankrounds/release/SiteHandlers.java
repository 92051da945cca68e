package org.tankrounds.release;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.FormPage;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Clashes;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Pages;
import org.tankrounds.web.TypedNumber;

/** Adding and editing release sites. */
public final class SiteHandlers {
    private static final String TAKEN = "release.site.taken";

    private final Transactions transactions;
    private final ReleaseReads reads;
    private final Pages pages;

    public SiteHandlers(Transactions transactions, ReleaseReads reads, Pages pages) {
        this.transactions = transactions;
        this.reads = reads;
        this.pages = pages;
    }

    public void showNew(Context ctx) {
        show(ctx, Optional.empty(), FormInput.showing(ctx, SiteForm.blank()), List.of());
    }

    public void create(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        FormInput form = FormInput.of(ctx, SiteForm.LABELS.keySet());
        Optional<Site.Details> details = SiteForm.parse(form);
        AtomicInteger siteId = new AtomicInteger();
        if (details.isPresent() && form.saves(() -> siteId.set(transactions.inChapter(chapterId,
                tx -> reads.sites().add(tx, chapterId, details.get()))), SiteForm.NAME, TAKEN)) {
            ctx.redirect("/release/sites/" + siteId.get(), HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, Optional.empty(), form, List.of());
    }

    public void showEdit(Context ctx) {
        Site site = load(ctx);
        show(ctx, Optional.of(site), FormInput.showing(ctx, SiteForm.textOf(site.details())), List.of());
    }

    public void update(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Site site = load(ctx);
        FormInput form = FormInput.of(ctx, SiteForm.LABELS.keySet());
        Optional<Site.Details> details = SiteForm.parse(form);
        Clashes clashes = new Clashes(form, SiteForm.LABELS);
        boolean saved = details.isPresent() && form.saves(() -> transactions.inChapter(chapterId, tx -> {
            Site current = reads.sites().lock(tx, chapterId, TypedNumber.whole(ctx.pathParam("site")));
            if (!clashes.with(SiteForm.textOf(current.details()))) {
                reads.sites().update(tx, chapterId, current.siteId(), details.get());
            }
            return null;
        }), SiteForm.NAME, TAKEN);
        if (saved && clashes.found().isEmpty()) {
            ctx.redirect(site.address(), HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(clashes.status());
        show(ctx, Optional.of(site), form, clashes.found());
    }

    private Site load(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        return transactions.inChapter(chapterId,
                tx -> reads.sites().get(tx, chapterId, TypedNumber.whole(ctx.pathParam("site"))));
    }

    private void show(Context ctx, Optional<Site> site, FormInput form, List<FormPage.Clash> clashes) {
        String heading = site.map(Site::name).orElseGet(() -> form.say("release.site.add"));
        FormPage.Link up = site.map(known -> new FormPage.Link(known.name(), known.address()))
                .orElseGet(() -> new FormPage.Link(form.say("release.door"), "/release"));
        pages.show(ctx, "form-page", new FormPage(form.titled(heading), heading, List.of(up), "",
                site.map(Site::address).orElse("/release/sites"),
                form.say(site.isPresent() ? "frame.form.save" : "release.site.addThis"), form.shown(),
                SiteForm.groups(form), clashes, List.of()));
    }
}
