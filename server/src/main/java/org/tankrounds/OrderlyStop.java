package org.tankrounds;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.CountDownLatch;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * What a running service must close when it is told to stop, the latest first: so no answer is lost between
 * the web server, the connections and the database. A stop by signal ends the process with 0; further signals
 * change nothing.
 */
final class OrderlyStop implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(OrderlyStop.class);

    private final Deque<AutoCloseable> open = new ArrayDeque<>();
    private final CountDownLatch never = new CountDownLatch(1);
    private boolean ended;

    OrderlyStop() {
        Runtime.getRuntime().addShutdownHook(new Thread(this::signalled, "stop"));
    }

    /** A thing that opens while the stop is under way is closed at once. */
    synchronized <T extends AutoCloseable> T closing(T thing) {
        open.push(thing);
        if (ended) {
            closeAll();
        }
        return thing;
    }

    /** Returns only by the end of the process. */
    void await() throws InterruptedException {
        never.await();
    }

    /** When the start itself failed: the process goes on to its exit code. */
    @Override
    public synchronized void close() {
        ended = true;
        closeAll();
    }

    private void signalled() {
        synchronized (this) {
            if (ended) {
                return;
            }
            ended = true;
            Runtime.getRuntime().halt(closeAll() ? 0 : 1);
        }
    }

    private boolean closeAll() {
        boolean well = true;
        while (!open.isEmpty()) {
            try {
                open.pop().close();
            } catch (Exception e) {
                LOG.error("Stopping was not clean", e);
                well = false;
            }
        }
        return well;
    }
}
