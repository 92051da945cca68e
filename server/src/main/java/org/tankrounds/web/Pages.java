package org.tankrounds.web;

import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tankrounds.pages.Frame;
import org.tankrounds.pages.Frame.Link;
import org.tankrounds.pages.Frame.OtherLanguage;
import org.tankrounds.pages.Page;
import org.tankrounds.words.Language;
import org.tankrounds.words.PageMessages;
import org.tankrounds.words.Words;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/** Prints a page record with its template inside the frame that every page shares. */
public final class Pages {
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
        engine.setMessageResolver(new PageMessages());
    }

    /** @param template path below {@code templates/} without its ending; never made from what somebody sent */
    public void show(Context ctx, String template, Page page) {
        Caller caller = Caller.of(ctx);
        if (caller.hasAccount()) {
            ctx.header(Caller.ACCOUNT_HEADER, caller.account());
        }
        Speech speech = Speech.of(ctx);
        ctx.header("Content-Language", speech.language().tag());
        ctx.header("Vary", "Accept-Language, Cookie");
        // A fragment carries no document type, and without one browsers fall back to the layout rules of the nineties.
        ctx.html("<!DOCTYPE html>\n" + print(template, page, frame(ctx, caller, page, speech), speech.language()));
    }

    public String print(String template, Page page, Frame frame, Language language) {
        org.thymeleaf.context.Context variables = new org.thymeleaf.context.Context(language.locale());
        variables.setVariable("page", page);
        variables.setVariable("frame", frame);
        variables.setVariable("words", Words.in(language));
        return engine.process(template, variables);
    }

    private Frame frame(Context ctx, Caller caller, Page page, Speech speech) {
        String person = caller.role() == Role.CLASS_CARD ? speech.say("frame.classCard") : caller.name();
        Instant now = clock.instant();
        return new Frame(page.title(), caller.chapterName(), person, caller.signedIn() ? "/account" : "",
                caller.account(), speech.formats(caller.zone(), now).full(now), caller.formToken(),
                navigation(ctx.path(), caller.role(), speech), otherLanguages(caller, page, speech), assets.build(),
                assets::path);
    }

    /** A person's language stands in the account; and no form is sent without a token. */
    private static List<OtherLanguage> otherLanguages(Caller caller, Page page, Speech speech) {
        if (caller.signedIn() || caller.formToken().isEmpty() || !page.mayChangeLanguage()) {
            return List.of();
        }
        return Arrays.stream(Language.values()).filter(language -> language != speech.language())
                .map(language -> new OtherLanguage(language.tag(), language.ownName())).toList();
    }

    private static List<Link> navigation(String path, Role role, Speech speech) {
        List<Link> links = new ArrayList<>();
        if (role == Role.COORDINATOR || role == Role.MENTOR) {
            links.add(link(speech.say("frame.rounds"), "/rounds", path));
        }
        if (role == Role.COORDINATOR) {
            links.add(link(speech.say("frame.places"), "/places", path));
            links.add(link(speech.say("frame.people"), "/people", path));
            links.add(link(speech.say("frame.season"), "/season", path));
        }
        if (role == Role.TEACHER) {
            links.add(link(speech.say("frame.myTanks"), "/tanks", path));
        }
        return links;
    }

    private static Link link(String text, String to, String path) {
        return new Link(text, to, path.equals(to) || path.startsWith(to + "/"));
    }
}
