package org.tankrounds.people;

import io.javalin.http.Context;
import org.tankrounds.pages.DoorCardPage;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Paper;
import org.tankrounds.web.QrPicture;
import org.tankrounds.web.Speech;

/** A class card as it is printed and hung up: on a page, and as a file. */
final class DoorCards {
    private final SiteAddress address;
    private final Paper paper;

    DoorCards(SiteAddress address, Paper.Printer printer) {
        this.address = address;
        this.paper = new Paper(printer);
    }

    DoorCardPage page(Context ctx, Tank tank, CardCode code) {
        String typed = address.of(ctx, "/card");
        return new DoorCardPage(Speech.of(ctx).say("cards.title", tank.classroom()), tank.school(), tank.classroom(),
                "/tanks/" + tank.code() + "/card", QrPicture.of(address.of(ctx, "/card/" + code.text())),
                code.shown(), typed.replaceFirst("^https?://", ""), SiteAddress.isThisMachineOnly(typed));
    }

    byte[] paper(Context ctx, DoorCardPage page) {
        return paper.write("people/door-card-paper", page, "/paper/door-card.css", Speech.of(ctx).language());
    }
}
