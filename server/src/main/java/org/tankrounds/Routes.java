package org.tankrounds;

import static org.tankrounds.web.Role.ANYBODY;
import static org.tankrounds.web.Role.CHAPTER_TOKEN;
import static org.tankrounds.web.Role.OPEN;
import static org.tankrounds.web.Role.ROUNDS;
import static org.tankrounds.web.Role.SIGNED_IN;
import static org.tankrounds.web.Role.TEACHER;

import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import org.tankrounds.people.SignInHandlers;
import org.tankrounds.rounds.HelpHandlers;
import org.tankrounds.rounds.RoundsApi;
import org.tankrounds.rounds.RoundsHandlers;
import org.tankrounds.rounds.TankHandlers;
import org.tankrounds.web.HealthHandlers;

/** Every URL of the service, grouped by feature. */
final class Routes {
    private final HealthHandlers health;
    private final SignInHandlers signIn;
    private final RoundsHandlers rounds;
    private final RoundsApi roundsApi;
    private final TankHandlers tanks;
    private final HelpHandlers help;

    Routes(HealthHandlers health, SignInHandlers signIn, RoundsHandlers rounds, RoundsApi roundsApi,
            TankHandlers tanks, HelpHandlers help) {
        this.health = health;
        this.signIn = signIn;
        this.rounds = rounds;
        this.roundsApi = roundsApi;
        this.tanks = tanks;
        this.help = help;
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

        routes.get("/rounds", rounds::show, ROUNDS);
        routes.get("/tanks", tanks::list, TEACHER);
        routes.get("/tanks/{tank}", tanks::show, SIGNED_IN);
        routes.get("/tanks/{tank}/series.json", tanks::series, SIGNED_IN);
        routes.get("/help", help::show, ANYBODY);
        routes.get("/api/v1/rounds", roundsApi::show, CHAPTER_TOKEN);
    }
}
