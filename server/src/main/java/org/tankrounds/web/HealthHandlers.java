package org.tankrounds.web;

import io.javalin.http.Context;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;
import java.util.function.Supplier;

/** What an operator's watch asks: is it alive, is it ready, how busy is it, what can it do. */
public final class HealthHandlers {
    private final Supplier<Optional<String>> whyNotReady;
    private final PrometheusMeterRegistry metrics;
    private final Optional<String> metricsToken;

    /** @param whyNotReady a sentence, or empty when ready */
    public HealthHandlers(
            Supplier<Optional<String>> whyNotReady, PrometheusMeterRegistry metrics, Optional<String> metricsToken) {
        this.whyNotReady = whyNotReady;
        this.metrics = metrics;
        this.metricsToken = metricsToken;
    }

    public void alive(Context ctx) {
        ctx.result("alive\n");
    }

    public void ready(Context ctx) {
        Optional<String> why = whyNotReady.get();
        ctx.status(why.isPresent() ? 503 : 200).result(why.orElse("ready") + "\n");
    }

    public void metrics(Context ctx) {
        if (metricsToken.isPresent() && !presented(ctx, metricsToken.get())) {
            throw new NotFoundException("metrics");
        }
        ctx.contentType("text/plain; version=0.0.4; charset=utf-8").result(metrics.scrape());
    }

    public void description(Context ctx) throws IOException {
        try (InputStream in = HealthHandlers.class.getResourceAsStream("/openapi.yaml")) {
            ctx.contentType("application/yaml").result(in.readAllBytes());
        }
    }

    private static boolean presented(Context ctx, String token) {
        byte[] expected = ("Bearer " + token).getBytes(StandardCharsets.UTF_8);
        byte[] given = String.valueOf(ctx.header("Authorization")).getBytes(StandardCharsets.UTF_8);
        return MessageDigest.isEqual(expected, given);
    }
}
