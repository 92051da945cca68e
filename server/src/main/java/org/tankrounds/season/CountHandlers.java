package org.tankrounds.season;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.fish.Stage;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.pages.FormPage;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Asked;
import org.tankrounds.web.Caller;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Formats;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Role;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;
import org.tankrounds.words.Saying;

/** The count of a tank's fish in a season: shown as it ran, and written down. */
public final class CountHandlers {
    private static final String SAVED = "saved";
    private static final String FORM = "form";
    private static final String ASKED = "asked";
    private static final Pattern ENTRIES = Pattern.compile("[0-9,]{1,1000}");
    private static final Set<String> RECEIPTS = Set.of("written", "withdrawn", "lotWithdrawn");

    private final Transactions transactions;
    private final SeasonReads reads;
    private final LotReceipts receipts;
    private final DirtyTanks dirtyTanks;
    private final AfterChange afterChange;
    private final Pages pages;
    private final Clock clock;

    public CountHandlers(Transactions transactions, SeasonReads reads, LotReceipts receipts, DirtyTanks dirtyTanks,
            AfterChange afterChange, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.receipts = receipts;
        this.dirtyTanks = dirtyTanks;
        this.afterChange = afterChange;
        this.pages = pages;
        this.clock = clock;
    }

    /**
     * What every page of a count stands on.
     *
     * @param others tanks that fish can be moved to by whoever asks
     */
    private record Where(Season season, Tank tank, List<Tank> others) {
        String address() {
            return "/season/" + season.code() + "/tanks/" + tank.code() + "/count";
        }
    }

    /**
     * What a form carries along unseen.
     *
     * @param asked what its writer was asked about: the entries of a release, else the number that is hard to believe;
     *         empty for none
     */
    private record Hidden(UUID submission, String asked) {
        String query() {
            return "?" + FORM + "=" + submission + (asked.isEmpty() ? "" : "&" + ASKED + "=" + asked);
        }
    }

    /** @param asked what was asked about, now or before; empty for none */
    private record Refusal(Saying why, String asked) {}

