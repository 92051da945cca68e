package org.tankrounds.people;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.Optional;
import java.util.OptionalInt;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.ClassCardPage;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Pages;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/** A tank's class card, for those in charge of the tank: whether there is one, its print, its end. */
public final class CardHandlers {
    private static final String CARD = "card";
    private static final String CODE = "code";
    private static final int OUT_OF_DATE = 409;

    /** What the page needs to know. */
    private record Desk(Tank tank, Optional<ClassCard> newest) {}

    private final Transactions transactions;
    private final TankRepository tanks;
    private final ClassCards cards;
    private final DoorCards prints;
    private final Pages pages;
    private final Clock clock;

    public CardHandlers(Transactions transactions, TankRepository tanks, ClassCards cards, SiteAddress address,
            Pages pages, Clock clock) {
        this.transactions = transactions;
        this.tanks = tanks;
        this.cards = cards;
        this.prints = new DoorCards(address, pages::print);
        this.pages = pages;
        this.clock = clock;
    }

    public void show(Context ctx) {
        show(ctx, desk(ctx), false);
    }

    /**
     * The print comes with the answer and with nothing else. A page that is loaded anew sends its form again: that
     * names the card it replaces, which is not the one in use any more, so the print just made stays good.
     */
    public void make(Context ctx) {
        Caller caller = Caller.of(ctx);
        Desk desk = desk(ctx);
        Optional<CardCode> code = cards.make(
                caller.chapterId(), desk.tank(), cardId(ctx), caller.personId().orElseThrow());
        if (code.isEmpty()) {
            ctx.status(OUT_OF_DATE);
            show(ctx, desk(ctx), true);
            return;
        }
        pages.show(ctx, "people/door-card", prints.page(ctx, desk.tank(), code.get()));
    }

    public void revoke(Context ctx) {
        Caller caller = Caller.of(ctx);
        Desk desk = desk(ctx);
        cardId(ctx).ifPresent(cardId -> transactions.inChapter(caller.chapterId(),
                tx -> cards.revoke(tx, caller.chapterId(), desk.tank(), cardId)));
        ctx.redirect(ctx.path().replaceFirst("/revoked$", ""), HttpStatus.SEE_OTHER);
    }

    /** The same print as a file; the code comes from the page that shows it, since nothing else knows it. */
    public void paper(Context ctx) {
        Desk desk = desk(ctx);
        CardCode code = CardCode.of(Optional.ofNullable(ctx.formParam(CODE)).orElse(""))
                .orElseThrow(() -> RefusedException.of(422, Saying.of("cards.noCode")));
        if (!cards.isInUse(Caller.of(ctx).chapterId(), desk.tank(), code)) {
            ctx.status(OUT_OF_DATE);
            show(ctx, desk, true);
            return;
        }
        ctx.header("Content-Disposition", "attachment; filename=\"class-card-" + desk.tank().code() + ".pdf\"");
        ctx.contentType("application/pdf").result(prints.paper(ctx, prints.page(ctx, desk.tank(), code)));
    }

    private Desk desk(Context ctx) {
        Caller caller = Caller.of(ctx);
        return transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = tanks.get(tx, caller, ctx.pathParam("tank"));
            return new Desk(tank, cards.findNewest(tx, caller.chapterId(), tank.tankId()));
        });
    }

    private static OptionalInt cardId(Context ctx) {
        String text = Optional.ofNullable(ctx.formParam(CARD)).orElse("");
        return text.matches("[0-9]{1,9}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
    }

    private void show(Context ctx, Desk desk, boolean overtaken) {
        Speech speech = Speech.of(ctx);
        Formats formats = speech.formats(desk.tank().zone(), clock.instant());
        Optional<ClassCard> inUse = desk.newest().filter(ClassCard::inUse);
        String heading = speech.say(inUse.isPresent() ? "cards.inUse" : "cards.none");
        pages.show(ctx, "people/class-card", new ClassCardPage(speech.titled(overtaken, heading), heading,
                desk.tank().school() + ", " + desk.tank().classroom(), "/tanks/" + desk.tank().code(),
                inUse.map(card -> Integer.toString(card.cardId())).orElse(""),
                inUse.map(card -> made(card, formats)).orElse(""),
                inUse.flatMap(ClassCard::lastUsedAt).map(formats::moment).orElseGet(() -> speech.say("cards.never")),
                desk.newest().flatMap(ClassCard::revokedAt).map(formats::full).orElse(""), overtaken));
    }

    private static String made(ClassCard card, Formats formats) {
        String when = formats.full(card.createdAt());
        return card.madeBy().map(name -> formats.speech().say("cards.madeBy", when, name)).orElse(when);
    }
}
