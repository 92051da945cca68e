package org.tankrounds.rounds;

import io.javalin.http.Context;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;

/** How it is worked out, for anybody. */
public final class HelpHandlers {
    private final Pages pages;

    public HelpHandlers(Pages pages) {
        this.pages = pages;
    }

    public void show(Context ctx) {
        pages.show(ctx, "help", new HelpPageMaker(Speech.of(ctx)).page());
    }
}
