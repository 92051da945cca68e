package org.tankrounds.release;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.Optional;
import java.util.Set;
import org.tankrounds.db.Transactions;
import org.tankrounds.release.CheckAnswer.Word;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Role;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;

/** A plan's page, and what was looked at before it goes ahead. */
public final class PlanPageHandlers {
    private static final String SAVED = "saved";
    private static final String WAS = "was_";
    private static final Set<String> RECEIPTS = Set.of("checked", "released");

    private final Transactions transactions;
    private final ReleaseReads reads;
    private final Pages pages;
    private final Clock clock;

    public PlanPageHandlers(Transactions transactions, ReleaseReads reads, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.pages = pages;
        this.clock = clock;
    }

    public void show(Context ctx) {
        Caller caller = Caller.of(ctx);
        Formats formats = Speech.of(ctx).formats(caller.zone(), clock.instant());
        String saved = Optional.ofNullable(ctx.queryParam(SAVED)).filter(RECEIPTS::contains).orElse("");
        pages.show(ctx, "release/plan", transactions.inChapter(caller.chapterId(), tx -> {
            PlanFacts facts = new PlanFacts(reads, tx, caller, clock.instant());
            ReleaseJudge.Facts known = facts.of(facts.known(
                    reads.plans().get(tx, caller.chapterId(), TypedNumber.whole(ctx.pathParam("plan")))));
            Site site = reads.sites().list(tx, caller.chapterId()).stream()
                    .filter(one -> one.siteId() == known.approval().siteId()).findFirst().orElseThrow();
            return new PlanPages(known, site, caller.zone(), formats)
                    .page(facts.own(), caller.role() == Role.COORDINATOR, saved);
        }));
    }

    /** Only what was answered otherwise than the page showed: what others answered meanwhile stays. */
    public void check(Context ctx) {
        Caller caller = Caller.of(ctx);
        String address = transactions.inChapter(caller.chapterId(), tx -> {
            ReleasePlan plan = new PlanFacts(reads, tx, caller, clock.instant()).known(
                    reads.plans().get(tx, caller.chapterId(), TypedNumber.whole(ctx.pathParam("plan"))));
            for (CheckLine line : CheckLine.values()) {
                answered(ctx, line).ifPresent(word -> reads.plans().answer(tx, caller.chapterId(), plan.planId(), line,
                        word, caller.personId().orElseThrow(), clock.instant()));
            }
            return plan.address();
        });
        ctx.redirect(address + "?" + SAVED + "=checked", HttpStatus.SEE_OTHER);
    }

    private static Optional<Word> answered(Context ctx, CheckLine line) {
        return Optional.ofNullable(ctx.formParam(line.code())).flatMap(Word::ofCode)
                .filter(word -> !word.code().equals(ctx.formParam(WAS + line.code())));
    }
}
