package org.tankrounds.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Handler;
import io.javalin.http.RequestLogger;
import io.javalin.json.JavalinJackson;
import java.util.function.Consumer;
import org.eclipse.jetty.http.UriCompliance;
import org.tankrounds.config.Config;

/** Javalin with the settings that must not be forgotten. */
public final class WebServer {
    private static final long MAX_BODY_BYTES = 1_000_000;
    private static final long STOP_TIMEOUT_MS = 10_000;

    private WebServer() {}

    /**
     * @param doorman settles the caller before any matched handler, or refuses
     * @param afterwards told of every answer and how long it took
     * @param routes adds every URL
     */
    public static Javalin create(
            Config config, ObjectMapper json, Assets assets, Errors errors, Handler doorman,
            RequestLogger afterwards, Consumer<JavalinConfig> routes) {
        SecurityHeaders headers = new SecurityHeaders(config.secure());
        return Javalin.create(javalin -> {
            javalin.startup.showJavalinBanner = false;
            javalin.startup.showOldJavalinVersionWarning = false;
            javalin.http.maxRequestSize = MAX_BODY_BYTES;
            javalin.http.defaultContentType = "text/plain; charset=utf-8";
            javalin.http.generateEtags = false;
            javalin.jsonMapper(new JavalinJackson(json, false));
            javalin.jetty.host = config.host();
            javalin.jetty.port = config.port();
            javalin.jetty.modifyServer(server -> {
                server.setStopTimeout(STOP_TIMEOUT_MS);
                server.setErrorHandler(new BareErrors(headers));
            });
            javalin.jetty.modifyHttpConfiguration(http -> {
                http.setSendServerVersion(false);
                http.setUriCompliance(UriCompliance.DEFAULT);
            });
            javalin.requestLogger.http(afterwards);
            javalin.routes.before(ctx -> {
                headers.set(ctx::header);
                ctx.header(OfflineHandlers.BUILD_HEADER, assets.build());
            });
            javalin.routes.beforeMatched(doorman);
            errors.register(javalin);
            javalin.routes.get("/assets/{hash}/{file}", assets::serve, Role.OPEN);
            routes.accept(javalin);
        });
    }
}
