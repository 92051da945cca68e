package org.tankrounds;

import static org.tankrounds.web.Role.ANYBODY;
import static org.tankrounds.web.Role.CHAPTER_TOKEN;
import static org.tankrounds.web.Role.OPEN;
import static org.tankrounds.web.Role.SIGNED_IN;
import static org.tankrounds.web.Role.TOKENS;

import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import org.tankrounds.people.SignInHandlers;
import org.tankrounds.readings.BatchApi;
import org.tankrounds.readings.CorrectionHandlers;
import org.tankrounds.readings.LogHandlers;
import org.tankrounds.readings.ReadingApi;
import org.tankrounds.web.HealthHandlers;

/** Every URL of the service, grouped by feature. */
final class Routes {
    private final HealthHandlers health;
    private final SignInHandlers signIn;
    private final ReadingApi readingApi;
    private final BatchApi batchApi;
    private final LogHandlers log;
    private final CorrectionHandlers corrections;

    Routes(HealthHandlers health, SignInHandlers signIn, ReadingApi readingApi, BatchApi batchApi,
            LogHandlers log, CorrectionHandlers corrections) {
        this.health = health;
        this.signIn = signIn;
        this.readingApi = readingApi;
        this.batchApi = batchApi;
        this.log = log;
        this.corrections = corrections;
    }

    void add(JavalinConfig javalin) {
        RoutesConfig routes = javalin.routes;

        routes.get("/healthz", health::alive, OPEN);
        routes.get("/readyz", health::ready, OPEN);
        routes.get("/metrics", health::metrics, OPEN);
        routes.get("/openapi.yaml", health::description, OPEN);

        routes.get("/", signIn::start, ANYBODY);
        routes.get("/sign-in", signIn::show, ANYBODY);
        routes.post("/sign-in", signIn::create, ANYBODY);
        routes.post("/sign-out", signIn::remove, ANYBODY);

        routes.get("/tanks/{tank}/log", log::show, SIGNED_IN);
        routes.post("/tanks/{tank}/log", log::create, SIGNED_IN);
        routes.get("/tanks/{tank}/readings/{reading}", corrections::show, SIGNED_IN);
        routes.post("/tanks/{tank}/readings/{reading}", corrections::update, SIGNED_IN);
        routes.post("/api/v1/tanks/{tank}/readings", readingApi::create, TOKENS);
        routes.get("/api/v1/tanks/{tank}/readings", readingApi::list, TOKENS);
        routes.get("/api/v1/tanks/{tank}/readings/{reading}", readingApi::show, TOKENS);
        routes.post("/api/v1/readings:batch", batchApi::create, CHAPTER_TOKEN);
    }
}
