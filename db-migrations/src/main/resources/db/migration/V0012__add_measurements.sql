CREATE TABLE measurements (
    chapter_id  int         NOT NULL,
    tank_id     int         NOT NULL,
    reading_id  bigint      NOT NULL,
    measured_at timestamptz NOT NULL,
    value       real        NOT NULL,
    half_step   real        NOT NULL DEFAULT 0,
    flags       smallint    NOT NULL DEFAULT 0,
    analyte     text        NOT NULL,
    CONSTRAINT measurements_pk PRIMARY KEY (chapter_id, tank_id, analyte, measured_at, reading_id),
    CONSTRAINT measurements_value_check CHECK (value >= -10 AND value < 1000000)
) PARTITION BY RANGE (measured_at);

CALL wall_in('measurements', 'SELECT, INSERT, DELETE');

COMMENT ON TABLE measurements IS 'One analyte of a reading that holds, in canonical units; derived from readings.entered.';
COMMENT ON COLUMN measurements.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN measurements.tank_id IS 'The tank.';
COMMENT ON COLUMN measurements.reading_id IS 'The reading''s version that it comes from; no foreign key, so that months can be moved away.';
COMMENT ON COLUMN measurements.measured_at IS 'When somebody looked; the partition key.';
COMMENT ON COLUMN measurements.value IS 'Degrees Celsius, pH, mg/L (nitrogen as N, alkalinity as CaCO3), fish, g or %.';
COMMENT ON COLUMN measurements.half_step IS 'Half of what the method can tell apart, same unit; 0 where unknown.';
COMMENT ON COLUMN measurements.flags IS 'Bits: 1 not detected, 2 doubtful.';
COMMENT ON COLUMN measurements.analyte IS 'Public name of the analyte, such as total_ammonia.';
