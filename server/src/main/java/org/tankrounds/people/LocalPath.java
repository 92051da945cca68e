package org.tankrounds.people;

import io.javalin.http.Context;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Pattern;

/** Where to go on after signing in: a page of this service, never another site. */
final class LocalPath {
    static final String START = "/";
    private static final Pattern SAFE = Pattern.compile("/(?![/\\\\])[\\x21-\\x7e&&[^\\\\\"<>]]{0,800}");

    private LocalPath() {}

    static String orStart(String path) {
        return isPage(path) && !path.startsWith("/sign-") ? path : START;
    }

    /** What was asked for; for a form, the page that it stood on. */
    static String wanted(Context ctx) {
        if (ctx.method().name().equals("GET")) {
            return orStart(ctx.queryString() == null ? ctx.path() : ctx.path() + "?" + ctx.queryString());
        }
        return referrer(ctx).map(LocalPath::orStart).orElse(START);
    }

    /** The page on which a form stood, which may be that for signing in. */
    static String before(Context ctx) {
        return referrer(ctx).filter(LocalPath::isPage).orElse(START);
    }

    static String signIn(String next) {
        return next.equals(START) ? "/sign-in" : "/sign-in?next=" + URLEncoder.encode(next, StandardCharsets.UTF_8);
    }

    private static boolean isPage(String path) {
        return path != null && SAFE.matcher(path).matches() && !path.startsWith("/api/");
    }

    private static Optional<String> referrer(Context ctx) {
        try {
            URI page = new URI(String.valueOf(ctx.header("Referer")));
            if (page.getRawPath() == null
                    || !String.valueOf(ctx.header("Host")).equalsIgnoreCase(page.getRawAuthority())) {
                return Optional.empty();
            }
            return Optional.of(page.getRawQuery() == null
                    ? page.getRawPath() : page.getRawPath() + "?" + page.getRawQuery());
        } catch (URISyntaxException e) {
            return Optional.empty();
        }
    }
}
