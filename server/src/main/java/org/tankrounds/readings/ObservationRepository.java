package org.tankrounds.readings;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.tankrounds.belief.Observation;
import org.tankrounds.water.Analyte;

/** What the engine takes in: the measurements and husbandry acts that hold, oldest first. */
public final class ObservationRepository {
    static final int NOT_DETECTED = 1;
    static final int DOUBTFUL = 2;
    /** Rows that are held at a time: a season of a probe has a hundred thousand. */
    private static final int A_FEW = 2000;

    /**
     * In the order of time. The moment comes as a number, which holds microseconds whole: reading a written one is most
     * of what a row would cost.
     */
    private static final String BETWEEN = """
            SELECT date_part('epoch', measured_at), analyte, value, half_step, flags FROM measurements
            WHERE chapter_id = ? AND tank_id = ? AND measured_at BETWEEN ?::timestamptz AND ?::timestamptz %s
            ORDER BY measured_at, analyte, reading_id""";
    private static final String ALL = BETWEEN.formatted("");
    private static final String DEATHS = BETWEEN.formatted("AND analyte = 'deaths'");
    private static final Map<String, Analyte> BY_CODE =
            Stream.of(Analyte.values()).collect(Collectors.toMap(Analyte::code, Function.identity()));

    /** Everything measured in a tank from one time to another, both included. */
    public List<Observation> list(DSLContext tx, int chapterId, int tankId, Instant from, Instant until) {
        return list(tx, ALL, chapterId, tankId, from, until);
    }

    /** Those of the dead alone. */
    public List<Observation> deaths(DSLContext tx, int chapterId, int tankId, Instant from, Instant until) {
        return list(tx, DEATHS, chapterId, tankId, from, until);
    }

    private static List<Observation> list(
            DSLContext tx, String query, int chapterId, int tankId, Instant from, Instant until) {
        List<Observation> observations = new ArrayList<>();
        each(tx, query, chapterId, tankId, from, until, row -> observations.add(observation(row)));
        return observations;
    }

    /** What is done with a row while it stands there. */
    @FunctionalInterface
    interface RowUse {
        void take(ResultSet row) throws SQLException;
    }

    /**
     * A season of a probe has a hundred thousand rows, and a summary thirty of them: each is read without detours.
     *
     * @param query of a chapter, a tank, a moment and another
     */
    static void each(DSLContext tx, String query, int chapterId, int tankId, Instant from, Instant until, RowUse use) {
        tx.connection(connection -> {
            try (PreparedStatement sql = connection.prepareStatement(query)) {
                sql.setFetchSize(A_FEW);
                sql.setInt(1, chapterId);
                sql.setInt(2, tankId);
                sql.setString(3, from.toString());
                sql.setString(4, until.toString());
                try (ResultSet row = sql.executeQuery()) {
                    while (row.next()) {
                        use.take(row);
                    }
                }
            }
        });
    }

    /** @param row moment, analyte, value, half step and flags first */
    static Observation observation(ResultSet row) throws SQLException {
        short flags = row.getShort(5);
        return new Observation(at(row.getDouble(1)), BY_CODE.get(row.getString(2)), row.getFloat(3), row.getFloat(4),
                (flags & NOT_DETECTED) != 0, (flags & DOUBTFUL) != 0);
    }

    private static Instant at(double seconds) {
        long micros = Math.round(seconds * 1e6);
        return Instant.ofEpochSecond(Math.floorDiv(micros, 1_000_000L), Math.floorMod(micros, 1_000_000L) * 1000);
    }
}
