package org.tankrounds.web;

import io.javalin.http.Context;
import java.time.Clock;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tankrounds.pages.Frame;
import org.tankrounds.pages.Frame.Link;
import org.tankrounds.pages.Page;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/** Prints a page record with its template inside the frame that every page shares. */
public final class Pages {
    private static final DateTimeFormatter NOW = DateTimeFormatter.ofPattern("EEE d MMM, H:mm", Locale.ENGLISH);

    private final TemplateEngine engine = new TemplateEngine();
    private final Assets assets;
    private final Clock clock;

    public Pages(Assets assets, Clock clock) {
        this.assets = assets;
        this.clock = clock;
        ClassLoaderTemplateResolver resolver = new ClassLoaderTemplateResolver();
        resolver.setPrefix("templates/");
        resolver.setSuffix(".html");
        resolver.setTemplateMode(TemplateMode.HTML);
        resolver.setCharacterEncoding("UTF-8");
        engine.setTemplateResolver(resolver);
    }

    /** @param template path below {@code templates/} without its ending; never made from what somebody sent */
    public void show(Context ctx, String template, Page page) {
        Caller caller = Caller.of(ctx);
        if (caller.hasAccount()) {
            ctx.header(Caller.ACCOUNT_HEADER, caller.account());
        }
        // A fragment carries no document type, and without one browsers fall back to the layout rules of the nineties.
        ctx.html("<!DOCTYPE html>\n" + print(template, page, frame(ctx, caller, page)));
    }

    public String print(String template, Page page, Frame frame) {
        org.thymeleaf.context.Context variables = new org.thymeleaf.context.Context(Locale.ENGLISH);
        variables.setVariable("page", page);
        variables.setVariable("frame", frame);
        return engine.process(template, variables);
    }

    private Frame frame(Context ctx, Caller caller, Page page) {
        String now = NOW.format(ZonedDateTime.now(clock.withZone(caller.zone())));
        return new Frame(page.title(), caller.chapterName(), caller.name(), caller.signedIn() ? "/account" : "",
                caller.account(), now, caller.formToken(), navigation(ctx.path(), caller.role()), assets.build(),
                assets::path);
    }

    private static List<Link> navigation(String path, Role role) {
        List<Link> links = new ArrayList<>();
        if (role == Role.COORDINATOR || role == Role.MENTOR) {
            links.add(link("Rounds", "/rounds", path));
        }
        if (role == Role.COORDINATOR) {
            links.add(link("Places", "/places", path));
            links.add(link("People", "/people", path));
            links.add(link("Season", "/season", path));
        }
        if (role == Role.TEACHER) {
            links.add(link("My tanks", "/tanks", path));
        }
        return links;
    }

    private static Link link(String text, String to, String path) {
        return new Link(text, to, path.equals(to) || path.startsWith(to + "/"));
    }
}
