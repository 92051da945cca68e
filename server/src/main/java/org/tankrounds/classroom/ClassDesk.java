package org.tankrounds.classroom;

import io.javalin.http.Context;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import org.jooq.DSLContext;
import org.tankrounds.behaviour.LookRepository;
import org.tankrounds.breaks.BreakWatches;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.FormField;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.Tank;
import org.tankrounds.rounds.TankToday;
import org.tankrounds.rounds.TanksToday;
import org.tankrounds.season.FishSampleRepository;
import org.tankrounds.tasks.Task;
import org.tankrounds.tasks.TaskRepository;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Role;
import org.tankrounds.web.Speech;

/** Gathers what the pages of a class show, and shows them. */
public final class ClassDesk {
    static final String ASK = "task";
    private static final Duration A_SEASON = Duration.ofDays(300);
    private static final int LOOKS = 20;

    private final Transactions transactions;
    private final TanksToday tanks;
    private final KitRepository kits;
    private final LookRepository looks;
    private final FishSampleRepository samples;
    private final TaskRepository tasks;
    private final BreakWatches breaks;
    private final Pages pages;
    private final Clock clock;

    public ClassDesk(Transactions transactions, TanksToday tanks, KitRepository kits, LookRepository looks,
            FishSampleRepository samples, TaskRepository tasks, BreakWatches breaks, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.tanks = tanks;
        this.kits = kits;
        this.looks = looks;
        this.samples = samples;
        this.tasks = tasks;
        this.breaks = breaks;
        this.pages = pages;
        this.clock = clock;
    }

    Instant now() {
        return clock.instant();
    }

    /** For a change of one thing, which needs to know no more than that the caller may make it. */
    Tank tank(Context ctx) {
        Caller caller = Caller.of(ctx);
        return transactions.inChapter(caller.chapterId(), tx -> tanks.get(tx, caller, ctx.pathParam("tank")));
    }

    ClassPages.Known load(Context ctx) {
        Caller caller = Caller.of(ctx);
        return transactions.inChapter(caller.chapterId(), tx -> load(tx, caller, ctx.pathParam("tank")));
    }

    private ClassPages.Known load(DSLContext tx, Caller caller, String tankCode) {
        Instant now = now();
        TankToday today = tanks.load(tx, caller, tankCode, now);
        int tankId = today.tank().tankId();
        return new ClassPages.Known(today, kits.get(tx, caller.chapterId(), today.tank().kitId()),
                looks.list(tx, caller.chapterId(), tankId, LOOKS),
                looks.latelyIn(tx, caller.chapterId(), tankId, now),
                samples.list(tx, caller.chapterId(), tankId, now.minus(A_SEASON)),
                tasks.list(tx, caller.chapterId(), tankId, now.minus(Task.LATELY)),
                breaks.list(tx, caller.chapterId(), today.tank(), now));
    }

    void show(Context ctx, String saved, FormField ask) {
        ClassPages.Known known = load(ctx);
        boolean mayAsk = Set.of(Role.ROUNDS).contains(Caller.of(ctx).role());
        Formats formats = Speech.of(ctx).formats(known.tank().zone(), now());
        pages.show(ctx, "classroom/class", new ClassPages(known, formats, mayAsk).page(saved, ask));
    }

    void show(Context ctx, FishPages.Typed typed) {
        ClassPages.Known known = load(ctx);
        Formats formats = Speech.of(ctx).formats(known.tank().zone(), now());
        pages.show(ctx, "classroom/fish", new FishPages(known, formats).page(typed));
    }

    static FormField ask(Context ctx) {
        return FormField.text(ASK, Speech.of(ctx).say("classroom.ask"), "");
    }
}
