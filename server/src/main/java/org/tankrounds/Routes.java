package org.tankrounds;

import static org.tankrounds.web.Role.ANYBODY;

import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import org.tankrounds.web.HealthHandlers;

/** Every URL of the service, grouped by feature. */
final class Routes {
    private final HealthHandlers health;

    Routes(HealthHandlers health) {
        this.health = health;
    }

    void add(JavalinConfig javalin) {
        RoutesConfig routes = javalin.routes;

        routes.get("/healthz", health::alive, ANYBODY);
        routes.get("/readyz", health::ready, ANYBODY);
        routes.get("/metrics", health::metrics, ANYBODY);
        routes.get("/openapi.yaml", health::description, ANYBODY);
    }
}
