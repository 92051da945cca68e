-- Whoever looks at a month or at the history directly reads what the columns are, as everywhere else.
CREATE PROCEDURE describe_measurement_month(month regclass)
    LANGUAGE plpgsql AS $$
DECLARE
    described record;
BEGIN
    FOR described IN
        SELECT attname, col_description(attrelid, attnum) AS words FROM pg_attribute
        WHERE attrelid = 'measurements'::regclass AND attnum > 0 AND NOT attisdropped
    LOOP
        EXECUTE format('COMMENT ON COLUMN %s.%I IS %L', month, described.attname, described.words);
    END LOOP;
END
$$;

REVOKE ALL ON PROCEDURE describe_measurement_month(regclass) FROM PUBLIC;

COMMENT ON PROCEDURE describe_measurement_month(regclass) IS
    'Gives a partition of measurements the comments that the columns of the whole have.';

CREATE OR REPLACE FUNCTION ensure_measurement_months(up_to timestamptz) RETURNS int
    LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    month_start timestamp := timestamp '2025-01-01';
    month_name  text;
    added       int := 0;
BEGIN
    IF up_to > now() + interval '2 years' THEN
        RAISE EXCEPTION 'months are made at most two years ahead';
    END IF;
    PERFORM pg_advisory_xact_lock(hashtext('ensure_measurement_months'));
    WHILE month_start <= up_to AT TIME ZONE 'UTC' LOOP
        month_name := 'measurements_' || to_char(month_start, 'YYYY_MM');
        IF to_regclass(month_name) IS NULL THEN
            EXECUTE format('CREATE TABLE %I PARTITION OF measurements FOR VALUES FROM (%L) TO (%L)', month_name,
                month_start AT TIME ZONE 'UTC', (month_start + interval '1 month') AT TIME ZONE 'UTC');
            EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', month_name);
            EXECUTE format('ALTER TABLE %I FORCE ROW LEVEL SECURITY', month_name);
            EXECUTE format('CREATE POLICY inside_chapter ON %I USING (chapter_id = current_chapter())', month_name);
            EXECUTE format('COMMENT ON TABLE %I IS %L', month_name,
                'Measurements of ' || to_char(month_start, 'YYYY-MM') || ', UTC.');
            CALL describe_measurement_month(month_name::regclass);
            added := added + 1;
        END IF;
        month_start := month_start + interval '1 month';
    END LOOP;
    RETURN added;
END
$$;

DO $$
DECLARE
    month regclass;
BEGIN
    FOR month IN SELECT inhrelid FROM pg_inherits WHERE inhparent = 'measurements'::regclass LOOP
        CALL describe_measurement_month(month);
    END LOOP;
END
$$;

COMMENT ON TABLE flyway_schema_history IS
    'Which migrations this schema has had; kept by the migration library. No chapter''s data, hence no wall.';
COMMENT ON COLUMN flyway_schema_history.installed_rank IS 'The order in which they were applied.';
COMMENT ON COLUMN flyway_schema_history.version IS 'The number in the migration''s file name.';
COMMENT ON COLUMN flyway_schema_history.description IS 'The words in the file name.';
COMMENT ON COLUMN flyway_schema_history.type IS 'SQL for a file.';
COMMENT ON COLUMN flyway_schema_history.script IS 'The file name.';
COMMENT ON COLUMN flyway_schema_history.checksum IS 'Of the file: one that changed after it was applied is refused.';
COMMENT ON COLUMN flyway_schema_history.installed_by IS 'The role that applied it.';
COMMENT ON COLUMN flyway_schema_history.installed_on IS 'When, by the database''s clock in its own zone.';
COMMENT ON COLUMN flyway_schema_history.execution_time IS 'Milliseconds that it took.';
COMMENT ON COLUMN flyway_schema_history.success IS 'Whether it went through.';
