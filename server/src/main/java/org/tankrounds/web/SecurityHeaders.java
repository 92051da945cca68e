package org.tankrounds.web;

import java.util.function.BiConsumer;

/** What every answer tells the browser it may not do. */
final class SecurityHeaders {
    private static final String CONTENT_SECURITY_POLICY = String.join("; ",
            "default-src 'none'", "script-src 'self'", "style-src 'self'", "img-src 'self' data:",
            "connect-src 'self'", "worker-src 'self'", "manifest-src 'self'", "form-action 'self'", "base-uri 'none'",
            "object-src 'none'", "frame-ancestors 'none'");
    private static final String PERMISSIONS_POLICY =
            "camera=(), geolocation=(), microphone=(), payment=(), usb=(), browsing-topics=()";

    private final boolean secure;

    SecurityHeaders(boolean secure) {
        this.secure = secure;
    }

    /** @param header takes a name and its value */
    void set(BiConsumer<String, String> header) {
        header.accept("Content-Security-Policy", CONTENT_SECURITY_POLICY);
        header.accept("X-Content-Type-Options", "nosniff");
        // "no-referrer" would make browsers send Origin: null with our own forms, and the check on it would fail.
        header.accept("Referrer-Policy", "same-origin");
        header.accept("Cross-Origin-Opener-Policy", "same-origin");
        header.accept("Permissions-Policy", PERMISSIONS_POLICY);
        header.accept("Cache-Control", "private, no-store");
        if (secure) {
            header.accept("Strict-Transport-Security", "max-age=31536000");
        }
    }
}
