package org.tankrounds.season;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.pages.FormPage;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Caller;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** Where a lot that was typed in by mistake is taken away, with the reason. */
public final class LotWithdrawalHandlers {
    private static final String REASON = "reason";

    private final Transactions transactions;
    private final SeasonReads reads;
    private final LotReceipts receipts;
    private final LotEdits edits;
    private final AfterChange afterChange;
    private final Pages pages;
    private final Clock clock;

    public LotWithdrawalHandlers(Transactions transactions, SeasonReads reads, LotReceipts receipts, LotEdits edits,
            AfterChange afterChange, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.receipts = receipts;
        this.edits = edits;
        this.afterChange = afterChange;
        this.pages = pages;
        this.clock = clock;
    }

    /** @param standing empty of one that was taken away already */
    private record Where(Season season, Tank tank, Optional<Lot> standing) {
        String count() {
            return "/season/" + season.code() + "/tanks/" + tank.code() + "/count";
        }
    }

    public void show(Context ctx) {
        Where where = load(ctx);
        if (where.standing().isEmpty()) {
            ctx.redirect(where.count(), HttpStatus.SEE_OTHER);
            return;
        }
        show(ctx, where, FormInput.showing(ctx, Map.of(REASON, "")));
    }

    /** One that was taken away before is taken away. */
    public void withdraw(Context ctx) {
        Where where = load(ctx);
        FormInput typed = FormInput.of(ctx, List.of(REASON));
        if (where.standing().isPresent()) {
            String reason = typed.required(REASON, 500, "count.lot.reason.none");
            if (typed.ok()) {
                take(ctx, where, where.standing().get().lotId(), reason)
                        .ifPresent(refusal -> typed.refuse(REASON, refusal));
            }
        }
        if (typed.ok()) {
            afterChange.changed(Caller.of(ctx).chapterId());
            ctx.redirect(where.count() + "?saved=lotWithdrawn", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, where, typed);
    }

    /** @return why it cannot be; then nothing is changed */
    private Optional<Saying> take(Context ctx, Where where, int lotId, String reason) {
        Caller caller = Caller.of(ctx);
        Instant now = clock.instant();
        return transactions.inChapter(caller.chapterId(), tx -> {
            edits.lock(tx, caller.chapterId(), lotId);
            reads.tanks().lock(tx, caller.chapterId(), List.of(where.tank().tankId()));
            Optional<Lot> standing = standing(tx, caller, where.season(), where.tank(), OptionalInt.of(lotId));
            if (standing.isEmpty()) {
                return Optional.empty();
            }
            CountBook book = new CountBook(reads, tx, caller.chapterId(), where.season(), now);
            Account with = book.account(where.tank());
            if (NeededEggs.stand(with, book.accountWithout(where.tank(), standing.get()), standing.get())) {
                return Optional.of(Saying.of("count.lot.needed", String.join(" · ", since(with, Speech.of(ctx)))));
            }
            edits.withdraw(tx, caller.chapterId(), standing.get(), caller.personId().orElseThrow(), reason, now);
            return Optional.empty();
        });
    }

    /** What is written down of the tank that took fish away or found them. */
    private static List<String> since(Account account, Speech speech) {
        Ledger ledger = account.ledger();
        List<String> parts = new ArrayList<>();
        add(parts, speech.say("count.figure.dead"), ledger.dead());
        add(parts, speech.say("count.figure.movedOut"), ledger.movedOut());
        add(parts, speech.say("count.figure.thinned"), ledger.thinned());
        add(parts, speech.say("count.figure.released"), ledger.released());
        account.lines().forEach(line -> {
            if (line.what() == Account.What.COUNTED) {
                parts.add(speech.say("count.line.counted", line.fish()));
            } else if (line.what() == Account.What.HATCHED) {
                parts.add(speech.say("count.line.hatched", line.fish()));
            }
        });
        return parts;
    }

    private static void add(List<String> parts, String name, int fish) {
        if (fish > 0) {
            parts.add(name + " " + fish);
        }
    }

    private Where load(Context ctx) {
        Caller caller = Caller.of(ctx);
        return transactions.inChapter(caller.chapterId(), tx -> {
            Season season = reads.seasons().get(tx, caller.chapterId(), ctx.pathParam("season"));
            Tank tank = reads.tanks().get(tx, caller, ctx.pathParam("tank"));
            OptionalInt lotId = TypedNumber.whole(ctx.pathParam("eggs"));
            Optional<Lot> standing = standing(tx, caller, season, tank, lotId);
            if (standing.isEmpty() && reads.lots().withdrawn(tx, caller.chapterId(), season.seasonId(), tank.tankId())
                    .stream().noneMatch(gone -> OptionalInt.of(gone.lot().lotId()).equals(lotId))) {
                throw new NotFoundException("lot");
            }
            if (standing.filter(lot -> receipts.lotIds(tx, caller.chapterId()).contains(lot.lotId())).isPresent()) {
                throw RefusedException.of(HttpStatus.CONFLICT.getCode(), Saying.of("count.lot.ofReceipt"));
            }
            return new Where(season, tank, standing);
        });
    }

    private Optional<Lot> standing(DSLContext tx, Caller caller, Season season, Tank tank, OptionalInt lotId) {
        return reads.lots().listOfTank(tx, caller.chapterId(), season.seasonId(), tank.tankId()).stream()
                .filter(lot -> OptionalInt.of(lot.lotId()).equals(lotId)).findFirst();
    }

    private void show(Context ctx, Where where, FormInput typed) {
        Lot lot = where.standing().orElseThrow();
        String tank = where.tank().school() + ", " + where.tank().classroom();
        String heading = typed.say("count.lot.title", lot.eggs(),
                typed.date(lot.receivedAt().atZone(where.tank().zone()).toLocalDate()), tank);
        pages.show(ctx, "form-page", new FormPage(typed.titled(heading), heading,
                List.of(new FormPage.Link(typed.say("count.of", tank), where.count())), typed.say("count.lot.lead"),
                where.count() + "/lots/" + lot.lotId() + "/withdrawn", typed.say("count.lot.save"), typed.shown(),
                List.of(new FormPage.Group(typed.say("count.lot.group"), "",
                        List.of(List.of(typed.textBox(REASON, "count.lot.reason")
                                .withHint(typed.say("count.lot.reason.hint")))))), List.of(), List.of()));
    }
}
