package org.tankrounds.people;

import io.javalin.http.Context;
import java.net.URI;
import java.util.Optional;

/** How others reach the service, for links that are handed over: as configured, else as the asking browser does. */
public final class SiteAddress {
    private final Optional<URI> baseUrl;

    public SiteAddress(Optional<URI> baseUrl) {
        this.baseUrl = baseUrl;
    }

    /** Others cannot follow such an address. */
    static boolean isThisMachineOnly(String address) {
        String host = String.valueOf(URI.create(address).getHost());
        return host.equals("localhost") || host.equals("[::1]") || host.startsWith("127.");
    }

    public String of(Context ctx, String path) {
        String base = baseUrl.map(URI::toString)
                .map(url -> url.endsWith("/") ? url.substring(0, url.length() - 1) : url)
                .orElseGet(() -> ctx.scheme() + "://" + ctx.host());
        return base + path;
    }
}
