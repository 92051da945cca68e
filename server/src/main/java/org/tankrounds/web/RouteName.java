package org.tankrounds.web;

import io.javalin.http.Context;
import io.javalin.router.Endpoint;

/** A request's address as the routes have it, with parameters in braces: paths themselves may carry secrets. */
final class RouteName {
    static final String NONE = "none";

    private RouteName() {}

    static String of(Context ctx) {
        return ctx.endpoints().list().stream()
                .filter(endpoint -> endpoint.method.isHttpMethod())
                .map(RouteName::path)
                .reduce((first, last) -> last)
                .orElse(NONE);
    }

    private static String path(Endpoint endpoint) {
        return endpoint.path;
    }
}
