CREATE TABLE cooler_checks (
    chapter_id    int         NOT NULL,
    check_id      int         GENERATED ALWAYS AS IDENTITY,
    run_id        int         NOT NULL,
    submission_id uuid        NOT NULL,
    checked_at    timestamptz NOT NULL,
    temperature_c real        NOT NULL,
    place         text        NOT NULL,
    written_by    int         NOT NULL,
    written_at    timestamptz NOT NULL,
    withdrawn_by  int,
    withdrawn_at  timestamptz,
    CONSTRAINT cooler_checks_pk PRIMARY KEY (chapter_id, check_id),
    CONSTRAINT cooler_checks_submission_key UNIQUE (chapter_id, run_id, submission_id),
    CONSTRAINT cooler_checks_run_fk FOREIGN KEY (chapter_id, run_id) REFERENCES egg_runs (chapter_id, run_id),
    CONSTRAINT cooler_checks_written_by_fk FOREIGN KEY (chapter_id, written_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT cooler_checks_withdrawn_by_fk FOREIGN KEY (chapter_id, withdrawn_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT cooler_checks_place_check CHECK (place IN ('supplier', 'road', 'school'))
);

CREATE INDEX cooler_checks_run_idx ON cooler_checks (chapter_id, run_id, checked_at) WHERE withdrawn_at IS NULL;

CALL wall_in('cooler_checks', 'SELECT, INSERT, UPDATE (withdrawn_by, withdrawn_at)');

COMMENT ON TABLE cooler_checks IS 'How warm the cooler of a run was on the way.';
COMMENT ON COLUMN cooler_checks.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN cooler_checks.check_id IS 'Number inside the database.';
COMMENT ON COLUMN cooler_checks.run_id IS 'The run.';
COMMENT ON COLUMN cooler_checks.submission_id IS 'Minted with the form, so that sending it twice stores it once.';
COMMENT ON COLUMN cooler_checks.checked_at IS 'When it was read.';
COMMENT ON COLUMN cooler_checks.temperature_c IS 'Degrees Celsius beside the eggs.';
COMMENT ON COLUMN cooler_checks.place IS 'supplier, road or school: where it was read.';
COMMENT ON COLUMN cooler_checks.written_by IS 'Who wrote it down.';
COMMENT ON COLUMN cooler_checks.written_at IS 'When it was written down.';
COMMENT ON COLUMN cooler_checks.withdrawn_by IS 'Who took it back; NULL while it holds.';
COMMENT ON COLUMN cooler_checks.withdrawn_at IS 'When it was taken back as a mistake; NULL while it holds.';
