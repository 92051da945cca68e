package org.tankrounds.classroom;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.tankrounds.behaviour.Behaviour;
import org.tankrounds.behaviour.LookRepository;
import org.tankrounds.behaviour.Seen;
import org.tankrounds.classroom.FishPages.Just;
import org.tankrounds.db.Transactions;
import org.tankrounds.fish.LengthWeight;
import org.tankrounds.jobs.TankChange;
import org.tankrounds.places.Tank;
import org.tankrounds.season.FishSample;
import org.tankrounds.season.FishSampleRepository;
import org.tankrounds.web.Asked;
import org.tankrounds.web.Caller;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;

/** What a class sees of its fish, and how long and heavy they are. */
public final class FishHandlers {
    private static final String SAVED = "saved";
    private static final String SUBMISSION = "submission_id";
    private static final int MOST_FISH = 1000;
    /** Classes of one age differ by less (the project's choice). */
    private static final double LONG = 1.7;
    private static final double SHORT = 0.55;
    private static final String LOOKED = "look";
    private static final String MEASURED = "sample";
    private static final Set<String> RECEIPTS = Set.of(LOOKED, MEASURED, "withdrawn");

    private final Transactions transactions;
    private final LookRepository looks;
    private final FishSampleRepository samples;
    private final TankChange tankChange;
    private final ClassDesk desk;

    public FishHandlers(Transactions transactions, LookRepository looks, FishSampleRepository samples,
            TankChange tankChange, ClassDesk desk) {
        this.transactions = transactions;
        this.looks = looks;
        this.samples = samples;
        this.tankChange = tankChange;
        this.desk = desk;
    }

    public void show(Context ctx) {
        String saved = Optional.ofNullable(ctx.queryParam(SAVED)).orElse("");
        String receipt = RECEIPTS.contains(saved) ? Speech.of(ctx).say("classroom.fish.saved." + saved) : "";
        desk.show(ctx, FishPages.Typed.nothing(ctx, receipt, switch (saved) {
            case LOOKED -> Just.LOOKED;
            case MEASURED -> Just.MEASURED;
            default -> Just.NOTHING;
        }));
    }

    public void download(Context ctx) {
        Tank tank = desk.tank(ctx);
        int chapterId = Caller.of(ctx).chapterId();
        ctx.contentType("text/csv; charset=utf-8; header=present");
        ctx.header("Content-Disposition", "attachment; filename=\"fish-" + tank.code() + ".csv\"");
        String file = transactions.inChapter(chapterId, tx -> FishFile.of(tank.code(),
                looks.list(tx, chapterId, tank.tankId(), Integer.MAX_VALUE),
                samples.list(tx, chapterId, tank.tankId(), Instant.EPOCH)));
        ctx.result(file);
    }

    public void look(Context ctx) {
        Caller caller = Caller.of(ctx);
        Tank tank = desk.tank(ctx);
        List<Seen> seen = seen(ctx);
        if (seen.isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            desk.show(ctx, new FishPages.Typed("", Speech.of(ctx).say("classroom.fish.nothing"), seen,
                    FormInput.showing(ctx, Map.of()), Just.NOTHING));
            return;
        }
        tankChange.make(caller.chapterId(), tank.tankId(), tx ->
                looks.add(tx, caller, tank.tankId(), Asked.submissionId(ctx.formParam(SUBMISSION)), seen, desk.now()));
        back(ctx, LOOKED);
    }

    public void withdrawLook(Context ctx) {
        Caller caller = Caller.of(ctx);
        Tank tank = desk.tank(ctx);
        int lookId = ClassHandlers.number(ctx.pathParam("look"), "look");
        tankChange.make(caller.chapterId(), tank.tankId(),
                tx -> looks.withdraw(tx, caller.chapterId(), tank.tankId(), lookId, desk.now()));
        back(ctx, "withdrawn");
    }

