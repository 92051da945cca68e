package org.tankrounds.readings;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.LoggerFiles.Found;
import org.tankrounds.readings.files.Choices;
import org.tankrounds.readings.files.UnreadableFileException;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Formats;
import org.tankrounds.web.MultipartForm.SentFile;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;
import org.tankrounds.web.Uploads;

/** The pages of a tank's logger files. */
public final class FileHandlers {
    /** The one route whose form comes with a file. */
    public static final String UPLOAD = "/tanks/{tank}/files";

    private static final String FILE = "file";
    private static final String ACT = "act";
    private static final String KEEP = "keep";
    private static final int UNACCEPTABLE = 422;
    private static final int OUT_OF_DATE = 409;

    private final LoggerFiles files;
    private final Pages pages;
    private final Clock clock;

    public FileHandlers(LoggerFiles files, Pages pages, Clock clock) {
        this.files = files;
        this.pages = pages;
        this.clock = clock;
    }

    public void list(Context ctx) {
        list(ctx, files.tank(Caller.of(ctx), ctx.pathParam("tank")), "");
    }

    public void create(Context ctx) {
        Tank tank = files.tank(Caller.of(ctx), ctx.pathParam("tank"));
        Optional<SentFile> sent = Uploads.isOne(ctx) ? Uploads.of(ctx).file(FILE) : Optional.empty();
        if (sent.isEmpty()) {
            ctx.status(UNACCEPTABLE);
            list(ctx, tank, wording(ctx, tank).say("loggers.noneChosen"));
            return;
        }
        try {
            String code = files.send(Caller.of(ctx), tank, plainlyNamed(sent.get()));
            ctx.redirect("/tanks/" + tank.code() + "/files/" + code, HttpStatus.SEE_OTHER);
        } catch (UnreadableFileException refusal) {
            ctx.status(UNACCEPTABLE);
            list(ctx, tank, wording(ctx, tank).trouble(refusal.trouble()));
        }
    }

    public void show(Context ctx) {
        show(ctx, find(ctx), "");
    }

    /** Looks at a file again in the light of what was chosen, or keeps it: but only as it was shown. */
    public void update(Context ctx) {
        Found found = find(ctx);
        String here = ctx.path();
        if (found.file().isKept()) {
            ctx.redirect(here, HttpStatus.SEE_OTHER);
            return;
        }
        Choices chosen = chosen(ctx);
        files.choose(Caller.of(ctx), found, chosen);
        if (!KEEP.equals(ctx.formParam(ACT))) {
            ctx.redirect(here, HttpStatus.SEE_OTHER);
            return;
        }
        boolean asShown = FilePageMaker.fingerprint(chosen.said()).equals(ctx.formParam("shown"));
        if (!asShown) {
            ctx.status(OUT_OF_DATE);
            show(ctx, find(ctx), "loggers.changed");
            return;
        }
        keep(ctx, here);
    }

    public void takeBack(Context ctx) {
        Found taken = files.takeBack(Caller.of(ctx), ctx.pathParam("tank"), ctx.pathParam(FILE));
        String list = "/tanks/" + taken.tank().code() + "/files";
        ctx.redirect(taken.file().isKept() ? list + "/" + taken.file().code() : list, HttpStatus.SEE_OTHER);
    }

    private void keep(Context ctx, String here) {
        Optional<KeptFile> kept = files.keep(Caller.of(ctx), ctx.pathParam("tank"), ctx.pathParam(FILE));
        if (kept.isPresent()) {
            ctx.redirect(here, HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(UNACCEPTABLE);
        show(ctx, find(ctx), "");
    }

    private Found find(Context ctx) {
        return files.find(Caller.of(ctx), ctx.pathParam("tank"), ctx.pathParam(FILE));
    }

    private static Choices chosen(Context ctx) {
        Map<String, String> said = new LinkedHashMap<>();
        for (String name : Choices.NAMES) {
            Optional.ofNullable(ctx.formParam(name)).filter(text -> !text.isEmpty() && text.length() <= 20)
                    .ifPresent(text -> said.put(name, text));
        }
        return new Choices(said);
    }

    /** Browsers of old send the folders along. */
    private static SentFile plainlyNamed(SentFile sent) {
        String name = sent.name().replaceAll(".*[/\\\\]", "").replaceAll("\\p{Cntrl}", "").strip();
        return new SentFile(name.isEmpty() ? "file" : name, sent.content());
    }

    /** @param alert key of the sentence why nothing was kept just now; empty for none */
    private void show(Context ctx, Found found, String alert) {
        FilePageMaker maker = maker(ctx, found.tank());
        if (found.file().isKept()) {
            pages.show(ctx, "readings/logger-file",
                    maker.kept(found.file(), files.countCorrected(Caller.of(ctx), found.file())));
            return;
        }
        try {
            pages.show(ctx, "readings/logger-file", maker.waiting(files.preview(Caller.of(ctx), found), alert));
        } catch (UnreadableFileException refusal) {
            ctx.status(UNACCEPTABLE);
            if (!found.file().choices().said().containsKey(Choices.DELIMITER)) {
                list(ctx, found.tank(), wording(ctx, found.tank()).trouble(refusal.trouble()));
                return;
            }
            files.choose(Caller.of(ctx), found, found.file().choices().without(Choices.DELIMITER));
            show(ctx, find(ctx), "loggers.dividedOtherwise");
        }
    }

    private void list(Context ctx, Tank tank, String error) {
        pages.show(ctx, "readings/logger-files", maker(ctx, tank).list(files.list(Caller.of(ctx), tank), error));
    }

    private FilePageMaker maker(Context ctx, Tank tank) {
        return new FilePageMaker(tank, formats(ctx, tank));
    }

    private FileWording wording(Context ctx, Tank tank) {
        return new FileWording(formats(ctx, tank));
    }

    private Formats formats(Context ctx, Tank tank) {
        return Speech.of(ctx).formats(tank.zone(), clock.instant());
    }
}
