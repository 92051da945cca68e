package org.tankrounds.readings;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Month;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.AskBack;
import org.tankrounds.pages.LogPage.Receipt;
import org.tankrounds.pages.OutboxPage;
import org.tankrounds.places.Kit;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.readings.LogPageMaker.Message;
import org.tankrounds.readings.StoreReading.Outcome;
import org.tankrounds.readings.StoreReading.Submitted;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Pages;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Speech;

/** The page on which a class puts a reading in. */
public final class LogHandlers {

    /** What the page needs to know of a tank. */
    private record Desk(Tank tank, List<Kit> kits, Kit kit, Receipt receipt, Optional<String> lastLabel) {
        Kit kitCalled(String name) {
            return kits.stream().filter(one -> one.name().equals(name)).findFirst().orElse(kit);
        }

        boolean knows(String name) {
            return kits.stream().anyMatch(one -> one.name().equals(name));
        }
    }

    private static final Collector<CharSequence, ?, String> BARRED = Collectors.joining("|");

    private final Transactions transactions;
    private final TankRepository tanks;
    private final KitRepository kits;
    private final ReadingRepository readings;
    private final SavedReceipt receipts;
    private final StoreReading storeReading;
    private final Pages pages;
    private final Clock clock;

    public LogHandlers(Transactions transactions, TankRepository tanks, KitRepository kits,
            ReadingRepository readings, SavedReceipt receipts, StoreReading storeReading, Pages pages,
            Clock clock) {
        this.transactions = transactions;
        this.tanks = tanks;
        this.kits = kits;
        this.readings = readings;
        this.receipts = receipts;
        this.storeReading = storeReading;
        this.pages = pages;
        this.clock = clock;
    }

    public void show(Context ctx) {
        Desk desk = desk(ctx);
        Map<String, String> filledIn = new TreeMap<>();
        filledIn.put(LogForm.SUBMISSION, UUID.randomUUID().toString());
        filledIn.putAll(OpenedWith.fields(desk.tank(), desk.kit()));
        desk.lastLabel().ifPresent(label -> filledIn.put(LogForm.BY, label));
        Optional.ofNullable(ctx.queryParam(Analyte.WATER_CHANGE.code())).filter(share -> share.matches("[0-9]{1,3}"))
                .ifPresent(share -> filledIn.put(Analyte.WATER_CHANGE.code(), share));
        Kit kit = ShownCards.in(desk.kit(), ctx.queryParam(ShownCards.FIELD));
        show(ctx, desk, kit, new LogForm(filledIn), Message.receipt(desk.receipt()));
    }