    /** The tank's count in the season that runs today, else in the newest; where there is none, where one is added. */
    public void showCurrent(Context ctx) {
        Caller caller = Caller.of(ctx);
        String to = transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = reads.tanks().get(tx, caller, ctx.pathParam("tank"));
            LocalDate today = clock.instant().atZone(tank.zone()).toLocalDate();
            return Season.runningOn(today, reads.seasons().list(tx, caller.chapterId()))
                    .map(season -> new Where(season, tank, List.of()).address())
                    .orElse(caller.role() == Role.COORDINATOR ? "/season" : "/tanks/" + tank.code());
        });
        ctx.redirect(to, HttpStatus.SEE_OTHER);
    }

    public void show(Context ctx) {
        Caller caller = Caller.of(ctx);
        String saved = Optional.ofNullable(ctx.queryParam(SAVED)).filter(RECEIPTS::contains).orElse("");
        pages.show(ctx, "season/count", transactions.inChapter(caller.chapterId(), tx -> {
            Where where = where(tx, ctx);
            CountPages.Eggs eggs = new CountPages.Eggs(receipts.lotIds(tx, caller.chapterId()), reads.lots().withdrawn(
                    tx, caller.chapterId(), where.season().seasonId(), where.tank().tankId()));
            return new CountPages(where.season(), where.tank(),
                    reads.causes().list(tx, caller.chapterId(), where.tank().tankId()), eggs,
                    reads.tanks().listWithRetired(tx, caller.chapterId()),
                    Speech.of(ctx).formats(where.tank().zone(), clock.instant()))
                    .page(book(tx, ctx, where).account(where.tank()), where.address(), caller.role(),
                            !where.others().isEmpty(), saved);
        }));
    }

    public void showNew(Context ctx) {
        Where where = load(ctx);
        CountForm form = form(ctx, where);
        show(ctx, where, form, FormInput.showing(ctx, form.blank()), new Hidden(UUID.randomUUID(), ""));
    }

    public void create(Context ctx) {
        Where where = load(ctx);
        CountForm form = form(ctx, where);
        UUID submission = Asked.submissionId(ctx.queryParam(FORM));
        String answered = Optional.ofNullable(ctx.queryParam(ASKED)).filter(text -> ENTRIES.matcher(text).matches())
                .orElse("");
        FormInput typed = FormInput.of(ctx, CountForm.NAMES);
        Optional<Refusal> refusal =
                form.parse(typed).flatMap(entry -> write(ctx, where, submission, entry, answered));
        refusal.ifPresent(one -> typed.refuse(CountForm.FISH, one.why()));
        if (typed.ok()) {
            done(ctx, where, "written");
            return;
        }
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, where, form, typed, new Hidden(submission, refusal.map(Refusal::asked).orElse(answered)));
    }

    private Optional<Refusal> write(Context ctx, Where where, UUID submission, CountEntry entry, String answered) {
        Caller caller = Caller.of(ctx);
        return transactions.inChapter(caller.chapterId(), tx -> {
            CountBook book = book(tx, ctx, where);
            if (!entry.kind().leaves() && book.isNew(where.tank(), submission, entry)) {
                Optional<Refusal> unlikely = unlikely(book.accountAt(where.tank(), entry), entry, answered);
                if (unlikely.isPresent()) {
                    return unlikely;
                }
            }
            if (entry.kind() == CountKind.RELEASED) {
                SameDay before = book.ofTheSameDay(where.tank(), submission, entry);
                if (!before.isSettledBy(answered)) {
                    // Two who each write down what both let swim would count it twice.
                    Formats formats = Speech.of(ctx).formats(where.tank().zone(), clock.instant());
                    return Optional.of(new Refusal(
                            Saying.of("count.released.again", before.wording(formats)), before.asked()));
                }
            }
            Optional<Saying> refusal = book.write(where.tank(), submission, entry, caller.personId().orElseThrow());
            if (refusal.isEmpty()) {
                mark(tx, caller, entry);
            }
            return refusal.map(why -> new Refusal(why, answered));
        });
    }

    /**
     * Nobody counts what had not come; more than came or than did not die is asked about, for suppliers miscount too.
     * The answer is about the number that was asked about, and about no other.
     */
    private static Optional<Refusal> unlikely(Account then, CountEntry entry, String answered) {
        if (then.ledger().received() + then.ledger().movedIn() == 0 && entry.fish() > 0) {
            return Optional.of(new Refusal(Saying.of("count.counted.beforeAny"), answered));
        }
        String number = Integer.toString(entry.fish());
        if (answered.equals(number)) {
            return Optional.empty();
        }
        if (entry.kind() == CountKind.HATCHED) {
            int most = then.mostHatched(entry.spread());
            // What cannot be at all is refused, not asked about.
            return entry.fish() <= most || !then.canHaveHatched(entry.fish(), entry.spread()) ? Optional.empty()
                    : Optional.of(new Refusal(Saying.of("count.hatched.more", entry.fish(), Math.max(0, most)),
                            number));
        }
        int most = then.most(entry.spread());
        return entry.fish() <= most ? Optional.empty()
                : Optional.of(new Refusal(Saying.of("count.counted.more", entry.fish(), most), number));
    }

    /** One that was taken back before is taken back. */
    public void withdraw(Context ctx) {
        Caller caller = Caller.of(ctx);
        Where where = load(ctx);
        transactions.inChapter(caller.chapterId(), tx -> {
            CountBook book = book(tx, ctx, where);
            book.find(where.tank(), TypedNumber.whole(ctx.pathParam("entry"))).ifPresent(entry -> {
                if (!book.withdraw(entry, caller.personId().orElseThrow())) {
                    throw RefusedException.of(HttpStatus.CONFLICT.getCode(), Saying.of("count.withdraw.needed"));
                }
                mark(tx, caller, entry);
            });
            return null;
        });
        done(ctx, where, "withdrawn");
    }

    private void mark(DSLContext tx, Caller caller, CountEntry entry) {
        CountBook.tanksOf(entry).forEach(tankId -> dirtyTanks.mark(tx, caller.chapterId(), tankId, clock.instant()));
    }

    private void done(Context ctx, Where where, String receipt) {
        afterChange.changed(Caller.of(ctx).chapterId());
        ctx.redirect(where.address() + "?" + SAVED + "=" + receipt, HttpStatus.SEE_OTHER);
    }

    private void show(Context ctx, Where where, CountForm form, FormInput typed, Hidden hidden) {
        String kind = ctx.pathParam("kind");
        String tank = where.tank().school() + ", " + where.tank().classroom();
        String heading = typed.say("count.kind." + kind + ".title", tank);
        pages.show(ctx, "form-page", new FormPage(typed.titled(heading), heading,
                List.of(new FormPage.Link(typed.say("count.of", tank), where.address())), "",
                where.address() + "/" + kind + hidden.query(), typed.say("count.kind." + kind + ".save"),
                typed.shown(), form.groups(typed), List.of(), List.of()));
    }

    private CountForm form(Context ctx, Where where) {
        CountKind kind = CountKind.ofCode(ctx.pathParam("kind")).orElseThrow(() -> new NotFoundException("page"));
        Stage stage = kind != CountKind.MOVED ? Stage.FEEDING : transactions.inChapter(
                Caller.of(ctx).chapterId(), tx -> book(tx, ctx, where).stage(where.tank()));
        return new CountForm(kind, where.season(), where.tank(), where.others(), stage, clock.instant());
    }

    private CountBook book(DSLContext tx, Context ctx, Where where) {
        return new CountBook(reads, tx, Caller.of(ctx).chapterId(), where.season(), clock.instant());
    }

    private Where load(Context ctx) {
        return transactions.inChapter(Caller.of(ctx).chapterId(), tx -> where(tx, ctx));
    }

    private Where where(DSLContext tx, Context ctx) {
        Caller caller = Caller.of(ctx);
        Tank tank = reads.tanks().get(tx, caller, ctx.pathParam("tank"));
        return new Where(reads.seasons().get(tx, caller.chapterId(), ctx.pathParam("season")), tank,
                reads.tanks().list(tx, caller).stream().filter(other -> other.tankId() != tank.tankId()).toList());
    }
}
