package org.tankrounds.rounds;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.tankrounds.behaviour.LookRepository;
import org.tankrounds.breaks.BreakWatches;
import org.tankrounds.db.Transactions;
import org.tankrounds.eggday.EggDayDoor;
import org.tankrounds.pages.FormPage;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Assets;
import org.tankrounds.web.Caller;
import org.tankrounds.web.ETags;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;

/** The rounds on screen and on paper. A request reads one forecast a tank and the names of places, no history. */
public final class RoundsHandlers {
    private static final String FOR_THE_CAR = "car";
    private static final String PAST = "asOf";

    private final Transactions transactions;
    private final Clock clock;
    private final TankRepository tanks;
    private final ForecastRepository forecasts;
    private final LookRepository looks;
    private final BreakWatches breaks;
    private final EggDayDoor eggDays;
    private final RoundsVersions versions;
    private final PastMornings mornings;
    private final Pages pages;
    private final String build;

    public RoundsHandlers(
            Transactions transactions, Clock clock, TankRepository tanks, ForecastRepository forecasts,
            LookRepository looks, BreakWatches breaks, EggDayDoor eggDays, RoundsVersions versions,
            PastMornings mornings, Pages pages, Assets assets) {
        this.transactions = transactions;
        this.clock = clock;
        this.tanks = tanks;
        this.forecasts = forecasts;
        this.looks = looks;
        this.breaks = breaks;
        this.eggDays = eggDays;
        this.versions = versions;
        this.mornings = mornings;
        this.pages = pages;
        this.build = assets.build();
    }

    public void show(Context ctx) {
        if (ctx.queryParam(PAST) == null) {
            showNow(ctx);
        } else {
            showPast(ctx);
        }
    }

    private void showPast(Context ctx) {
        Caller caller = Caller.of(ctx);
        Instant now = clock.instant();
        try {
            Morning morning = Morning.of(ctx.queryParam(PAST), caller.zone(), now);
            PastMornings.Loaded loaded = transactions.inChapter(caller.chapterId(),
                    tx -> mornings.load(tx, caller.chapterId(), morning, now));
            pages.show(ctx, "rounds/morning",
                    new MorningPages(morning, Speech.of(ctx), now).page(loaded, mornings.workOut(loaded, now)));
        } catch (Morning.NoSuchMorning e) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            pages.show(ctx, "rounds/morning",
                    new MorningPages(Morning.latest(caller.zone(), now), Speech.of(ctx), now)
                            .refused(ctx.queryParam(PAST), e));
        }
    }

    private void showNow(Context ctx) {
        Caller caller = Caller.of(ctx);
        Instant now = clock.instant();
        boolean forTheCar = FOR_THE_CAR.equals(ctx.queryParam("for"));
        Function<DSLContext, Optional<Board>> unlessKnown = tx -> {
            // The page shows the time to the minute and belongs to one session.
            String tag = ETags.of(versions.get(tx, caller.chapterId()), caller.chapterId(), caller.role(),
                    caller.personId(), caller.formToken(), Speech.of(ctx), build,
                    now.truncatedTo(ChronoUnit.MINUTES), forTheCar);
            return ETags.isKnown(ctx, tag) ? Optional.empty() : Optional.of(board(tx, caller));
        };
        Optional<Board> board = transactions.inChapter(caller.chapterId(), unlessKnown);
        if (board.isEmpty()) {
            ctx.status(304);
            return;
        }
        RoundsPages maker = new RoundsPages(Speech.of(ctx).formats(caller.zone(), now));
        pages.show(ctx, forTheCar ? "rounds/car" : "rounds/board", maker.page(board.get(),
                ctx.res().getHeader("ETag"), MorningPages.to(Morning.latest(caller.zone(), now).before()),
                doors(ctx, caller, now)));
    }

    /** To what is near and concerns several tanks. */
    private List<FormPage.Link> doors(Context ctx, Caller caller, Instant now) {
        return transactions.inChapter(caller.chapterId(),
                        tx -> eggDays.find(tx, caller.chapterId(), LocalDate.ofInstant(now, caller.zone()))).stream()
                .map(door -> new FormPage.Link(Speech.of(ctx).say("eggday.named",
                        Speech.of(ctx).written("time.pattern.date", door.day())), door.to())).toList();
    }

    private Board board(DSLContext tx, Caller caller) {
        Map<Integer, TankForecast> byTank = forecasts.list(tx, caller.chapterId()).stream()
                .collect(Collectors.toMap(TankForecast::tankId, Function.identity()));
        Instant now = clock.instant();
        List<Tank> all = tanks.list(tx, caller);
        return Board.of(all, byTank, looks.lately(tx, caller.chapterId(), now),
                breaks.next(tx, caller.chapterId(), all, now));
    }
}
