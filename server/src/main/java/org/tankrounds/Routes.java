package org.tankrounds;

import static org.tankrounds.web.Role.ANYBODY;
import static org.tankrounds.web.Role.CHAPTER_TOKEN;
import static org.tankrounds.web.Role.COORDINATOR;
import static org.tankrounds.web.Role.OPEN;

import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import org.tankrounds.people.SignInHandlers;
import org.tankrounds.web.HealthHandlers;

/** Every URL of the service, grouped by feature. */
final class Routes {
    private final HealthHandlers health;
    private final SignInHandlers signIn;
    private final PlacePages places;
    private final SeasonPages season;

    Routes(HealthHandlers health, SignInHandlers signIn, PlacePages places, SeasonPages season) {
        this.health = health;
        this.signIn = signIn;
        this.places = places;
        this.season = season;
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

        addPlaces(routes);
        addSeason(routes);
    }

    private void addPlaces(RoutesConfig routes) {
        routes.get("/places", places.overview()::show, COORDINATOR);
        routes.get("/places/schools/new", places.schools()::showNew, COORDINATOR);
        routes.post("/places/schools", places.schools()::create, COORDINATOR);
        routes.get("/places/schools/{school}", places.schools()::showEdit, COORDINATOR);
        routes.post("/places/schools/{school}", places.schools()::update, COORDINATOR);
        routes.get("/places/schools/{school}/rooms/new", places.rooms()::showNew, COORDINATOR);
        routes.post("/places/schools/{school}/rooms", places.rooms()::create, COORDINATOR);
        routes.get("/places/schools/{school}/room", places.rooms()::showEdit, COORDINATOR);
        routes.post("/places/schools/{school}/room", places.rooms()::update, COORDINATOR);
        routes.get("/places/schools/{school}/tanks/new", places.tanks()::showNew, COORDINATOR);
        routes.post("/places/schools/{school}/tanks", places.tanks()::create, COORDINATOR);
        routes.get("/places/tanks/{tank}", places.tanks()::showEdit, COORDINATOR);
        routes.post("/places/tanks/{tank}", places.tanks()::update, COORDINATOR);
        routes.post("/places/tanks/{tank}/retirement", places.tanks()::retire, COORDINATOR);
        routes.post("/places/tanks/{tank}/return", places.tanks()::putBack, COORDINATOR);
        routes.get("/places/kits", places.kits()::show, COORDINATOR);
        routes.get("/places/kits/new", places.kits()::showNew, COORDINATOR);
        routes.post("/places/kits", places.kits()::create, COORDINATOR);
        routes.get("/places/kits/kit", places.kits()::showEdit, COORDINATOR);
        routes.post("/places/kits/kit", places.kits()::update, COORDINATOR);
    }

    private void addSeason(RoutesConfig routes) {
        routes.get("/season", season.seasons()::showCurrent, COORDINATOR);
        routes.get("/season/new", season.seasons()::showNew, COORDINATOR);
        routes.post("/season", season.seasons()::create, COORDINATOR);
        routes.get("/season/{season}", season.seasons()::show, COORDINATOR);
        routes.get("/season/{season}/edit", season.seasons()::showEdit, COORDINATOR);
        routes.post("/season/{season}", season.seasons()::update, COORDINATOR);
        routes.get("/season/{season}/tanks/{tank}/lots/new", season.lots()::showNew, COORDINATOR);
        routes.post("/season/{season}/tanks/{tank}/lots", season.lots()::create, COORDINATOR);
        routes.get("/season/{season}/tanks/{tank}/lots/{lot}", season.lots()::showEdit, COORDINATOR);
        routes.post("/season/{season}/tanks/{tank}/lots/{lot}", season.lots()::update, COORDINATOR);

        routes.get("/season/{season}/summary", season.summary()::showPage, COORDINATOR);
        routes.get("/season/{season}/summary.csv", season.summary()::showCsv, COORDINATOR);
        routes.get("/season/{season}/summary.xlsx", season.summary()::showXlsx, COORDINATOR);
        routes.get("/season/{season}/summary.pdf", season.summary()::showPdf, COORDINATOR);
        routes.get("/season/{season}/summary.json", season.summary()::showJson, COORDINATOR);

        routes.get("/api/v1/seasons/{season}/summary", season.summary()::show, CHAPTER_TOKEN);
        routes.get("/api/v1/seasons/{season}/summary.csv", season.summary()::showCsv, CHAPTER_TOKEN);
        routes.get("/api/v1/seasons/{season}/summary.xlsx", season.summary()::showXlsx, CHAPTER_TOKEN);
        routes.get("/api/v1/seasons/{season}/summary.pdf", season.summary()::showPdf, CHAPTER_TOKEN);
        routes.get("/api/v1/seasons/{season}/summary.json", season.summary()::showJson, CHAPTER_TOKEN);
    }
}
