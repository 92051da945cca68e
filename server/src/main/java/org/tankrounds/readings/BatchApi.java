package org.tankrounds.readings;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tankrounds.readings.NdjsonLines.Line;
import org.tankrounds.web.Caller;
import org.tankrounds.web.ContentType;
import org.tankrounds.web.RefusedException;

/** Many readings in one request, a line each, streamed in and out. A line is answered only when it is durable. */
public final class BatchApi {
    static final String MEDIA_TYPE = "application/x-ndjson";
    static final int MOST_LINES = 100_000;
    private static final long MOST_DROPPED_BYTES = 64_000_000;

    private final StoreBatch storeBatch;

    public BatchApi(StoreBatch storeBatch) {
        this.storeBatch = storeBatch;
    }

    public void create(Context ctx) throws IOException {
        if (!ContentType.is(ctx, MEDIA_TYPE)) {
            throw RefusedException.of(415, "Send the readings as Content-Type: application/x-ndjson, in UTF-8.");
        }
        if (RequestBody.isEncoded(ctx)) {
            throw RefusedException.of(415, RequestBody.ENCODED);
        }
        Caller caller = Caller.of(ctx);
        ctx.status(200).contentType(MEDIA_TYPE);
        try (AnswerSpool answers = new AnswerSpool(ctx.res().getOutputStream())) {
            new Run(caller, ctx.req().getInputStream(), answers).toTheEnd();
        } finally {
            storeBatch.finished(caller);
        }
    }

    /** One batch on its way. */
    private final class Run {
        private final Caller caller;
        private final InputStream in;
        private final AnswerSpool spool;
        private final BatchTanks tanks;
        private final NdjsonLines lines;
        private final List<BatchLine> readable = new ArrayList<>();
        /** In the order of the lines; an answer that waits for its transaction is still empty. */
        private final List<Optional<BatchAnswer>> answers = new ArrayList<>();

        /** Number of the last line that has an answer, or is about to. */
        private int answered;

        Run(Caller caller, InputStream in, AnswerSpool spool) {
            this.caller = caller;
            this.in = in;
            this.spool = spool;
            this.tanks = storeBatch.tanksOf(caller);
            this.lines = new NdjsonLines(in);
        }

        void toTheEnd() throws IOException {
            int number = 1;
            try {
                for (Optional<Line> line = lines.next(); line.isPresent() && !spool.isBroken(); line = lines.next()) {
                    number = line.get().number();
                    if (number > MOST_LINES && (!line.get().isBlank() || number > 2 * MOST_LINES)) {
                        answerBlanksBefore(number);
                        answers.add(Optional.of(BatchAnswer.refused(number, 413, "A batch has at most " + MOST_LINES
                                + " lines. This line and those behind it were not read; send them in another batch.")));
                        flush();
                        RequestBody.drop(in, MOST_DROPPED_BYTES);
                        return;
                    }
                    take(line.get());
                    if (answers.size() >= StoreBatch.LINES_A_TRANSACTION || !answers.isEmpty() && lines.pausing()) {
                        flush();
                    }
                }
            } catch (IOException e) {
                answers.add(Optional.of(BatchAnswer.refused(number + 1, 400,
                        "The body broke off here. Send the rest again with the same keys.")));
            }
            flush();
        }

        private void take(Line line) {
            if (line.isBlank()) {
                return;
            }
            answerBlanksBefore(line.number());
            try {
                readable.add(BatchLine.read(line));
                answers.add(Optional.empty());
            } catch (RefusedException refusal) {
                answers.add(Optional.of(BatchAnswer.refused(line.number(), refusal)));
            }
        }

        /** Blank lines are nothing at the end; before others they get an answer, so that answers can be counted. */
        private void answerBlanksBefore(int number) {
            for (int blank = answered + 1; blank < number; blank++) {
                answers.add(Optional.of(BatchAnswer.refused(blank, 400, "This line is blank. Leave it out.")));
            }
            answered = number;
        }

        private void flush() throws IOException {
            List<BatchAnswer> stored = readable.isEmpty() ? List.of() : storeBatch.store(caller, tanks, readable);
            int next = 0;
            ByteArrayOutputStream text = new ByteArrayOutputStream(64 * answers.size());
            for (Optional<BatchAnswer> answer : answers) {
                text.write(JsonText.write(answer.isPresent() ? answer.get().json() : stored.get(next++).json()));
                text.write('\n');
            }
            readable.clear();
            answers.clear();
            if (text.size() > 0) {
                spool.add(text.toByteArray());
            }
        }
    }
}
