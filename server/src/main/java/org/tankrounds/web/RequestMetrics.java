package org.tankrounds.web;

import io.javalin.http.Context;
import io.javalin.http.RequestLogger;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.time.Duration;

/** How long answers take, by route. No label tells who asked or for what. */
public final class RequestMetrics implements RequestLogger {
    private static final Duration[] BUCKETS = {
        Duration.ofMillis(5), Duration.ofMillis(20), Duration.ofMillis(50), Duration.ofMillis(100),
        Duration.ofMillis(250), Duration.ofMillis(500), Duration.ofSeconds(1), Duration.ofSeconds(5)
    };

    private final MeterRegistry metrics;

    public RequestMetrics(MeterRegistry metrics) {
        this.metrics = metrics;
    }

    @Override
    public void handle(Context ctx, Float milliseconds) {
        Timer.builder("tankrounds.request.duration")
                .description("Time from a request to its answer.")
                .tag("method", ctx.method().name())
                .tag("route", RouteName.of(ctx))
                .tag("status", Integer.toString(ctx.statusCode()))
                .serviceLevelObjectives(BUCKETS)
                .register(metrics)
                .record(Duration.ofNanos((long) (milliseconds * 1e6)));
    }
}
