package org.tankrounds.jobs;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Work that nobody asks for, again and again on one thread. Each job must bear being run on two nodes at once. */
public final class Jobs implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Jobs.class);
    private static final long STOP_WITHIN_S = 5;

    /**
     * @param name for the log
     * @param every from the end of one run to the start of the next
     */
    public record Job(String name, Duration every, Runnable work) {}

    private final List<Job> jobs;
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread made = new Thread(work, "jobs");
        made.setDaemon(true);
        return made;
    });

    public Jobs(List<Job> jobs) {
        this.jobs = List.copyOf(jobs);
    }

    /** Runs each job once soon, then at its pace. */
    public void start() {
        jobs.forEach(job -> thread.scheduleWithFixedDelay(
                () -> run(job), 0, job.every().toMillis(), TimeUnit.MILLISECONDS));
    }

    /** Lets a running job end, if it ends soon. */
    @Override
    public void close() {
        thread.shutdownNow();
        try {
            if (!thread.awaitTermination(STOP_WITHIN_S, TimeUnit.SECONDS)) {
                LOG.warn("a job was still running at the end");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** A job that fails is tried again at its next time; an exception would end it for good. */
    private static void run(Job job) {
        try {
            job.work().run();
        } catch (RuntimeException e) {
            LOG.warn("job {} failed and will be tried again", job.name(), e);
        }
    }
}
