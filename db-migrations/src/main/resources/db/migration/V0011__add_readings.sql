CREATE TABLE readings (
    chapter_id    int         NOT NULL,
    reading_id    bigint      GENERATED ALWAYS AS IDENTITY,
    tank_id       int         NOT NULL,
    code          text        NOT NULL,
    version       smallint    NOT NULL DEFAULT 1,
    measured_at   timestamptz NOT NULL,
    received_at   timestamptz NOT NULL,
    channel       text        NOT NULL,
    by_label      text,
    person_id     int,
    entered       jsonb       NOT NULL,
    note          text,
    flags         text[]      NOT NULL DEFAULT '{}',
    reason        text,
    superseded_at timestamptz,
    CONSTRAINT readings_pk PRIMARY KEY (chapter_id, reading_id),
    CONSTRAINT readings_version_key UNIQUE (chapter_id, code, version),
    CONSTRAINT readings_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT readings_person_fk FOREIGN KEY (chapter_id, person_id) REFERENCES people (chapter_id, person_id),
    CONSTRAINT readings_channel_check CHECK (channel IN ('page', 'api', 'batch')),
    CONSTRAINT readings_note_check CHECK (length(note) <= 2000),
    CONSTRAINT readings_reason_check CHECK (version = 1 OR reason IS NOT NULL)
);

-- Serves the tank's log and the API's pages, newest first.
CREATE INDEX readings_log_idx ON readings (chapter_id, tank_id, measured_at DESC, reading_id DESC)
    WHERE superseded_at IS NULL;

CALL wall_in('readings', 'SELECT, INSERT, UPDATE (superseded_at)');

COMMENT ON TABLE readings IS 'One look at a tank at one time, by somebody; a correction is a further version.';
COMMENT ON COLUMN readings.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN readings.reading_id IS 'Number of this version inside the database.';
COMMENT ON COLUMN readings.tank_id IS 'The tank.';
COMMENT ON COLUMN readings.code IS 'Random public code, the same for all versions.';
COMMENT ON COLUMN readings.version IS '1 as first given, then one more with every correction.';
COMMENT ON COLUMN readings.measured_at IS 'When somebody looked.';
COMMENT ON COLUMN readings.received_at IS 'When this version reached the service.';
COMMENT ON COLUMN readings.channel IS 'page (the form), api (one by one) or batch.';
COMMENT ON COLUMN readings.by_label IS 'Free label such as "period 3", never a pupil''s name; NULL where none was given.';
COMMENT ON COLUMN readings.person_id IS 'Who was signed in; NULL where a token posted it.';
COMMENT ON COLUMN readings.entered IS 'The values exactly as entered: analyte, number, unit, form, step, below.';
COMMENT ON COLUMN readings.note IS 'What else was seen; NULL where nothing.';
COMMENT ON COLUMN readings.flags IS 'What the judge found unlikely, such as unlikely:ph or confirmed:ph.';
COMMENT ON COLUMN readings.reason IS 'Why it was corrected; NULL in version 1.';
COMMENT ON COLUMN readings.superseded_at IS 'When a later version took its place; NULL for the one that holds.';
