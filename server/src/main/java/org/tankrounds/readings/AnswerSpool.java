package org.tankrounds.readings;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Answers on their way to a client that may not read any before it has sent everything. They pass through a file:
 * so reading never waits for writing, which would be a standstill, and memory stays flat.
 */
final class AnswerSpool implements AutoCloseable {
    private final FileChannel file;
    private final OutputStream out;
    private final Thread writer;
    private long added;
    private boolean complete;
    private volatile boolean broken;

    AnswerSpool(OutputStream out) throws IOException {
        Path path = Files.createTempFile("tankrounds-answers", ".ndjson");
        this.file = FileChannel.open(path, StandardOpenOption.READ, StandardOpenOption.WRITE,
                StandardOpenOption.DELETE_ON_CLOSE);
        this.out = out;
        this.writer = new Thread(this::pass, "batch-answers");
        writer.setDaemon(true);
        writer.start();
    }

    void add(byte[] answers) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(answers);
        long at = added;
        while (bytes.hasRemaining()) {
            at += file.write(bytes, at);
        }
        synchronized (this) {
            added = at;
            notifyAll();
        }
    }

    /** Whether the client has gone. */
    boolean isBroken() {
        return broken;
    }

    /** Waits until the client has everything. */
    @Override
    public void close() throws IOException {
        synchronized (this) {
            complete = true;
            notifyAll();
        }
        try {
            writer.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            file.close();
        }
    }

    private void pass() {
        ByteBuffer buffer = ByteBuffer.allocate(32 * 1024);
        long passed = 0;
        try {
            for (long ready = await(passed); ready > passed; ready = await(passed)) {
                while (passed < ready) {
                    buffer.clear().limit((int) Math.min(buffer.capacity(), ready - passed));
                    int read = file.read(buffer, passed);
                    out.write(buffer.array(), 0, read);
                    passed += read;
                }
                out.flush();
            }
        } catch (IOException | RuntimeException e) {
            broken = true;
        }
    }

    private synchronized long await(long passed) throws IOException {
        while (added == passed && !complete) {
            try {
                wait();
            } catch (InterruptedException e) {
                throw new IOException("interrupted", e);
            }
        }
        return added;
    }
}
