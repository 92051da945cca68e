package org.tankrounds.db;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TimeZone;
import org.jooq.Record;
import org.jooq.exception.DataAccessException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestDatabase;

/** The database's own wall between chapters, seen as the application's role. */
class ChapterWallIT {
    /**
     * Outside every chapter on purpose: a link before there is one, failures at an address, the schema's own
     * history.
     */
    private static final Set<String> OUTSIDE = Set.of("setup_links", "sign_in_throttles");
    private static final Set<String> WITHOUT_ROWS_OF_CHAPTERS = Set.of("flyway_schema_history");

    private static final Transactions DATABASE = TestDatabase.shared().transactions();
    private static Cast here;
    private static Cast elsewhere;
    private static String partition;

    @BeforeAll
    static void twoChaptersWithAMeasurementEach() {
        here = Cast.add(DATABASE, "Wall Chapter");
        elsewhere = Cast.add(DATABASE, "Beyond Chapter");
        measure(here);
        measure(elsewhere);
        hangUpACard(here);
        hangUpACard(elsewhere);
        partition = "measurements_2026_01";
    }

    @Test
    void everyRelationThatTheApplicationMayTouch_isBehindAForcedWall() {
        List<Record> relations = DATABASE.outside(tx -> tx.fetch("""
                SELECT c.relname, c.relrowsecurity, c.relforcerowsecurity FROM pg_class c
                JOIN pg_namespace n ON n.oid = c.relnamespace
                WHERE n.nspname = 'public' AND c.relkind IN ('r', 'p', 'v', 'm', 'f')
                  AND (has_table_privilege(c.oid, 'SELECT, INSERT, UPDATE, DELETE, TRUNCATE')
                       OR has_any_column_privilege(c.oid, 'SELECT, INSERT, UPDATE'))"""));

        assertThat(relations).hasSizeGreaterThan(15);
        assertThat(relations.stream()
                .filter(row -> !WITHOUT_ROWS_OF_CHAPTERS.contains(row.get(0, String.class)))
                .filter(row -> !row.get(1, Boolean.class) || !row.get(2, Boolean.class))
                .map(row -> row.get(0, String.class))).isEmpty();
    }

    @Test
    void everyTableHasTheWall_andStartsItsKeysWithTheChapter() {
        assertThat(names("""
                SELECT c.relname FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
                WHERE n.nspname = 'public' AND c.relkind IN ('r', 'p') AND c.relname <> 'flyway_schema_history'
                  AND NOT (c.relrowsecurity AND c.relforcerowsecurity)""")).isEmpty();
        assertThat(names("""
                SELECT DISTINCT c.relname FROM pg_constraint k JOIN pg_class c ON c.oid = k.conrelid
                JOIN pg_namespace n ON n.oid = c.relnamespace
                JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum = k.conkey[1]
                WHERE n.nspname = 'public' AND k.contype IN ('p', 'f') AND a.attname <> 'chapter_id'
                  AND c.relname <> 'flyway_schema_history'""")).containsExactlyInAnyOrderElementsOf(OUTSIDE);
    }

    @Test
    void nobodyMayEmptyATable_orTouchAPartitionByItsName() {
        assertThat(names("""
                SELECT c.relname FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
                WHERE n.nspname = 'public' AND c.relkind IN ('r', 'p') AND has_table_privilege(c.oid, 'TRUNCATE')"""))
                .isEmpty();
        assertThat(names("""
                SELECT c.relname FROM pg_class c WHERE c.relispartition AND c.relkind = 'r'
                  AND has_table_privilege(c.oid, 'SELECT, INSERT, UPDATE, DELETE, TRUNCATE')""")).isEmpty();
        assertThatThrownBy(() ->
                DATABASE.inChapter(here.chapterId(), tx -> tx.fetch("SELECT * FROM " + partition)))
                .isInstanceOf(DataAccessException.class).hasMessageContaining("permission denied");
    }

    @Test
    void theApplicationsRole_cannotPassTheWall() {
        Record role = DATABASE.outside(tx -> tx.fetchOne(
                "SELECT rolsuper, rolbypassrls, rolcreaterole FROM pg_roles WHERE rolname = current_user"));

        assertThat(role.intoList()).containsOnly(false);
    }

    @Test
    void withoutAChapter_thereAreNoRows() {
        for (String table : tablesWithChapters()) {
            assertThat(rowsOutside(table)).as(table).isZero();
        }
    }

