package org.tankrounds;

import static org.tankrounds.web.Role.ANYBODY;
import static org.tankrounds.web.Role.OPEN;

import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import org.tankrounds.people.SignInHandlers;
import org.tankrounds.web.HealthHandlers;

/** Every URL of the service, grouped by feature. */
final class Routes {
    private final HealthHandlers health;
    private final SignInHandlers signIn;

    Routes(HealthHandlers health, SignInHandlers signIn) {
        this.health = health;
        this.signIn = signIn;
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
    }
}
