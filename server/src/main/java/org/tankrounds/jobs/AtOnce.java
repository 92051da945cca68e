package org.tankrounds.jobs;

import java.time.Duration;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.IntConsumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Follows a change at once, on a thread of its own. Whoever changed something waits a moment for it, holding nothing
 * that others need, and goes on without it when it takes longer; all that ask while a run is due share that run.
 */
public final class AtOnce implements AfterChange, AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private static final Duration STOP_WITHIN = Duration.ofSeconds(5);
    private static final Logger LOG = LoggerFactory.getLogger(AtOnce.class);

    private final IntConsumer work;
    private final Map<Integer, CompletableFuture<Void>> due = new ConcurrentHashMap<>();
    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        Thread made = new Thread(work, "at-once");
        made.setDaemon(true);
        return made;
    });

    /** @param work for a chapter; what it leaves undone, a job does later */
    public AtOnce(IntConsumer work) {
        this.work = work;
    }

    @Override
    public void changed(int chapterId) {
        try {
            due.computeIfAbsent(chapterId, this::start).get(PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException | RejectedExecutionException later) {
            LOG.debug("chapter {} follows later", chapterId);
        } catch (ExecutionException e) {
            LOG.warn("chapter {} has to wait for the next try", chapterId, e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private CompletableFuture<Void> start(int chapterId) {
        return CompletableFuture.runAsync(() -> {
            // From here on a change may come too late for this run, and asks for another.
            due.remove(chapterId);
            work.accept(chapterId);
        }, thread);
    }

    /** Lets a run that has begun end, if it ends soon. */
    @Override
    public void close() {
        thread.shutdown();
        try {
            if (!thread.awaitTermination(STOP_WITHIN.toSeconds(), TimeUnit.SECONDS)) {
                LOG.warn("forecasts were still being made at the end; the next start makes them");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