    @Test
    void insideAChapter_onlyItsOwnRowsAreThere() {
        for (String table : tablesWithChapters()) {
            List<Integer> chapters = DATABASE.inChapter(here.chapterId(),
                    tx -> tx.fetch("SELECT DISTINCT chapter_id FROM " + table).getValues(0, Integer.class));
            assertThat(chapters).as(table).isSubsetOf(here.chapterId());
        }
        int measurements =
                DATABASE.inChapter(here.chapterId(), tx -> tx.fetch("SELECT * FROM measurements").size());
        assertThat(measurements).isEqualTo(1);
    }

    @Test
    void nobodyWritesIntoAnotherChapter() {
        assertThatThrownBy(() -> DATABASE.inChapter(here.chapterId(), tx -> tx.execute(
                "INSERT INTO schools (chapter_id, code, name, time_zone) VALUES (?, 'xxxxxx', 'Intruder', 'UTC')",
                elsewhere.chapterId()))).isInstanceOf(DataAccessException.class)
                .hasMessageContaining("row-level security");
        int changed = DATABASE.inChapter(here.chapterId(), tx -> tx.execute(
                "UPDATE tanks SET volume_l = 10 WHERE chapter_id = ?", elsewhere.chapterId()));
        assertThat(changed).isZero();
    }

    @Test
    void aTransactionsChapter_isForgottenWhenItEnds() {
        for (int i = 0; i < 20; i++) {
            DATABASE.inChapter(here.chapterId(), tx -> tx.fetch("SELECT 1"));
            assertThat(rowsOutside("tanks")).isZero();
        }
    }

    @Test
    void aSecret_showsItsOwnRowOnly() {
        byte[] hash = org.tankrounds.web.Secrets.sha256(here.chapterToken());

        List<Integer> chapters = DATABASE.bySecret(hash,
                tx -> tx.fetch("SELECT chapter_id FROM tokens").getValues(0, Integer.class));
        int tanks = DATABASE.bySecret(hash, tx -> tx.fetch("SELECT * FROM tanks").size());
        assertThat(chapters).containsExactly(here.chapterId());
        assertThat(tanks).isZero();
    }

    @Test
    void aCardsHash_showsThatCardOnly() {
        List<Integer> chapters = DATABASE.bySecret(cardHash(here),
                tx -> tx.fetch("SELECT chapter_id FROM class_cards").getValues(0, Integer.class));

        assertThat(chapters).containsExactly(here.chapterId());
        assertThatThrownBy(() -> DATABASE.inChapter(here.chapterId(), tx -> tx.execute(
                "UPDATE class_cards SET code_hash = '\\x00'"))).isInstanceOf(DataAccessException.class)
                .hasMessageContaining("permission denied");
    }

    @Test
    void testsRunOnAClockThatNobodyLivesBy() {
        assertThat(TimeZone.getDefault().getID()).isNotEqualTo("UTC");
        String zoneOfSessions = DATABASE.outside(tx -> tx.fetchOne("SHOW timezone").get(0, String.class));
        assertThat(zoneOfSessions).isNotEqualTo("UTC");
    }

    private static List<String> tablesWithChapters() {
        List<String> tables = names("""
                SELECT c.relname FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
                JOIN pg_attribute a ON a.attrelid = c.oid AND a.attname = 'chapter_id'
                WHERE n.nspname = 'public' AND c.relkind IN ('r', 'p') AND NOT c.relispartition
                  AND has_table_privilege(c.oid, 'SELECT') ORDER BY 1""");
        assertThat(tables).contains("tanks", "readings", "measurements", "people", "sessions", "tokens", "class_cards");
        return tables;
    }

    private static List<String> names(String query) {
        return DATABASE.outside(tx -> tx.fetch(query).getValues(0, String.class));
    }

    private static int rowsOutside(String table) {
        return DATABASE.outside(tx -> tx.fetch("SELECT * FROM " + table).size());
    }

    private static byte[] cardHash(Cast cast) {
        return org.tankrounds.web.Secrets.sha256("card of " + cast.chapterId());
    }

    private static void hangUpACard(Cast cast) {
        DATABASE.inChapter(cast.chapterId(), tx -> tx.execute(
                "INSERT INTO class_cards (chapter_id, tank_id, code_hash, created_at) VALUES (?, ?, ?, now())",
                cast.chapterId(), cast.tankA().tankId(), cardHash(cast)));
    }

    private static void measure(Cast cast) {
        DATABASE.inChapter(cast.chapterId(), tx -> tx.execute("""
                INSERT INTO measurements (chapter_id, tank_id, reading_id, measured_at, value, analyte)
                VALUES (?, ?, 1, ?, 11.5, 'temperature')""",
                cast.chapterId(), cast.tankA().tankId(),
                java.sql.Timestamp.from(Instant.parse("2026-01-13T14:00:00Z"))));
    }
}
