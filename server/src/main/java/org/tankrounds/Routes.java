package org.tankrounds;

import static org.tankrounds.web.Role.ANYBODY;
import static org.tankrounds.web.Role.COORDINATOR;
import static org.tankrounds.web.Role.OPEN;
import static org.tankrounds.web.Role.SIGNED_IN;

import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import org.tankrounds.web.HealthHandlers;

/** Every URL of the service, grouped by feature. */
final class Routes {
    private final HealthHandlers health;
    private final PeoplePages people;
    private final PlacePages places;

    Routes(HealthHandlers health, PeoplePages people, PlacePages places) {
        this.health = health;
        this.people = people;
        this.places = places;
    }

    void add(JavalinConfig javalin) {
        RoutesConfig routes = javalin.routes;

        routes.get("/healthz", health::alive, OPEN);
        routes.head("/healthz", health::alive, OPEN);
        routes.get("/readyz", health::ready, OPEN);
        routes.head("/readyz", health::ready, OPEN);
        routes.get("/metrics", health::metrics, OPEN);
        routes.get("/openapi.yaml", health::description, OPEN);

        addPeople(routes);
        addPlaces(routes);
    }

    private void addPeople(RoutesConfig routes) {
        routes.get("/", people.signIn()::start, ANYBODY);
        routes.get("/sign-in", people.signIn()::show, ANYBODY);
        routes.post("/sign-in", people.signIn()::create, ANYBODY);
        routes.post("/sign-out", people.signIn()::remove, ANYBODY);
        routes.get("/set-up/{link}", people.firstChapter()::show, ANYBODY);
        routes.post("/set-up/{link}", people.firstChapter()::make, ANYBODY);
        routes.get("/invitations/{link}", people.invitations()::show, ANYBODY);
        routes.post("/invitations/{link}", people.invitations()::accept, ANYBODY);
        routes.get("/account", people.account()::show, SIGNED_IN);
        routes.post("/account/password", people.account()::changePassword, SIGNED_IN);

        routes.get("/people", people.people()::list, COORDINATOR);
        routes.post("/people", people.people()::create, COORDINATOR);
        routes.get("/people/new", people.people()::showNew, COORDINATOR);
        routes.get("/people/{person}", people.people()::showEdit, COORDINATOR);
        routes.post("/people/{person}", people.people()::update, COORDINATOR);
        routes.post("/people/{person}/invitation", people.people()::invite, COORDINATOR);
        routes.post("/people/{person}/disabled", people.people()::disable, COORDINATOR);
        routes.post("/people/{person}/enabled", people.people()::enable, COORDINATOR);
        routes.get("/tokens", people.tokens()::list, COORDINATOR);
        routes.post("/tokens", people.tokens()::issue, COORDINATOR);
        routes.post("/tokens/{token}/revoked", people.tokens()::revoke, COORDINATOR);
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
}
