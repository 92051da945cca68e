package org.tankrounds.readings;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.AskBack;
import org.tankrounds.pages.LogPage.Receipt;
import org.tankrounds.people.PersonRepository;
import org.tankrounds.places.Kit;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.readings.CorrectReading.Correction;
import org.tankrounds.readings.CorrectReading.Result;
import org.tankrounds.readings.LogPageMaker.Message;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/** The page of one reading, and its correction. */
public final class CorrectionHandlers {
    private static final int LONGEST_REASON = 500;

    /** What the page needs to know. */
    private record Desk(Tank tank, Kit kit, List<Reading> versions, Map<Integer, String> names) {
        /** The one that holds, unless none does any more. */
        Reading newest() {
            return versions.get(0);
        }

        Map<Analyte, UnitForm> forms() {
            return ReadingPageMaker.forms(tank, kit, newest());
        }
    }

    private final Transactions transactions;
    private final TankRepository tanks;
    private final KitRepository kits;
    private final PersonRepository people;
    private final CorrectReading correctReading;
    private final Pages pages;
    private final Clock clock;

    public CorrectionHandlers(Transactions transactions, TankRepository tanks, KitRepository kits,
            PersonRepository people, CorrectReading correctReading, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.tanks = tanks;
        this.kits = kits;
        this.people = people;
        this.correctReading = correctReading;
        this.pages = pages;
        this.clock = clock;
    }

    public void show(Context ctx) {
        Desk desk = desk(ctx);
        show(ctx, desk, ReadingPageMaker.filledIn(desk.tank(), desk.newest()), Message.NONE, "");
    }

    public void update(Context ctx) {
        Desk desk = desk(ctx);
        LogForm form = LogForm.of(ctx).settled();
        Typed typed = new Typed(desk, form, Speech.of(ctx));
        if (form.text(ReadingPageMaker.ACT).equals(ReadingPageMaker.TAKE_BACK)) {
            answer(ctx, desk, typed, correctReading.takeBack(
                    Caller.of(ctx), desk.tank().code(), desk.newest().code(), typed.takingBack()));
            return;
        }
        answer(ctx, desk, typed, correctReading.correct(
                Caller.of(ctx), desk.tank().code(), desk.newest().code(), typed::correction));
    }

    private void answer(Context ctx, Desk desk, Typed typed, Result result) {
        switch (result) {
            case STORED, REPEATED -> ctx.redirect("/tanks/" + desk.tank().code() + "/readings/" + desk.newest().code(),
                    HttpStatus.SEE_OTHER);
            case NOT_ACCEPTED -> {
                ctx.status(422);
                show(ctx, desk, typed.form, typed.message, "");
            }
            case OVERTAKEN -> {
                ctx.status(409);
                Desk now = desk(ctx);
                show(ctx, now, typed.form, Message.NONE, Speech.of(ctx).say(
                        now.newest().holds() ? "readings.page.overtaken" : "readings.page.overtakenGone"));
            }
        }
    }

    /** What was typed, judged against the version that holds. */
    private final class Typed {
        private final Desk desk;
        private final LogForm form;
        private final Speech speech;
        private Message message = Message.NONE;

        Typed(Desk desk, LogForm form, Speech speech) {
            this.desk = desk;
            this.form = form;
            this.speech = speech;
        }

        Correction correction(Reading holding, ToDoubleFunction<Instant> lastTemperatureC) {
            Faults faults = new Faults();
            GivenReading given = given(holding, faults);
            Optional<String> reason = reason(faults, "readings.page.noReason");
            Judge.Known known = new Judge.Known(desk.tank(), desk.kit(), clock.instant(), lastTemperatureC);
            JudgedReading judged = Judge.judge(given, known, form.confirmed(given), faults);
            List<AskBack> asks = faults.none() ? LogFields.asks(form, given, judged, speech)
                    : LogFields.mixedUpScales(given, faults, speech);
            message = new Message(LogForm.byField(faults, speech), asks, form.confirmed(given), "", Receipt.NONE);
            boolean accepted = faults.none() && asks.isEmpty();
            return new Correction(seen(), accepted ? Optional.of(judged) : Optional.empty(), reason.orElse(""));
        }

        /** What else was typed is let go of: it would have been a correction. */
        CorrectReading.TakingBack takingBack() {
            Faults faults = new Faults();
            Optional<String> reason = reason(faults, "readings.page.noReasonBack");
            List<AskBack> asks = PersonalAsks.of(List.of(ReadingPageMaker.REASON), form, speech);
            message = new Message(LogForm.byField(faults, speech), asks, Set.of(), "", Receipt.NONE);
            return new CorrectReading.TakingBack(seen(), faults.none() && asks.isEmpty(), reason.orElse(""));
        }

        private Optional<String> reason(Faults faults, String missing) {
            Optional<String> reason = PlainText.check(form.text(ReadingPageMaker.REASON),
                    Saying.of("readings.page.theReason"), LONGEST_REASON, true,
                    sentence -> faults.add(ReadingPageMaker.REASON, sentence));
            if (reason.isEmpty() && faults.none()) {
                faults.add(ReadingPageMaker.REASON, Saying.of(missing));
            }
            return reason;
        }

        /** A time that was not touched stays exact; the form shows minutes only. Steps and marks stay likewise. */
        private GivenReading given(Reading holding, Faults faults) {
            boolean sameTime = form.text(LogForm.MEASURED_AT).strip()
                    .equals(ReadingPageMaker.typedTime(desk.tank(), holding.measuredAt()));
            LogForm read = sameTime ? form.with(LogForm.MEASURED_AT, "") : form;
            if (!sameTime && form.text(LogForm.MEASURED_AT).isBlank()) {
                faults.add(LogForm.MEASURED_AT, Saying.of("readings.page.noTime",
                        ReadingPageMaker.typedTime(desk.tank(), holding.measuredAt())));
            }
            GivenReading given = read.read(desk.forms(), desk.tank().zone(), faults).carryingOver(holding);
            return sameTime ? given.at(holding.measuredAt()) : given;
        }

        private int seen() {
            String version = form.text(ReadingPageMaker.VERSION);
            return version.matches("[0-9]{1,5}") ? Integer.parseInt(version) : 0;
        }
    }

    private Desk desk(Context ctx) {
        Caller caller = Caller.of(ctx);
        return transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = tanks.get(tx, caller, ctx.pathParam("tank"));
            List<Reading> versions = correctReading.versions(tx, caller, tank, ctx.pathParam("reading"));
            Kit kit = ShownCards.in(kits.get(tx, caller.chapterId(), tank.kitId()), ctx.formParam(ShownCards.FIELD));
            return new Desk(tank, kit, versions, names(tx, caller.chapterId(), versions));
        });
    }

    private Map<Integer, String> names(DSLContext tx, int chapterId, List<Reading> versions) {
        Map<Integer, String> names = new TreeMap<>();
        versions.stream().map(Reading::personId).filter(OptionalInt::isPresent).map(OptionalInt::getAsInt).distinct()
                .forEach(personId -> names.put(personId, people.get(tx, chapterId, personId).name()));
        return names;
    }

    private void show(Context ctx, Desk desk, LogForm form, Message message, String overtaken) {
        pages.show(ctx, "readings/reading", new ReadingPageMaker(desk.tank(), desk.versions(), desk.names(),
                Speech.of(ctx)).page(desk.kit(), form, message, overtaken));
    }
}
