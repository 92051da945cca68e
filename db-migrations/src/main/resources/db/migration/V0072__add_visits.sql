CREATE TABLE visits (
    chapter_id    int         NOT NULL,
    visit_id      int         GENERATED ALWAYS AS IDENTITY,
    tank_id       int         NOT NULL,
    submission_id uuid        NOT NULL,
    visited_at    timestamptz NOT NULL,
    deeds         text[]      NOT NULL,
    note          text,
    written_by    int         NOT NULL,
    written_at    timestamptz NOT NULL,
    withdrawn_by  int,
    withdrawn_at  timestamptz,
    CONSTRAINT visits_pk PRIMARY KEY (chapter_id, visit_id),
    CONSTRAINT visits_submission_key UNIQUE (chapter_id, tank_id, submission_id),
    CONSTRAINT visits_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT visits_written_by_fk FOREIGN KEY (chapter_id, written_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT visits_withdrawn_by_fk FOREIGN KEY (chapter_id, withdrawn_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT visits_deeds_check CHECK (cardinality(deeds) BETWEEN 1 AND 9 AND deeds <@ ARRAY[
        'looked', 'read', 'changed_water', 'cleaned', 'cooled', 'dosed', 'brought', 'taught', 'something_else']),
    CONSTRAINT visits_note_check CHECK (length(note) BETWEEN 1 AND 500)
);

CREATE INDEX visits_newest_idx ON visits (chapter_id, tank_id, visited_at DESC) WHERE withdrawn_at IS NULL;

CALL wall_in('visits', 'SELECT, INSERT, UPDATE (withdrawn_by, withdrawn_at)');

COMMENT ON TABLE visits IS 'When somebody of the chapter stood before a tank, and what was done there.';
COMMENT ON COLUMN visits.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN visits.visit_id IS 'Number inside the database.';
COMMENT ON COLUMN visits.tank_id IS 'The tank.';
COMMENT ON COLUMN visits.submission_id IS 'Minted with the form, so that sending it twice stores it once.';
COMMENT ON COLUMN visits.visited_at IS 'When it was.';
COMMENT ON COLUMN visits.deeds IS 'What was done, each once.';
COMMENT ON COLUMN visits.note IS 'Anything else; NULL for nothing.';
COMMENT ON COLUMN visits.written_by IS 'Who was there and wrote it down.';
COMMENT ON COLUMN visits.written_at IS 'When it was written down.';
COMMENT ON COLUMN visits.withdrawn_by IS 'Who took it back; NULL while it holds.';
COMMENT ON COLUMN visits.withdrawn_at IS 'When it was taken back as a mistake; NULL while it holds.';
