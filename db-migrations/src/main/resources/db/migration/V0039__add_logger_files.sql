CREATE TABLE logger_files (
    chapter_id    int         NOT NULL,
    file_id       int         GENERATED ALWAYS AS IDENTITY,
    tank_id       int         NOT NULL,
    code          text        NOT NULL,
    name          text        NOT NULL,
    content       bytea,
    header        text        NOT NULL,
    choices       jsonb       NOT NULL DEFAULT '{}',
    person_id     int         NOT NULL,
    received_at   timestamptz NOT NULL,
    kept_at       timestamptz,
    stored        int         NOT NULL DEFAULT 0,
    taken_back_at timestamptz,
    CONSTRAINT logger_files_pk PRIMARY KEY (chapter_id, file_id),
    CONSTRAINT logger_files_code_key UNIQUE (chapter_id, code),
    CONSTRAINT logger_files_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT logger_files_person_fk FOREIGN KEY (chapter_id, person_id) REFERENCES people (chapter_id, person_id),
    CONSTRAINT logger_files_name_check CHECK (length(name) <= 200),
    CONSTRAINT logger_files_content_check CHECK ((content IS NULL) = (kept_at IS NOT NULL)),
    CONSTRAINT logger_files_taken_back_at_check CHECK (taken_back_at IS NULL OR kept_at IS NOT NULL)
);

-- Serves the page of a tank's files, newest first.
CREATE INDEX logger_files_tank_idx ON logger_files (chapter_id, tank_id, received_at DESC);

CALL wall_in('logger_files', 'SELECT, INSERT, UPDATE (content, choices, kept_at, stored, taken_back_at), DELETE');

COMMENT ON TABLE logger_files IS 'Files of loggers: looked at, kept as one batch of readings, perhaps taken back.';
COMMENT ON COLUMN logger_files.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN logger_files.file_id IS 'Number inside the database.';
COMMENT ON COLUMN logger_files.tank_id IS 'The tank whose water the logger was in.';
COMMENT ON COLUMN logger_files.code IS 'Random public code, for addresses.';
COMMENT ON COLUMN logger_files.name IS 'As its sender called it.';
COMMENT ON COLUMN logger_files.content IS 'The file, compressed with gzip; NULL once its readings are kept.';
COMMENT ON COLUMN logger_files.header IS 'The names of its columns: files with the same are read as the last one was.';
COMMENT ON COLUMN logger_files.choices IS 'What people said of it that it does not say itself, such as its time zone.';
COMMENT ON COLUMN logger_files.person_id IS 'Who sent it.';
COMMENT ON COLUMN logger_files.received_at IS 'When it came.';
COMMENT ON COLUMN logger_files.kept_at IS 'When its readings were stored; NULL while it is only looked at.';
COMMENT ON COLUMN logger_files.stored IS 'How many readings it added.';
COMMENT ON COLUMN logger_files.taken_back_at IS 'When its readings were taken back; NULL while they hold.';
