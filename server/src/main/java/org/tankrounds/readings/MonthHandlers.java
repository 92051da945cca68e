package org.tankrounds.readings;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.FormField;
import org.tankrounds.places.Kit;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.readings.MonthPageMaker.Known;
import org.tankrounds.readings.StoreReading.Outcome;
import org.tankrounds.readings.StoreReading.Submitted;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/** The page that takes a filled log sheet in: nothing is stored until every row is sound or confirmed, then all. */
public final class MonthHandlers {
    private static final String SAVED = "saved";
    private static final String LEFT_OUT = "left";

    private final Transactions transactions;
    private final TankRepository tanks;
    private final KitRepository kits;
    private final StoreReading storeReading;
    private final Pages pages;
    private final Clock clock;
    private final ReadDays readDays = new ReadDays();
    private final FindMonthRepeats repeats;

    public MonthHandlers(Transactions transactions, TankRepository tanks, KitRepository kits,
            ReadingRepository readings, StoreReading storeReading, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.tanks = tanks;
        this.kits = kits;
        this.storeReading = storeReading;
        this.pages = pages;
        this.clock = clock;
        this.repeats = new FindMonthRepeats(readings);
    }

    public void show(Context ctx) {
        Known known = known(ctx, ctx.queryParam(SheetMonth.MONTH));
        pages.show(ctx, "readings/month", new MonthPageMaker(known, formats(ctx, known)).page(
                MonthForm.fresh(known.tank().thermometerUnit()), MonthHearing.NOTHING, saved(ctx),
                MonthPageMaker.NOTHING_WRONG));
    }

    private static String saved(Context ctx) {
        Speech speech = Speech.of(ctx);
        String saved = count(ctx, SAVED).stream().mapToObj(days -> days == 0
                ? speech.say("paper.month.savedNone") : speech.say("paper.month.saved", days)).findFirst().orElse("");
        String left = count(ctx, LEFT_OUT).stream().mapToObj(days -> speech.say("paper.month.left", days))
                .findFirst().orElse("");
        return saved.isEmpty() || left.isEmpty() ? saved : saved + " " + left;
    }

    private static OptionalInt count(Context ctx, String name) {
        String text = Optional.ofNullable(ctx.queryParam(name)).orElse("");
        return text.matches("\\d|[12]\\d|3[01]") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
    }

    public void create(Context ctx) {
        Known known = known(ctx, ctx.formParam(SheetMonth.MONTH));
        MonthForm form = MonthForm.of(ctx);
        List<LocalDate> days = form.typedDays(known.month());
        if (days.isEmpty() || form.time().isEmpty()) {
            askAgain(ctx, known, form, MonthHearing.NOTHING, wrong(ctx, form, known.month()));
            return;
        }
        MonthRepeats again = repeats(ctx, known, form, days);
        MonthForm left = form.withoutDead(again.leavesDeadOut());
        List<LocalDate> kept = left.typedDays(known.month()).stream().filter(day -> !again.leavesOut(day)).toList();
        MonthHearing hearing = new MonthHearing(left, kept, again, formats(ctx, known));
        Optional<List<Outcome>> stored = storeReading.storeAll(
                Caller.of(ctx), known.tank().code(), Reading.CHANNEL_PAGE,
                (tank, kit) -> kept.stream().map(day -> submitted(left, day, tank, known.kit())).toList(), hearing);
        if (stored.isEmpty()) {
            askAgain(ctx, known, form, hearing, MonthPageMaker.NOTHING_WRONG);
            return;
        }
        int leftOut = days.size() - kept.size();
        String receipt = SAVED + "=" + kept.size() + (leftOut == 0 ? "" : "&" + LEFT_OUT + "=" + leftOut);
        ctx.redirect("/tanks/" + known.tank().code() + "/month?" + SheetMonth.MONTH + "=" + known.month().month() + "&"
                + receipt, HttpStatus.SEE_OTHER);
    }

    private MonthRepeats repeats(Context ctx, Known known, MonthForm form, List<LocalDate> days) {
        int chapterId = Caller.of(ctx).chapterId();
        return MonthRepeats.of(transactions.inChapter(chapterId,
                tx -> repeats.find(tx, chapterId, known.tank(), known.kit(), form, days)), form);
    }

    private void askAgain(Context ctx, Known known, MonthForm form, MonthHearing hearing, FormField whole) {
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        pages.show(ctx, "readings/month",
                new MonthPageMaker(known, formats(ctx, known)).page(form, hearing, "", whole));
    }

    private static FormField wrong(Context ctx, MonthForm form, SheetMonth month) {
        boolean timeless = form.time().isEmpty();
        String box = timeless ? MonthForm.TIME : MonthForm.name(month.month().atDay(1), Analyte.TEMPERATURE.code());
        return FormField.text(box, "", "")
                .withError(Speech.of(ctx).say(timeless ? "paper.month.noTime" : "paper.month.empty"));
    }

    private Submitted submitted(MonthForm form, LocalDate day, Tank tank, Kit kit) {
        Faults faults = new Faults();
        LogForm row = form.day(day);
        GivenReading read = row.read(new LogBoxes(tank, kit).forms(), tank.zone(), faults);
        if (day.isAfter(LocalDate.ofInstant(clock.instant(), tank.zone()))) {
            faults.add(Analyte.TEMPERATURE.code(), Saying.of("paper.month.future"));
        }
        return new Submitted(form.key(day), row.fingerprint(), notAhead(read), faults, kit, row.confirmed(read));
    }

    /** A sheet that is typed in before the usual time of its last day. */
    private GivenReading notAhead(GivenReading read) {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        return read.measuredAt().filter(now::isBefore).isPresent() ? read.at(now) : read;
    }

    private Known known(Context ctx, String asked) {
        Caller caller = Caller.of(ctx);
        return transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = tanks.get(tx, caller, ctx.pathParam("tank"));
            SheetMonth month = SheetMonth.of(asked, tank, clock.instant());
            Kit kit = ShownCards.in(kits.get(tx, caller.chapterId(), tank.kitId()), ctx.formParam(ShownCards.FIELD));
            return new Known(tank, kit, month,
                    readDays.find(tx, caller.chapterId(), tank, month.month()));
        });
    }

    private Formats formats(Context ctx, Known known) {
        return Speech.of(ctx).formats(known.tank().zone(), clock.instant());
    }
}
