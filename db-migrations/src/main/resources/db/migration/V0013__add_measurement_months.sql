-- A policy on the parent does not protect a partition that is named directly: each month gets no grants at all
-- and the same policy. Anything before 2025 shares one partition, so that an old log book can be typed in.
CREATE TABLE measurements_early PARTITION OF measurements FOR VALUES FROM (MINVALUE) TO ('2025-01-01 00:00:00+00');
ALTER TABLE measurements_early ENABLE ROW LEVEL SECURITY;
ALTER TABLE measurements_early FORCE ROW LEVEL SECURITY;
CREATE POLICY inside_chapter ON measurements_early USING (chapter_id = current_chapter());
COMMENT ON TABLE measurements_early IS 'Measurements from before 2025.';

CREATE FUNCTION ensure_measurement_months(up_to timestamptz) RETURNS int
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
            added := added + 1;
        END IF;
        month_start := month_start + interval '1 month';
    END LOOP;
    RETURN added;
END
$$;

REVOKE ALL ON FUNCTION ensure_measurement_months(timestamptz) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION ensure_measurement_months(timestamptz) TO tankrounds_app;

COMMENT ON FUNCTION ensure_measurement_months(timestamptz) IS
    'Adds the monthly partitions that are missing up to a time; run at every start and once a day.';

SELECT ensure_measurement_months(now() + interval '3 months');
