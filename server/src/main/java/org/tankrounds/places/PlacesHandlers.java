package org.tankrounds.places;

import io.javalin.http.Context;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.PlacesPage;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;

/** The overview: every school with its rooms and tanks. */
public final class PlacesHandlers {
    private final Transactions transactions;
    private final PlaceReads reads;
    private final Pages pages;

    public PlacesHandlers(Transactions transactions, PlaceReads reads, Pages pages) {
        this.transactions = transactions;
        this.reads = reads;
        this.pages = pages;
    }

    public void show(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        PlacesPageMaker maker = new PlacesPageMaker(Speech.of(ctx));
        PlacesPage page = transactions.inChapter(chapterId, tx -> maker.overview(
                reads.schools().list(tx, chapterId),
                reads.tanks().listWithRetired(tx, chapterId),
                reads.kits().list(tx, chapterId)));
        pages.show(ctx, "places/overview", page);
    }
}
