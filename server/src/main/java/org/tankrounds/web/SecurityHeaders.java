package org.tankrounds.web;

import io.javalin.http.Context;

/** What every answer tells the browser it may not do. */
final class SecurityHeaders {
    private static final String CONTENT_SECURITY_POLICY = String.join("; ",
            "default-src 'none'", "script-src 'self'", "style-src 'self'", "img-src 'self' data:",
            "connect-src 'self'", "manifest-src 'self'", "form-action 'self'", "base-uri 'none'",
            "object-src 'none'", "frame-ancestors 'none'");
    private static final String PERMISSIONS_POLICY =
            "camera=(), geolocation=(), microphone=(), payment=(), usb=(), browsing-topics=()";

    private final boolean secure;

    SecurityHeaders(boolean secure) {
        this.secure = secure;
    }

    void set(Context ctx) {
        ctx.header("Content-Security-Policy", CONTENT_SECURITY_POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        // "no-referrer" would make browsers send Origin: null with our own forms, and the check on it would fail.
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Permissions-Policy", PERMISSIONS_POLICY);
        ctx.header("Cache-Control", "private, no-store");
        if (secure) {
            ctx.header("Strict-Transport-Security", "max-age=31536000");
        }
    }
}
