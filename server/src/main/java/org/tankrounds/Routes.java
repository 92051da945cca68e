package org.tankrounds;

import static org.tankrounds.web.Role.ANYBODY;
import static org.tankrounds.web.Role.COORDINATOR;
import static org.tankrounds.web.Role.OPEN;
import static org.tankrounds.web.Role.SIGNED_IN;

import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import org.tankrounds.people.AccountHandlers;
import org.tankrounds.people.InvitationHandlers;
import org.tankrounds.people.PersonHandlers;
import org.tankrounds.people.SetUpHandlers;
import org.tankrounds.people.SignInHandlers;
import org.tankrounds.people.TokenHandlers;
import org.tankrounds.web.HealthHandlers;

/** Every URL of the service, grouped by feature. */
final class Routes {
    record People(SignInHandlers signIn, SetUpHandlers setUp, InvitationHandlers invitations, AccountHandlers account,
            PersonHandlers people, TokenHandlers tokens) {}

    private final HealthHandlers health;
    private final People people;

    Routes(HealthHandlers health, People people) {
        this.health = health;
        this.people = people;
    }

    void add(JavalinConfig javalin) {
        RoutesConfig routes = javalin.routes;

        routes.get("/healthz", health::alive, OPEN);
        routes.get("/readyz", health::ready, OPEN);
        routes.get("/metrics", health::metrics, OPEN);
        routes.get("/openapi.yaml", health::description, OPEN);

        addPeople(routes);
    }

    private void addPeople(RoutesConfig routes) {
        routes.get("/", people.signIn()::start, ANYBODY);
        routes.get("/sign-in", people.signIn()::show, ANYBODY);
        routes.post("/sign-in", people.signIn()::create, ANYBODY);
        routes.post("/sign-out", people.signIn()::remove, ANYBODY);
        routes.get("/set-up/{link}", people.setUp()::show, ANYBODY);
        routes.post("/set-up/{link}", people.setUp()::make, ANYBODY);
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
}
