package org.tankrounds.readings;

import io.javalin.http.Context;
import java.time.Clock;
import java.time.YearMonth;
import java.util.List;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.SheetPage;
import org.tankrounds.places.Kit;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Paper;
import org.tankrounds.web.Speech;

/** The log sheet: on a page that prints, and as a file. Nothing is filled in. */
public final class SheetHandlers {
    private record Desk(Tank tank, Kit kit) {}

    private final Transactions transactions;
    private final TankRepository tanks;
    private final KitRepository kits;
    private final Pages pages;
    private final Paper paper;
    private final Clock clock;

    public SheetHandlers(
            Transactions transactions, TankRepository tanks, KitRepository kits, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.tanks = tanks;
        this.kits = kits;
        this.pages = pages;
        this.paper = new Paper(pages::print);
        this.clock = clock;
    }

    public void show(Context ctx) {
        Desk desk = desk(ctx);
        pages.show(ctx, "paper/sheet", page(ctx, desk, month(ctx, desk)));
    }

    public void showPdf(Context ctx) {
        Desk desk = desk(ctx);
        SheetMonth month = month(ctx, desk);
        ctx.header("Content-Disposition",
                "attachment; filename=\"log-sheet-" + desk.tank().code() + "-" + month.month() + ".pdf\"");
        ctx.contentType("application/pdf").result(paper.write("paper/sheet-paper", page(ctx, desk, month),
                "/paper/sheet.css", Speech.of(ctx).language()));
    }

    private SheetMonth month(Context ctx, Desk desk) {
        return SheetMonth.of(ctx.queryParam(SheetMonth.MONTH), desk.tank(), clock.instant());
    }

    private Desk desk(Context ctx) {
        Caller caller = Caller.of(ctx);
        return transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = tanks.get(tx, caller, ctx.pathParam("tank"));
            return new Desk(tank, kits.get(tx, caller.chapterId(), tank.kitId()));
        });
    }

    private SheetPage page(Context ctx, Desk desk, SheetMonth month) {
        Tank tank = desk.tank();
        Formats formats = Speech.of(ctx).formats(tank.zone(), clock.instant());
        String tankTo = "/tanks/" + tank.code();
        String heading = formats.speech().say("paper.sheet.title", formats.month(month.month()));
        return new SheetPage(heading + ", " + tank.classroom(), heading, tank.school() + ", " + tank.classroom(),
                formats.month(month.month()), desk.kit().name(), tank.code(), tankTo,
                month.others(tankTo + "/sheet", formats), to(tankTo + "/sheet.pdf", month.month()),
                Caller.of(ctx).signedIn() ? to(tankTo + "/month", month.month()) : "",
                new SheetColumns(new LogBoxes(tank, desk.kit()), desk.kit(), formats.speech()).columns(),
                days(month, formats));
    }

    private static List<SheetPage.Day> days(SheetMonth month, Formats formats) {
        return month.days().stream()
                .map(day -> new SheetPage.Day(formats.weekdayAndDay(day), SheetMonth.isWeekend(day))).toList();
    }

    private static String to(String page, YearMonth month) {
        return page + "?" + SheetMonth.MONTH + "=" + month;
    }
}
