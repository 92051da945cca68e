package org.tankrounds.release;

import io.javalin.http.Context;
import java.time.Clock;
import org.tankrounds.db.Transactions;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;

/** The page of all that has to do with releases, and the page of a site. */
public final class ReleaseHandlers {
    private final Transactions transactions;
    private final ReleaseReads reads;
    private final Pages pages;
    private final Clock clock;

    public ReleaseHandlers(Transactions transactions, ReleaseReads reads, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.pages = pages;
        this.clock = clock;
    }

    public void show(Context ctx) {
        Caller caller = Caller.of(ctx);
        pages.show(ctx, "release/release", transactions.inChapter(caller.chapterId(),
                tx -> new ReleasePages(reads, tx, caller, Speech.of(ctx).formats(caller.zone(), clock.instant()))
                        .overview()));
    }

    public void showSite(Context ctx) {
        Caller caller = Caller.of(ctx);
        pages.show(ctx, "release/site", transactions.inChapter(caller.chapterId(), tx -> {
            Site site = reads.sites().get(tx, caller.chapterId(), TypedNumber.whole(ctx.pathParam("site")));
            return new ReleasePages(reads, tx, caller, Speech.of(ctx).formats(caller.zone(), clock.instant()))
                    .site(site);
        }));
    }
}
