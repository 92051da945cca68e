package org.tankrounds.season;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.pages.FormPage;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Asked;
import org.tankrounds.web.Caller;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;

/** Where somebody says what a day's dead of a tank are put down to. */
public final class DeathHandlers {
    private static final String CAUSE = "cause";

    private final Transactions transactions;
    private final SeasonReads reads;
    private final Pages pages;
    private final Clock clock;

    public DeathHandlers(Transactions transactions, SeasonReads reads, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.pages = pages;
        this.clock = clock;
    }

    private record Where(Season season, Tank tank, LocalDate day, Optional<DeathCause> said) {
        String count() {
            return "/season/" + season.code() + "/tanks/" + tank.code() + "/count";
        }
    }

    public void show(Context ctx) {
        Where where = load(ctx);
        show(ctx, where, FormInput.showing(ctx, Map.of(CAUSE, where.said().map(DeathCause::code).orElse(""))));
    }

    /** The newest word stands; none takes it back. */
    public void update(Context ctx) {
        Where where = load(ctx);
        Caller caller = Caller.of(ctx);
        FormInput form = FormInput.of(ctx, List.of(CAUSE));
        Optional<DeathCause> cause = DeathCause.ofCode(form.text(CAUSE));
        if (cause.isEmpty() && !form.text(CAUSE).isEmpty()) {
            form.refuse(CAUSE, "count.cause.unknown");
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, where, form);
            return;
        }
        transactions.inChapter(caller.chapterId(), tx -> {
            reads.causes().put(tx, caller.chapterId(), where.tank().tankId(), where.day(), cause,
                    caller.personId().orElseThrow(), clock.instant());
            return null;
        });
        ctx.redirect(where.count() + "?saved=written", HttpStatus.SEE_OTHER);
    }

    private void show(Context ctx, Where where, FormInput form) {
        String tank = where.tank().school() + ", " + where.tank().classroom();
        List<Option> options = new ArrayList<>(List.of(new Option("", form.say("count.cause.none"))));
        Arrays.stream(DeathCause.values())
                .forEach(cause -> options.add(new Option(cause.code(), form.say("count.cause." + cause.code()))));
        String heading = form.say("count.cause.title", form.date(where.day()), tank);
        pages.show(ctx, "form-page", new FormPage(form.titled(heading), heading,
                List.of(new FormPage.Link(form.say("count.of", tank), where.count())), "",
                where.count() + "/deaths/" + where.day(), form.say("count.cause.save"), form.shown(),
                List.of(new FormPage.Group(form.say("count.cause.group"), "", form.say("count.cause.caution"),
                        List.of(List.of(form.choice(CAUSE, "count.cause", options))))), List.of(), List.of()));
    }

    private Where load(Context ctx) {
        Caller caller = Caller.of(ctx);
        LocalDate day = Asked.day(ctx);
        return transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = reads.tanks().get(tx, caller, ctx.pathParam("tank"));
            Season season = reads.seasons().get(tx, caller.chapterId(), ctx.pathParam("season"));
            if (!season.details().holds(day)) {
                throw new NotFoundException("day");
            }
            return new Where(season, tank, day, Optional.ofNullable(
                    reads.causes().list(tx, caller.chapterId(), tank.tankId()).get(day)));
        });
    }
}
