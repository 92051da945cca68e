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

/** The only place where an exception becomes an answer. */
public final class Errors {
    private static final Logger LOG = LoggerFactory.getLogger(Errors.class);

    /** The database's refusal of text with a zero character in it, which no keyboard makes. */
    private static final String NO_CHARACTER = "22021";

    private final Pages pages;
    private final ObjectMapper json;

    public Errors(Pages pages, ObjectMapper json) {
        this.pages = pages;
        this.json = json;
    }

    public void register(JavalinConfig javalin) {
        javalin.routes.exception(NotFoundException.class, (e, ctx) -> answer(ctx, 404, "There is nothing here.",
                List.of(), "It does not exist, or it belongs to somebody else."));
        javalin.routes.exception(RefusedException.class,
                (e, ctx) -> answer(ctx, e.status(), e.title(), e.errors(), ""));
        javalin.routes.exception(DataAccessException.class, this::databaseFailed);
        javalin.routes.exception(HttpResponseException.class, (e, ctx) -> refusedByServer(ctx, e.getStatus()));
        javalin.routes.exception(EofException.class, (e, ctx) -> brokenOff(ctx));
        javalin.routes.exception(BadMessageException.class, (e, ctx) -> brokenOff(ctx));
        javalin.routes.exception(Exception.class, this::failed);
    }

    /** The sender hung up in the middle of a body, or its parts do not fit together. */
    private void brokenOff(Context ctx) {
        answer(ctx, 400, "What was sent broke off.", List.of(), "Nothing was stored. Send it again.");
    }

    /** The web server's own refusals, in our words: its messages repeat what was sent. */
    private void refusedByServer(Context ctx, int status) {
        switch (status) {
            case 404 -> answer(ctx, 404, "There is nothing here.", List.of(), "Check the address.");
            case 405 -> answer(ctx, 405, "This address does not take that method.", List.of(), "");
            case 413 -> answer(ctx, 413, "That is too large.", List.of(), "Up to 1 MB is taken in one go.");
            default -> answer(ctx, status, "That cannot be answered.", List.of(), "");
        }
    }

    private void databaseFailed(DataAccessException e, Context ctx) {
        String state = String.valueOf(e.sqlState());
        if (state.equals(NO_CHARACTER)) {
            answer(ctx, 400, "What was sent holds a character that is no text.", List.of(), "Nothing was stored.");
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
        answer(ctx, 503, "The database does not answer just now.", List.of(),
                "Nothing was stored. Try again in a few seconds.");
    }

    private void failed(Exception e, Context ctx) {
        String reference = Secrets.code(8);
        LOG.error("request {} {} failed, reference {}", ctx.method(), RouteName.of(ctx), reference, e);
        answer(ctx, 500, "Something went wrong on our side.", List.of(), "Reference " + reference + ".");
    }

    private void answer(Context ctx, int status, String title, List<FieldError> errors, String detail) {
        ctx.status(status);
        if (ctx.path().startsWith("/api/")) {
            Problem problem = Problem.of(status, title, ctx.path(), errors);
            writeProblem(ctx, new Problem(problem.type(), title, status, detail, problem.instance(), problem.errors()));
            return;
        }
        List<String> sentences = errors.stream().map(FieldError::message).toList();
        pages.show(ctx, "error", new ErrorPage(title, detail, sentences));
    }

    private void writeProblem(Context ctx, Problem problem) {
        try {
            ctx.contentType(Problem.MEDIA_TYPE).result(json.writeValueAsBytes(problem));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a problem can always be written", e);
        }
    }
}
