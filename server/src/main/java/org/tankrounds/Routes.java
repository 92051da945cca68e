package org.tankrounds;

import static org.tankrounds.web.Role.ANYBODY;
import static org.tankrounds.web.Role.CHAPTER_TOKEN;
import static org.tankrounds.web.Role.OPEN;
import static org.tankrounds.web.Role.TOKENS;

import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import org.tankrounds.people.SignInHandlers;
import org.tankrounds.readings.BatchApi;
import org.tankrounds.readings.ReadingApi;
import org.tankrounds.web.HealthHandlers;

/** Every URL of the service, grouped by feature. */
final class Routes {
    private final HealthHandlers health;
    private final SignInHandlers signIn;
    private final ReadingApi readingApi;
    private final BatchApi batchApi;

    Routes(HealthHandlers health, SignInHandlers signIn, ReadingApi readingApi, BatchApi batchApi) {
        this.health = health;
        this.signIn = signIn;
        this.readingApi = readingApi;
        this.batchApi = batchApi;
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

        routes.post("/api/v1/tanks/{tank}/readings", readingApi::create, TOKENS);
        routes.get("/api/v1/tanks/{tank}/readings", readingApi::list, TOKENS);
        routes.get("/api/v1/tanks/{tank}/readings/{reading}", readingApi::show, TOKENS);
        routes.post("/api/v1/readings:batch", batchApi::create, CHAPTER_TOKEN);
    }
}
