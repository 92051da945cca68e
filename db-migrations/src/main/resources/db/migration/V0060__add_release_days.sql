CREATE TABLE release_days (
    chapter_id       int         NOT NULL,
    day_id           int         GENERATED ALWAYS AS IDENTITY,
    plan_id          int         NOT NULL,
    tank_id          int         NOT NULL,
    submission_id    uuid        NOT NULL,
    released_at      timestamptz NOT NULL,
    box_c            real,
    stream_c         real,
    tempered_minutes int,
    lengths_mm       real[]      NOT NULL,
    kept_small       int         NOT NULL,
    kept_sick        int         NOT NULL,
    kept_dead        int         NOT NULL,
    kept_other       int         NOT NULL,
    note             text,
    CONSTRAINT release_days_pk PRIMARY KEY (chapter_id, day_id),
    CONSTRAINT release_days_submission_key UNIQUE (chapter_id, tank_id, submission_id),
    CONSTRAINT release_days_plan_fk FOREIGN KEY (chapter_id, plan_id) REFERENCES release_plans (chapter_id, plan_id),
    CONSTRAINT release_days_entry_fk FOREIGN KEY (chapter_id, tank_id, submission_id)
        REFERENCES count_entries (chapter_id, tank_id, submission_id),
    CONSTRAINT release_days_box_check CHECK (box_c BETWEEN 0 AND 35),
    CONSTRAINT release_days_stream_check CHECK (stream_c BETWEEN 0 AND 35),
    CONSTRAINT release_days_tempered_check CHECK (tempered_minutes BETWEEN 0 AND 1440),
    CONSTRAINT release_days_lengths_check CHECK (cardinality(lengths_mm) <= 200),
    CONSTRAINT release_days_kept_check CHECK (kept_small BETWEEN 0 AND 100000 AND kept_sick BETWEEN 0 AND 100000
        AND kept_dead BETWEEN 0 AND 100000 AND kept_other BETWEEN 0 AND 100000),
    CONSTRAINT release_days_note_check CHECK (length(note) BETWEEN 1 AND 500)
);

CREATE INDEX release_days_plan_idx ON release_days (chapter_id, plan_id);

CALL wall_in('release_days', 'SELECT, INSERT');

COMMENT ON TABLE release_days IS 'What was seen and measured when fish of a tank were released; how many they were stands in the count entry of the same form.';
COMMENT ON COLUMN release_days.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN release_days.day_id IS 'Number inside the database.';
COMMENT ON COLUMN release_days.plan_id IS 'The plan that was carried out.';
COMMENT ON COLUMN release_days.tank_id IS 'The tank that they left.';
COMMENT ON COLUMN release_days.submission_id IS 'The form, and with it the count entry; once that is taken back, this holds no more.';
COMMENT ON COLUMN release_days.released_at IS 'When they swam out.';
COMMENT ON COLUMN release_days.box_c IS 'Water of the box on arrival, °C; NULL where not read.';
COMMENT ON COLUMN release_days.stream_c IS 'Water of the stream, °C; NULL where not read.';
COMMENT ON COLUMN release_days.tempered_minutes IS 'How long they were brought to the stream''s temperature, minutes; NULL where not written down.';
COMMENT ON COLUMN release_days.lengths_mm IS 'Lengths of a sample from the mouth to the fork of the tail, mm, in the order of measuring.';
COMMENT ON COLUMN release_days.kept_small IS 'Fish kept back because they were too small.';
COMMENT ON COLUMN release_days.kept_sick IS 'Fish kept back because they looked ill or hurt.';
COMMENT ON COLUMN release_days.kept_dead IS 'Fish that were dead on arrival.';
COMMENT ON COLUMN release_days.kept_other IS 'Fish kept back for another reason.';
COMMENT ON COLUMN release_days.note IS 'That reason, or anything else; NULL for nothing.';
