package org.tankrounds.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.List;
import org.eclipse.jetty.http.BadMessageException;
import org.eclipse.jetty.io.EofException;
import org.jooq.exception.DataAccessException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tankrounds.pages.ErrorPage;
import org.tankrounds.words.Saying;

/** The only place where an exception becomes an answer. */
public final class Errors {
    private static final Logger LOG = LoggerFactory.getLogger(Errors.class);

    /** The database's refusal of text with a zero character in it, which no keyboard makes. */
    private static final String NO_CHARACTER = "22021";

    private static final Saying NOTHING = Saying.asIs("");

    private final Pages pages;
    private final ObjectMapper json;

    public Errors(Pages pages, ObjectMapper json) {
        this.pages = pages;
        this.json = json;
    }

    public void register(JavalinConfig javalin) {
        javalin.routes.exception(NotFoundException.class, (e, ctx) -> answer(ctx, 404, "errors.nothingHere",
                Saying.of("errors.orAnothers")));
        javalin.routes.exception(RefusedException.class,
                (e, ctx) -> answer(ctx, e.status(), e.saying(), e.errors(), NOTHING));
        javalin.routes.exception(DataAccessException.class, this::databaseFailed);
        javalin.routes.exception(HttpResponseException.class, (e, ctx) -> refusedByServer(ctx, e.getStatus()));
        javalin.routes.exception(EofException.class, (e, ctx) -> brokenOff(ctx));
        javalin.routes.exception(BadMessageException.class, (e, ctx) -> brokenOff(ctx));
        javalin.routes.exception(Exception.class, this::failed);
    }

    /** The sender hung up in the middle of a body, or its parts do not fit together. */
    private void brokenOff(Context ctx) {
        answer(ctx, 400, "errors.brokenOff", Saying.of("errors.sendAgain"));
    }

    /** The web server's own refusals, in our words: its messages repeat what was sent. */
    private void refusedByServer(Context ctx, int status) {
        switch (status) {
            case 404 -> answer(ctx, 404, "errors.nothingHere", Saying.of("errors.checkAddress"));
            case 405 -> answer(ctx, 405, "errors.method", NOTHING);
            case 413 -> answer(ctx, 413, "errors.tooLarge", Saying.of("errors.upTo"));
            default -> answer(ctx, status, "errors.cannotAnswer", NOTHING);
        }
    }

    private void databaseFailed(DataAccessException e, Context ctx) {
        String state = String.valueOf(e.sqlState());
        if (state.equals(NO_CHARACTER)) {
            answer(ctx, 400, "errors.noText", Saying.of("errors.nothingStored"));
            return;
        }
        boolean away = state.startsWith("08") || state.startsWith("57P") || state.startsWith("53")
                || state.equals("null") || state.equals("00000");
        if (!away) {
            failed(e, ctx);
            return;
        }
        LOG.warn("database does not answer: {}", e.getMessage());
        ctx.header("Retry-After", "5");
        answer(ctx, 503, "errors.databaseAway", Saying.of("errors.tryAgain"));
    }

    private void failed(Exception e, Context ctx) {
        String reference = Secrets.code(8);
        LOG.error("request {} {} failed, reference {}", ctx.method(), RouteName.of(ctx), reference, e);
        answer(ctx, 500, "errors.ourSide", Saying.of("errors.reference", reference));
    }

    private void answer(Context ctx, int status, String title, Saying detail) {
        answer(ctx, status, Saying.of(title), List.of(), detail);
    }

    private void answer(Context ctx, int status, Saying title, List<FieldError> errors, Saying detail) {
        ctx.status(status);
        Speech speech = Speech.of(ctx);
        if (ctx.path().startsWith("/api/")) {
            writeProblem(ctx, Problem.of(status, speech.say(title), speech.say(detail), ctx.path(), errors));
            return;
        }
        List<String> sentences = errors.stream().map(error -> speech.say(error.saying())).toList();
        pages.show(ctx, "error", new ErrorPage(speech.say(title), speech.say(detail), sentences));
    }

    private void writeProblem(Context ctx, Problem problem) {
        try {
            ctx.contentType(Problem.MEDIA_TYPE).result(json.writeValueAsBytes(problem));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a problem can always be written", e);
        }
    }
}
