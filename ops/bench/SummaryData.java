import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import org.tankrounds.migrations.EmbeddedPostgres;
import org.tankrounds.migrations.Migrations;

/**
 * A chapter of many tanks, each with a probe that reads every five minutes for a season, put straight into the tables
 * of a database of its own: temperature each time, pH every quarter of an hour, and a class's card once on school days.
 * Arguments: folder, tanks. Prints chapter, season and measurements.
 */
final class SummaryData {
    private static final String PLACES = """
            SELECT set_config('tankrounds.chapter', nextval('chapters_chapter_id_seq')::text, false);
            INSERT INTO chapters (chapter_id, code, name, time_zone)
                VALUES (current_chapter(), 'bench1', 'Bench chapter', 'America/New_York');
            INSERT INTO schools (chapter_id, code, name, time_zone)
                SELECT current_chapter(), 'sch' || lpad(n::text, 3, '0'), 'School ' || n, 'America/New_York' \
            FROM generate_series(1, %1$d) n;
            INSERT INTO classrooms (chapter_id, school_id, name) SELECT chapter_id, school_id, 'Room 1' FROM schools;
            INSERT INTO kits (chapter_id, name) VALUES (current_chapter(), 'Card');
            INSERT INTO tanks (chapter_id, classroom_id, kit_id, code, volume_l)
                SELECT c.chapter_id, c.classroom_id, k.kit_id, 'tnk' || lpad(c.classroom_id::text, 3, '0'), 200 \
            FROM classrooms c, kits k;
            INSERT INTO seasons (chapter_id, code, name, starts_on, ends_on)
                VALUES (current_chapter(), 'season', '2025-26', '2025-10-01', '2026-06-30');
            INSERT INTO lots (chapter_id, season_id, tank_id, eggs, received_at, thermal_units_c)
                SELECT t.chapter_id, s.season_id, t.tank_id, 200, '2025-10-06 15:00+00', 180 FROM tanks t, seasons s""";
    private static final String READINGS = """
            INSERT INTO readings (chapter_id, tank_id, code, measured_at, received_at, channel, entered)
            SELECT t.chapter_id, t.tank_id, 'p' || lpad(t.tank_id::text, 4, '0') || lpad(n::text, 7, '0'), \
            at, at, 'probe', '[]'
            FROM tanks t, generate_series(timestamptz '2025-10-02 04:00+00', '2026-06-30 03:55+00', '5 minutes')
                WITH ORDINALITY AS times (at, n) WHERE t.tank_id = %d""";
    private static final String MEASUREMENTS = """
            INSERT INTO measurements (chapter_id, tank_id, reading_id, measured_at, value, half_step, flags, analyte)
            SELECT r.chapter_id, r.tank_id, r.reading_id, r.measured_at, v.value, 0.05, 0, v.analyte
            FROM readings r CROSS JOIN LATERAL (
                SELECT 'temperature' AS analyte, \
            (11.5 + 2 * sin(extract(epoch FROM r.measured_at) / 400000 + r.tank_id))::real AS value
                UNION ALL
                SELECT 'ph', (7.2 + 0.2 * sin(extract(epoch FROM r.measured_at) / 300000))::real
                    WHERE extract(minute FROM r.measured_at)::int %% 15 = 0
                UNION ALL
                SELECT analyte, value FROM (VALUES ('total_ammonia', 0.25::real), \
            ('nitrite', 0.1::real), ('deaths', 0::real)) AS c (analyte, value)
                    WHERE extract(hour FROM r.measured_at) = 15 AND extract(minute FROM r.measured_at) = 0
                        AND extract(isodow FROM r.measured_at) <= 5) AS v
            WHERE r.tank_id = %d""";

    public static void main(String[] arguments) throws Exception {
        try (EmbeddedPostgres postgres = EmbeddedPostgres.start(Path.of(arguments[0]))) {
            Migrations.migrate(postgres.logins().owner());
            try (Connection connection = postgres.logins().owner().open();
                    Statement sql = connection.createStatement()) {
                sql.execute(PLACES.formatted(Integer.parseInt(arguments[1])));
                sql.execute("SELECT ensure_measurement_months('2026-07-01')");
                int[] tanks;
                try (ResultSet rows = sql.executeQuery("SELECT array_agg(tank_id ORDER BY tank_id) FROM tanks")) {
                    rows.next();
                    Integer[] found = (Integer[]) rows.getArray(1).getArray();
                    tanks = java.util.stream.Stream.of(found).mapToInt(Integer::intValue).toArray();
                }
                for (int tank : tanks) {
                    sql.execute(READINGS.formatted(tank));
                    sql.execute(MEASUREMENTS.formatted(tank));
                }
                sql.execute("ANALYZE readings; ANALYZE measurements");
                try (ResultSet rows = sql.executeQuery("SELECT c.code, count(*) FROM measurements m"
                        + " JOIN chapters c USING (chapter_id) GROUP BY 1")) {
                    rows.next();
                    System.out.println(rows.getString(1) + " season " + rows.getLong(2));
                }
            }
        }
    }
}
