package org.tankrounds.testing;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Queue;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/** Scripts that post one reading after the other, each until it is answered, always with its own key. */
public final class PersistentPosters implements AutoCloseable {
    public static final String NOTE = "posted as ";

    private final HttpClient client = HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(5)).build();
    private final Queue<String> answered = new ConcurrentLinkedQueue<>();
    private final Queue<String> complaints = new ConcurrentLinkedQueue<>();
    private final ExecutorService threads;
    private final int threadCount;
    private final String path;
    private final String token;
    private final Semaphore fresh = new Semaphore(0);
    private final Semaphore hints = new Semaphore(0);
    private volatile String baseUrl;
    private volatile boolean stopping;

    public PersistentPosters(String baseUrl, String tank, String token, int posters) {
        this.baseUrl = baseUrl;
        this.path = "/api/v1/tanks/" + tank + "/readings";
        this.token = token;
        threadCount = posters;
        threads = Executors.newFixedThreadPool(posters);
        for (int i = 0; i < posters; i++) {
            threads.submit(this::postOn);
        }
    }

    /** The notes of readings that were answered 201 or 200. */
    public List<String> answered() {
        return List.copyOf(answered);
    }

    /** Waits until so many readings more have been answered. */
    public void awaitMore(int readings) throws InterruptedException {
        fresh.drainPermits();
        if (!fresh.tryAcquire(readings, 30, TimeUnit.SECONDS)) {
            throw new IllegalStateException("no answers any more; complaints: " + complaints);
        }
    }

    /** Answers that no script should get. */
    public List<String> complaints() {
        return List.copyOf(complaints);
    }

    /** The service has moved to another port. */
    public void goOnAt(String otherBaseUrl) {
        baseUrl = otherBaseUrl;
        hints.release(threadCount);
    }

    /** Returns when what was begun has been answered. */
    public void stop() throws InterruptedException {
        stopping = true;
        threads.shutdown();
        if (!threads.awaitTermination(30, TimeUnit.SECONDS)) {
            complaints.add("a reading was never answered");
        }
    }

    @Override
    public void close() {
        stopping = true;
        threads.shutdownNow();
    }

    private void postOn() {
        while (!stopping) {
            String key = UUID.randomUUID().toString();
            String note = NOTE + key;
            boolean done = false;
            while (!done && !Thread.currentThread().isInterrupted()) {
                done = isAnswered(key, note);
            }
        }
    }

    private boolean isAnswered(String key, String note) {
        HttpRequest request = HttpRequest.newBuilder(URI.create(baseUrl + path))
                .timeout(Duration.ofSeconds(20))
                .header("Authorization", "Bearer " + token).header("Idempotency-Key", key)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(
                        "{\"measuredAt\": \"%s\", \"note\": \"%s\"}".formatted(someTime(key), note)))
                .build();
        try {
            return judge(client.send(request, BodyHandlers.ofString()), note);
        } catch (IOException away) {
            return tryAgainLater();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private boolean tryAgainLater() {
        try {
            hints.tryAcquire(100, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return false;
    }

    private boolean judge(HttpResponse<String> response, String note) {
        if (response.statusCode() == 201 || response.statusCode() == 200) {
            answered.add(note);
            fresh.release();
            return true;
        }
        boolean honest = response.statusCode() == 503
                && response.headers().firstValue("Retry-After").isPresent()
                && response.headers().firstValue("Content-Type").orElse("")
                .startsWith("application/problem+json");
        if (!honest) {
            complaints.add(response.statusCode() + " " + response.body());
        }
        return tryAgainLater();
    }

    /** The same for every try with a key, so that the bodies are the same too. */
    private static Instant someTime(String key) {
        return Instant.parse("2026-11-01T00:00:00Z").plusSeconds(Math.abs(key.hashCode() % 86_400));
    }
}