    /** The class's own data, to take along. */
    public void download(Context ctx) {
        Caller caller = Caller.of(ctx);
        Tank tank = transactions.inChapter(caller.chapterId(), tx -> tanks.get(tx, caller, ctx.pathParam("tank")));
        ctx.contentType("text/csv; charset=utf-8; header=present");
        ctx.header("Content-Disposition", "attachment; filename=\"readings-" + tank.code() + ".csv\"");
        transactions.inChapter(caller.chapterId(), tx -> {
            try (Stream<Reading> all = readings.stream(tx, caller.chapterId(), tank.tankId())) {
                ReadingsFile.write(ctx.outputStream(), tank.code(), all);
                return tank;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    /** What waits is known to the device alone. */
    public void showOutbox(Context ctx) {
        Speech speech = Speech.of(ctx);
        pages.show(ctx, "readings/outbox", new OutboxPage(speech.say("outbox.title"),
                IntStream.range(0, DayOfWeek.values().length).mapToObj(day -> speech.written(
                        "time.pattern.shortWeekday", DayOfWeek.SUNDAY.plus(day))).collect(BARRED),
                Stream.of(Month.values()).map(month -> speech.written("time.pattern.shortMonth", month))
                        .collect(BARRED)));
    }

    public void create(Context ctx) {
        if (OutboxAnswers.refuseAnothers(ctx)) {
            return;
        }
        Desk desk = desk(ctx);
        LogForm form = LogForm.of(ctx).looked().settled();
        if (!IdempotencyKey.isKey(form.text(LogForm.SUBMISSION))) {
            form = form.with(LogForm.SUBMISSION, UUID.randomUUID().toString());
        }
        Kit kit = ShownCards.in(desk.kitCalled(form.text(LogForm.KIT)), form.text(ShownCards.FIELD));
        if ("kit".equals(form.text("act"))) {
            show(ctx, desk, desk.kitCalled(form.text(LogForm.OTHER_KIT)), form, Message.NONE);
            return;
        }
        store(ctx, desk, kit, form);
    }

    private void store(Context ctx, Desk desk, Kit kit, LogForm form) {
        Answered answered = new Answered(form, Speech.of(ctx));
        try {
            Optional<Outcome> outcome = storeReading.store(Caller.of(ctx), desk.tank().code(), channel(ctx),
                    (tank, usualKit) -> submitted(form, desk, tank, kit), answered::accept);
            if (outcome.isEmpty()) {
                askAgain(ctx, desk, kit, form, answered.message());
                return;
            }
            if (outcome.get().isNew()) {
                remember(ctx, desk, form);
            }
            stored(ctx, outcome.get());
        } catch (RefusedException refusal) {
            refused(ctx, desk, kit, form, refusal);
        }
    }

    private void askAgain(Context ctx, Desk desk, Kit kit, LogForm form, Message message) {
        if (OutboxAnswers.wanted(ctx)) {
            OutboxAnswers.needsFixing(ctx, message);
            return;
        }
        ctx.status(422);
        show(ctx, desk, kit, form, message);
    }

    private static void stored(Context ctx, Outcome outcome) {
        String savedTo = "/tanks/" + outcome.tank().code() + "?saved=" + outcome.reading().code();
        if (OutboxAnswers.wanted(ctx)) {
            OutboxAnswers.stored(ctx, outcome.reading(), savedTo);
        } else {
            ctx.redirect(savedTo, HttpStatus.SEE_OTHER);
        }
    }

    private void refused(Context ctx, Desk desk, Kit kit, LogForm form, RefusedException refusal) {
        if (OutboxAnswers.wanted(ctx)) {
            OutboxAnswers.refused(ctx, refusal);
            return;
        }
        ctx.status(refusal.status());
        show(ctx, desk, kit, form.with(LogForm.SUBMISSION, UUID.randomUUID().toString()), Message.conflict(
                Speech.of(ctx).say("log.conflict.whatNow")));
    }

    /** Hears the judgement, and what to say about it where nothing may be stored yet. */
    private static final class Answered {
        private final LogForm form;
        private final Speech speech;
        private Message message = Message.NONE;

        Answered(LogForm form, Speech speech) {
            this.form = form;
            this.speech = speech;
        }

        boolean accept(Submitted submitted, JudgedReading judged) {
            boolean sound = submitted.faults().none();
            List<AskBack> asks = sound ? LogFields.asks(form, submitted.given(), judged, speech)
                    : LogFields.mixedUpScales(submitted.given(), submitted.faults(), speech);
            message = new Message(LogForm.byField(submitted.faults(), speech), asks, submitted.confirmed(), "",
                    Receipt.NONE);
            return sound && asks.isEmpty();
        }

        Message message() {
            return message;
        }
    }

    private Submitted submitted(LogForm form, Desk desk, Tank tank, Kit kit) {
        Faults faults = new Faults();
        form.checkVersion(faults);
        GivenReading read = form.read(new LogBoxes(tank, kit).forms(), tank.zone(), faults);
        if (!desk.knows(form.text(LogForm.KIT))) {
            ShownCards.check(form, read, faults);
        }
        boolean timeTyped = !form.text(LogForm.MEASURED_AT).isBlank();
        GivenReading given = timeTyped ? read : DeviceClock.of(form)
                .map(device -> read.taken(device.taken(clock.instant()))).orElse(read);
        return new Submitted(
                form.text(LogForm.SUBMISSION), form.fingerprint(), given, faults, kit, form.confirmed(given));
    }

    /**
     * The class's thermometer and kit are habits: next time the form opens with them, unless somebody changed the tank.
     */
    private void remember(Context ctx, Desk desk, LogForm form) {
        int chapterId = Caller.of(ctx).chapterId();
        int tankId = desk.tank().tankId();
        OpenedWith.otherKit(form).filter(change -> desk.knows(change.from()) && desk.knows(change.to()))
                .ifPresent(change -> transactions.inChapter(chapterId, tx -> tanks.rememberKit(tx, chapterId, tankId,
                        desk.kitCalled(change.from()).kitId(), desk.kitCalled(change.to()).kitId())));
        OpenedWith.otherScale(form).ifPresent(change -> transactions.inChapter(chapterId,
                tx -> tanks.rememberThermometer(tx, chapterId, tankId, change.from(), change.to())));
    }

    private Desk desk(Context ctx) {
        Caller caller = Caller.of(ctx);
        return transactions.inChapter(caller.chapterId(), tx -> desk(ctx, caller, tx));
    }

    private Desk desk(Context ctx, Caller caller, DSLContext tx) {
        Tank tank = tanks.get(tx, caller, ctx.pathParam("tank"));
        List<Kit> all = kits.list(tx, caller.chapterId());
        Kit kit = all.stream().filter(one -> one.kitId() == tank.kitId()).findFirst().orElseThrow();
        Optional<String> saved = Optional.ofNullable(ctx.queryParam("saved"));
        return new Desk(tank, all, kit, receipts.find(tx, caller, tank, saved, Speech.of(ctx)),
                lastLabel(tx, caller, tank));
    }

    /** A card is many classes': what the one before wrote is not remembered for the next. */
    private Optional<String> lastLabel(DSLContext tx, Caller caller, Tank tank) {
        return caller.signedIn() ? readings.findLastLabel(
                tx, caller.chapterId(), tank.tankId(), caller.personId().getAsInt()) : Optional.empty();
    }

    private static String channel(Context ctx) {
        return Caller.of(ctx).signedIn() ? Reading.CHANNEL_PAGE : Reading.CHANNEL_CARD;
    }

    private void show(Context ctx, Desk desk, Kit kit, LogForm form, Message message) {
        pages.show(ctx, "readings/log", new LogPageMaker(desk.tank(), kit, desk.kits(), form, message,
                Speech.of(ctx)).page());
    }
}
