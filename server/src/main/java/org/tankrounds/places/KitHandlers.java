package org.tankrounds.places;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.FormPage;
import org.tankrounds.pages.KitsPage;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Clashes;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;

/** The chapter's kits: how its test cards are read. */
public final class KitHandlers {
    private static final String TAKEN = "places.kit.taken";

    private final Transactions transactions;
    private final PlaceReads reads;
    private final Pages pages;

    public KitHandlers(Transactions transactions, PlaceReads reads, Pages pages) {
        this.transactions = transactions;
        this.reads = reads;
        this.pages = pages;
    }

    public void show(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        PlacesPageMaker maker = new PlacesPageMaker(Speech.of(ctx));
        KitsPage page = transactions.inChapter(chapterId, tx -> maker.kits(
                reads.kits().list(tx, chapterId), reads.tanks().listWithRetired(tx, chapterId)));
        pages.show(ctx, "places/kits", page);
    }

    /** Starts from a copy of the kit named in the query, or from the generic profile. */
    public void showNew(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Kit like = Optional.ofNullable(ctx.queryParam("like"))
                .flatMap(name -> transactions.inChapter(chapterId, tx -> reads.kits().find(tx, chapterId, name)))
                .orElse(new Kit(0, "", GenericKit.SCALES));
        Map<String, String> text = new LinkedHashMap<>(KitForm.textOf(like));
        text.put(KitForm.NAME, "");
        showForm(ctx, Optional.empty(), FormInput.showing(ctx, text), List.of());
    }

    public void create(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        FormInput form = FormInput.of(ctx, KitForm.LABELS.keySet());
        Optional<Kit> kit = KitForm.parse(form, 0);
        if (kit.isPresent() && form.saves(() -> transactions.inChapter(chapterId,
                tx -> reads.kits().add(tx, chapterId, kit.get().name(), kit.get().scales())), KitForm.NAME, TAKEN)) {
            ctx.redirect("/places/kits", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        showForm(ctx, Optional.empty(), form, List.of());
    }

    public void showEdit(Context ctx) {
        Kit kit = load(ctx);
        showForm(ctx, Optional.of(kit), FormInput.showing(ctx, KitForm.textOf(kit)), List.of());
    }

    public void update(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Kit kit = load(ctx);
        FormInput form = FormInput.of(ctx, KitForm.LABELS.keySet());
        Optional<Kit> typed = KitForm.parse(form, kit.kitId());
        Clashes clashes = new Clashes(form, KitForm.LABELS);
        boolean saved = typed.isPresent() && form.saves(() -> transactions.inChapter(chapterId,
                tx -> store(tx, chapterId, typed.get(), clashes)), KitForm.NAME, TAKEN);
        if (saved && clashes.found().isEmpty()) {
            ctx.redirect("/places/kits", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(clashes.status());
        showForm(ctx, Optional.of(kit), form, clashes.found());
    }

    private Void store(DSLContext tx, int chapterId, Kit typed, Clashes clashes) {
        reads.kits().lock(tx, chapterId, typed.kitId());
        if (!clashes.with(KitForm.textOf(reads.kits().get(tx, chapterId, typed.kitId())))) {
            reads.kits().update(tx, chapterId, typed);
        }
        return null;
    }

    /** The kit is named in the query: its name is the chapter's own and may contain anything. */
    private Kit load(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        return Optional.ofNullable(ctx.queryParam("kit"))
                .flatMap(name -> transactions.inChapter(chapterId, tx -> reads.kits().find(tx, chapterId, name)))
                .orElseThrow(() -> new NotFoundException("kit"));
    }

    private void showForm(Context ctx, Optional<Kit> kit, FormInput form, List<FormPage.Clash> clashes) {
        String heading = kit.map(Kit::name).orElseGet(() -> form.say("places.kit.add"));
        pages.show(ctx, "form-page", new FormPage(
                form.titled(heading), heading, List.of(Trails.places(form), Trails.kits(form)),
                kit.isPresent() ? form.say("places.kit.oldReadings") : "",
                kit.map(known -> Addresses.kit(known.name())).orElse("/places/kits"),
                form.say(kit.isPresent() ? "frame.form.save" : "places.kit.addThis"), form.shown(),
                KitForm.groups(form), clashes, List.of()));
    }
}
