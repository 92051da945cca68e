package org.tankrounds.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;

/** What a device needs so that the class's form works without Wi-Fi: the worker, the manifest, and a sign of life. */
public final class OfflineHandlers {
    /** On every answer: a portal that answers in our place does not know it. */
    static final String BUILD_HEADER = "Tankrounds-Build";

    private static final String WORKER = "sw.js";
    /** Forgets the pages that devices keep, and itself; readings not yet sent stay. */
    private static final String KILL_SWITCH = "sw-off.js";
    private static final List<String> FOR_THE_FORM =
            List.of("tankrounds.css", "mark.svg", "words.js", "outbox.js", "signed-in.js", "log.js", "outbox-list.js");

    /** @param account public code of whoever is signed in; empty for nobody */
    private record Ping(String account, String formToken, String now, String build) {}

    private record Icon(String src, String sizes, String type) {}

    private record Manifest(String name, String short_name, String start_url, String scope, String display,
            String background_color, String theme_color, List<Icon> icons) {}

    private final Assets assets;
    private final ObjectMapper json;
    private final Clock clock;
    private final String worker;

    /** @param kept false hands out the kill switch in place of the worker */
    public OfflineHandlers(Assets assets, ObjectMapper json, Clock clock, boolean kept) {
        this.assets = assets;
        this.json = json;
        this.clock = clock;
        this.worker = kept ? constants() + Assets.text(WORKER) : Assets.text(KILL_SWITCH);
    }

    /** Whether our own service can be reached, as whom, and what a form needs to be taken. */
    public void ping(Context ctx) {
        Caller caller = Caller.of(ctx);
        ctx.json(new Ping(caller.account(), caller.hasAccount() ? caller.formToken() : "", clock.instant().toString(),
                assets.build()));
    }

    public void worker(Context ctx) {
        ctx.header("Cache-Control", "no-cache").contentType("text/javascript; charset=utf-8").result(worker);
    }

    public void manifest(Context ctx) {
        List<Icon> icons = List.of(
                new Icon(assets.path("mark.svg"), "any", "image/svg+xml"),
                new Icon(assets.path("mark-192.png"), "192x192", "image/png"),
                new Icon(assets.path("mark-512.png"), "512x512", "image/png"));
        ctx.header("Cache-Control", "no-cache").contentType("application/manifest+json").result(write(new Manifest(
                "Tankrounds", "Tankrounds", "/", "/", "standalone", "#fbfaf6", "#0d4f5c", icons)));
    }

    /** What the worker cannot know by itself: a new build is a new worker. */
    private String constants() {
        List<String> paths = FOR_THE_FORM.stream().map(assets::path).toList();
        return "\"use strict\";\nconst BUILD = " + quoted(assets.build()) + ";\nconst ASSETS = " + quoted(paths)
                + ";\nconst OUTBOX = " + quoted(assets.path("outbox.js")) + ";\n";
    }

    private String quoted(Object value) {
        return new String(write(value), StandardCharsets.UTF_8);
    }

    private byte[] write(Object value) {
        try {
            return json.writeValueAsBytes(value);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("names can always be written", e);
        }
    }
}
