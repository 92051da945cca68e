package org.tankrounds.classroom;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import org.jooq.DSLContext;
import org.tankrounds.advice.Act;
import org.tankrounds.db.Transactions;
import org.tankrounds.rounds.TankToday;
import org.tankrounds.tasks.Task;
import org.tankrounds.tasks.TaskRepository;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Formats;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Speech;

/** The page of a class, and what it is asked to do and ticks as done. */
public final class ClassHandlers {
    private static final String SAVED = "saved";
    private static final Set<String> RECEIPTS = Set.of("done", "undone", "asked", "changed");

    private final Transactions transactions;
    private final TaskRepository tasks;
    private final ClassDesk desk;

    public ClassHandlers(Transactions transactions, TaskRepository tasks, ClassDesk desk) {
        this.transactions = transactions;
        this.tasks = tasks;
        this.desk = desk;
    }

    public void show(Context ctx) {
        String saved = Optional.ofNullable(ctx.queryParam(SAVED)).filter(RECEIPTS::contains)
                .map(what -> Speech.of(ctx).say("classroom.saved." + what)).orElse("");
        desk.show(ctx, saved, ClassDesk.ask(ctx));
    }

    /** A person asks the class. */
    public void ask(Context ctx) {
        Caller caller = Caller.of(ctx);
        int tankId = desk.tank(ctx).tankId();
        FormInput form = FormInput.of(ctx, List.of(ClassDesk.ASK));
        String words = form.required(ClassDesk.ASK, Task.LONGEST, "classroom.ask.empty");
        if (!form.ok()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            desk.show(ctx, "", form.textBox(ClassDesk.ASK, "classroom.ask"));
            return;
        }
        transactions.inChapter(caller.chapterId(), tx -> tasks.ask(tx, caller, tankId, words, desk.now()));
        back(ctx, "asked");
    }

    public void finish(Context ctx) {
        change(ctx, "done", (tx, task) -> tasks.finish(tx, Caller.of(ctx), task.tankId(), task.taskId(), desk.now()));
    }

    public void undo(Context ctx) {
        change(ctx, "undone", (tx, task) -> tasks.undo(
                tx, Caller.of(ctx).chapterId(), task.tankId(), task.taskId(), desk.now()));
    }

    public void drop(Context ctx) {
        change(ctx, "undone", (tx, task) -> tasks.drop(
                tx, Caller.of(ctx).chapterId(), task.tankId(), task.taskId(), desk.now()));
    }

    private record Named(int tankId, int taskId) {}

    /** @param work false where somebody else was quicker, or the tank has no such task */
    private void change(Context ctx, String receipt, BiPredicate<DSLContext, Named> work) {
        Named task = new Named(desk.tank(ctx).tankId(), number(ctx.pathParam("task"), "task"));
        boolean noted = transactions.inChapter(Caller.of(ctx).chapterId(), tx -> work.test(tx, task));
        back(ctx, noted ? receipt : "changed");
    }

    /** A class did what the advice said; kept in the words that it read. */
    public void tick(Context ctx) {
        Caller caller = Caller.of(ctx);
        TankToday today = desk.load(ctx).today();
        Act.Kind kind = kind(ctx.pathParam("act"));
        Formats formats = Speech.of(ctx).formats(today.tank().zone(), desk.now());
        Optional<TankToday.Advised> advised = today.advice(formats).stream()
                .filter(one -> one.kind() == kind).findFirst();
        advised.ifPresent(one -> transactions.inChapter(caller.chapterId(), tx -> tasks.tick(tx, caller,
                today.tank().tankId(), ClassPages.code(kind), one.words().act(), desk.now())));
        back(ctx, advised.isPresent() ? "done" : "changed");
    }

    private static Act.Kind kind(String code) {
        for (Act.Kind kind : Act.Kind.values()) {
            if (ClassPages.code(kind).equals(code)) {
                return kind;
            }
        }
        throw new NotFoundException("act");
    }

    static int number(String text, String what) {
        if (!text.matches("[0-9]{1,9}")) {
            throw new NotFoundException(what);
        }
        return Integer.parseInt(text);
    }

    private static void back(Context ctx, String saved) {
        ctx.redirect("/tanks/" + ctx.pathParam("tank") + "/class?" + SAVED + "=" + saved, HttpStatus.SEE_OTHER);
    }
}
