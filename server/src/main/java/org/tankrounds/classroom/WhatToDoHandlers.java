package org.tankrounds.classroom;

import io.javalin.http.Context;
import java.time.Clock;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.WhatToDoPage;
import org.tankrounds.places.Tank;
import org.tankrounds.rounds.TankToday;
import org.tankrounds.rounds.TanksToday;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Paper;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;

/** What to do if, for the wall: on a page that prints, and as a file. */
public final class WhatToDoHandlers {
    private final Transactions transactions;
    private final TanksToday tanks;
    private final Pages pages;
    private final Paper paper;
    private final Clock clock;

    public WhatToDoHandlers(Transactions transactions, TanksToday tanks, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.tanks = tanks;
        this.pages = pages;
        this.paper = new Paper(pages::print);
        this.clock = clock;
    }

    public void show(Context ctx) {
        pages.show(ctx, "paper/what-to-do", page(ctx));
    }

    public void showPdf(Context ctx) {
        byte[] pdf = paper.write(
                "paper/what-to-do-paper", page(ctx), "/paper/what-to-do.css", Speech.of(ctx).language());
        ctx.header("Content-Disposition", "attachment; filename=\"what-to-do-" + ctx.pathParam("tank") + ".pdf\"");
        ctx.contentType("application/pdf").result(pdf);
    }

    private WhatToDoPage page(Context ctx) {
        Caller caller = Caller.of(ctx);
        TankToday today = transactions.inChapter(caller.chapterId(),
                tx -> tanks.load(tx, caller, ctx.pathParam("tank"), clock.instant()));
        Speech speech = atTheTank(ctx, today.tank());
        return new WhatToDoPages(today, speech.formats(today.tank().zone(), clock.instant())).page();
    }

    /** On the thermometer's own scale, whoever prints it. */
    private static Speech atTheTank(Context ctx, Tank tank) {
        return new Speech(Speech.of(ctx).language(), Scale.ofUnit(tank.thermometerUnit()));
    }
}
