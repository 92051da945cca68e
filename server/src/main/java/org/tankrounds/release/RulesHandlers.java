package org.tankrounds.release;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.FormPage;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Clashes;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Pages;

/** Setting the chapter's rules for days at the water. */
public final class RulesHandlers {
    private final Transactions transactions;
    private final RulesRepository rules;
    private final Pages pages;

    public RulesHandlers(Transactions transactions, RulesRepository rules, Pages pages) {
        this.transactions = transactions;
        this.rules = rules;
        this.pages = pages;
    }

    public void show(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Optional<Rules> known = transactions.inChapter(chapterId, tx -> rules.find(tx, chapterId));
        show(ctx, FormInput.showing(ctx, RulesForm.textOf(known)), List.of());
    }

    public void update(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        FormInput form = FormInput.of(ctx, RulesForm.LABELS.keySet());
        Optional<Rules> typed = RulesForm.parse(form);
        Clashes clashes = new Clashes(form, RulesForm.LABELS);
        boolean saved = typed.isPresent() && transactions.inChapter(chapterId, tx -> {
            if (clashes.with(RulesForm.textOf(rules.lock(tx, chapterId)))) {
                return false;
            }
            rules.put(tx, chapterId, typed.get());
            return true;
        });
        if (saved) {
            ctx.redirect("/release", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(clashes.status());
        show(ctx, form, clashes.found());
    }

    private void show(Context ctx, FormInput form, List<FormPage.Clash> clashes) {
        String heading = form.say("release.rules.title");
        pages.show(ctx, "form-page", new FormPage(form.titled(heading), heading,
                List.of(new FormPage.Link(form.say("release.door"), "/release")), form.say("release.rules.lead"),
                "/release/rules", form.say("frame.form.save"), form.shown(), RulesForm.groups(form), clashes,
                List.of()));
    }
}