    public void measure(Context ctx) {
        Caller caller = Caller.of(ctx);
        Tank tank = desk.tank(ctx);
        FormInput form = FormInput.of(ctx, FishPages.MEASURES);
        Optional<FishSample> sample = sample(form).filter(measured -> isLikely(measured, form, ctx));
        if (sample.isEmpty()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            desk.show(ctx, new FishPages.Typed("", "", List.of(), form, Just.NOTHING));
            return;
        }
        transactions.inChapter(caller.chapterId(),
                tx -> samples.add(tx, caller, tank.tankId(), Asked.submissionId(ctx.formParam(SUBMISSION)),
                        sample.get()));
        back(ctx, MEASURED);
    }

    public void withdrawSample(Context ctx) {
        Caller caller = Caller.of(ctx);
        Tank tank = desk.tank(ctx);
        int sampleId = ClassHandlers.number(ctx.pathParam("sample"), "sample");
        transactions.inChapter(caller.chapterId(),
                tx -> samples.withdraw(tx, caller.chapterId(), tank.tankId(), sampleId, desk.now()));
        back(ctx, "withdrawn");
    }

    private static List<Seen> seen(Context ctx) {
        List<Seen> seen = new ArrayList<>();
        Arrays.stream(Behaviour.values()).forEach(behaviour -> Seen.ofCode(
                Optional.ofNullable(ctx.formParam(behaviour.code())).orElse(""))
                .filter(one -> one.behaviour() == behaviour).ifPresent(seen::add));
        return seen;
    }

    /** Empty where something cannot be taken; then the form says so. */
    private Optional<FishSample> sample(FormInput form) {
        int fish = fish(form);
        OptionalDouble length = form.decimal(FishPages.LENGTH, "classroom.fish.length.what");
        OptionalDouble weight = form.decimal(FishPages.WEIGHT, "classroom.fish.weight.what");
        if (length.isEmpty() || !LengthWeight.LENGTH_MM.holds(length.getAsDouble())) {
            form.refuse(FishPages.LENGTH, "classroom.fish.wrongLength");
        }
        if (weight.isPresent() && !(weight.getAsDouble() > 0)) {
            form.refuse(FishPages.WEIGHT, "classroom.fish.wrongWeight");
        }
        if (!form.ok()) {
            return Optional.empty();
        }
        FishSample sample = new FishSample(0, desk.now(), fish, length.getAsDouble(), weight);
        if (!LengthWeight.LIKELY_CONDITION.holds(sample.condition())) {
            double usualG = fish * LengthWeight.weightG(length.getAsDouble(), LengthWeight.USUAL_CONDITION);
            form.refuse(FishPages.WEIGHT, "classroom.fish.unlikely",
                    form.text(FishPages.LENGTH), fish, TypedNumber.text(usualG, 1));
            return Optional.empty();
        }
        return Optional.of(sample);
    }

    /** What is far from the size of their age is asked about once: the feed of the day hangs on it. */
    private boolean isLikely(FishSample sample, FormInput form, Context ctx) {
        ClassPages.Known known = desk.load(ctx);
        Optional<Double> expectedMm = known.today().development()
                .map(lot -> FishSize.of(known.today(), lot, known.samples()).lengthMm());
        boolean isFar = expectedMm.filter(usual -> sample.meanLengthMm() > LONG * usual
                || sample.meanLengthMm() < SHORT * usual).isPresent();
        if (isFar && !form.text(FishPages.LENGTH).equals(ctx.formParam(FishPages.ASKED))) {
            form.refuse(FishPages.LENGTH, "classroom.fish.farLength",
                    TypedNumber.text(expectedMm.orElseThrow(), 0), form.text(FishPages.LENGTH));
        }
        return form.ok();
    }

    private static int fish(FormInput form) {
        int fish = TypedNumber.whole(form.text(FishPages.FISH)).orElse(0);
        if (fish < 1 || fish > MOST_FISH) {
            form.refuse(FishPages.FISH, "classroom.fish.wrongCount");
        }
        return fish;
    }

    private static void back(Context ctx, String saved) {
        ctx.redirect("/tanks/" + ctx.pathParam("tank") + "/fish?" + SAVED + "=" + saved, HttpStatus.SEE_OTHER);
    }
}
