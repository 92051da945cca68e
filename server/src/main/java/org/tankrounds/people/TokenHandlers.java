package org.tankrounds.people;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.pages.HandOverPage;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Caller;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;

/** Tokens for probes and scripts, for coordinators. */
public final class TokenHandlers {
    private static final Logger LOG = LoggerFactory.getLogger(TokenHandlers.class);
    private static final String LABEL = "label";
    private static final String OPENS = "opens";
    private static final String WHOLE_CHAPTER = "chapter";

    private final Transactions transactions;
    private final TokenRepository tokens;
    private final TankRepository tanks;
    private final Pages pages;
    private final Clock clock;

    public TokenHandlers(
            Transactions transactions, TokenRepository tokens, TankRepository tanks, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.tokens = tokens;
        this.tanks = tanks;
        this.pages = pages;
        this.clock = clock;
    }

    public void list(Context ctx) {
        show(ctx, FormInput.showing(ctx, Map.of(LABEL, "", OPENS, "")));
    }

    public void issue(Context ctx) {
        Caller caller = Caller.of(ctx);
        FormInput form = FormInput.of(ctx, List.of(LABEL, OPENS));
        String label = form.required(LABEL, 80, "people.token.noLabel");
        if (form.text(OPENS).isEmpty()) {
            form.refuse(OPENS, "people.token.noTank");
        }
        if (!form.ok()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, form);
            return;
        }
        TokenRepository.Issued issued = transactions.inChapter(caller.chapterId(), tx -> tokens.issue(
                tx, caller.chapterId(), opens(tx, caller, form.text(OPENS)), label, clock.instant()));
        LOG.info("token {} of chapter {} was issued by person {}",
                issued.tokenId(), caller.chapterId(), caller.personId().orElseThrow());
        pages.show(ctx, "people/hand-over", new HandOverPage(form.say("people.token.handOver", label),
                form.say("people.token.handOver.explanation"),
                form.say("people.token"), issued.secret(), "/tokens", form.say("people.token.back")));
    }

    public void revoke(Context ctx) {
        Caller caller = Caller.of(ctx);
        int tokenId = number(ctx.pathParam("token"));
        boolean known = transactions.inChapter(caller.chapterId(), tx -> {
            tokens.revoke(tx, caller.chapterId(), tokenId, clock.instant());
            return tokens.list(tx, caller.chapterId()).stream().anyMatch(token -> token.tokenId() == tokenId);
        });
        if (!known) {
            throw new NotFoundException("token");
        }
        LOG.info("token {} of chapter {} was revoked by person {}",
                tokenId, caller.chapterId(), caller.personId().orElseThrow());
        ctx.redirect("/tokens", HttpStatus.SEE_OTHER);
    }

    private OptionalInt opens(DSLContext tx, Caller caller, String choice) {
        return choice.equals(WHOLE_CHAPTER)
                ? OptionalInt.empty() : OptionalInt.of(tanks.get(tx, caller, choice).tankId());
    }

    private static int number(String text) {
        if (!text.matches("[0-9]{1,9}")) {
            throw new NotFoundException("token");
        }
        return Integer.parseInt(text);
    }

    private void show(Context ctx, FormInput form) {
        Caller caller = Caller.of(ctx);
        pages.show(ctx, "people/tokens", transactions.inChapter(caller.chapterId(), tx -> {
            List<Tank> all = tanks.list(tx, caller);
            return new TokenPages(Speech.of(ctx).formats(caller.zone(), clock.instant()))
                    .list(tokens.list(tx, caller.chapterId()), all, form.titled(form.say("people.tokens")),
                            form.textBox(LABEL, "people.token.label").withHint(form.say("people.token.label.hint")),
                            form.choice(OPENS, "people.token.opens", options(form, all)));
        }));
    }

    private static List<Option> options(FormInput form, List<Tank> all) {
        List<Option> options = new ArrayList<>();
        options.add(new Option("", form.say("people.token.choose")));
        all.forEach(tank -> options.add(new Option(tank.code(), PersonPages.label(tank) + " (" + tank.code() + ")")));
        options.add(new Option(WHOLE_CHAPTER, form.say("people.token.everyTank")));
        return options;
    }
}
