CREATE TABLE stream_checks (
    chapter_id    int         NOT NULL,
    check_id      int         GENERATED ALWAYS AS IDENTITY,
    site_id       int         NOT NULL,
    submission_id uuid        NOT NULL,
    looked_at     timestamptz NOT NULL,
    temperature_c real,
    ph            real,
    oxygen_mg_l   real,
    note          text,
    written_by    int         NOT NULL,
    withdrawn_at  timestamptz,
    CONSTRAINT stream_checks_pk PRIMARY KEY (chapter_id, check_id),
    CONSTRAINT stream_checks_submission_key UNIQUE (chapter_id, site_id, submission_id),
    CONSTRAINT stream_checks_site_fk FOREIGN KEY (chapter_id, site_id) REFERENCES release_sites (chapter_id, site_id),
    CONSTRAINT stream_checks_written_by_fk FOREIGN KEY (chapter_id, written_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT stream_checks_temperature_check CHECK (temperature_c BETWEEN 0 AND 35),
    CONSTRAINT stream_checks_ph_check CHECK (ph BETWEEN 0 AND 14),
    CONSTRAINT stream_checks_oxygen_check CHECK (oxygen_mg_l BETWEEN 0 AND 25),
    CONSTRAINT stream_checks_note_check CHECK (length(note) BETWEEN 1 AND 500)
);

CREATE INDEX stream_checks_site_idx ON stream_checks (chapter_id, site_id, looked_at DESC) WHERE withdrawn_at IS NULL;

CALL wall_in('stream_checks', 'SELECT, INSERT, UPDATE (withdrawn_at)');

COMMENT ON TABLE stream_checks IS 'One look at a stream: its water, and the small animals that live in it.';
COMMENT ON COLUMN stream_checks.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN stream_checks.check_id IS 'Number inside the database.';
COMMENT ON COLUMN stream_checks.site_id IS 'Where it was.';
COMMENT ON COLUMN stream_checks.submission_id IS 'Minted with the form, so that sending it twice stores it once.';
COMMENT ON COLUMN stream_checks.looked_at IS 'When it was.';
COMMENT ON COLUMN stream_checks.temperature_c IS 'Water, °C; NULL where not read.';
COMMENT ON COLUMN stream_checks.ph IS 'pH; NULL where not read.';
COMMENT ON COLUMN stream_checks.oxygen_mg_l IS 'Dissolved oxygen, mg/L; NULL where not read.';
COMMENT ON COLUMN stream_checks.note IS 'Anything else; NULL for nothing.';
COMMENT ON COLUMN stream_checks.written_by IS 'Who wrote it down.';
COMMENT ON COLUMN stream_checks.withdrawn_at IS 'Taken back as a mistake; NULL while it holds.';

CREATE TABLE stream_check_counts (
    chapter_id int  NOT NULL,
    check_id   int  NOT NULL,
    animal     text NOT NULL,
    found      int  NOT NULL,
    CONSTRAINT stream_check_counts_pk PRIMARY KEY (chapter_id, check_id, animal),
    CONSTRAINT stream_check_counts_check_fk FOREIGN KEY (chapter_id, check_id) REFERENCES stream_checks (chapter_id, check_id),
    CONSTRAINT stream_check_counts_animal_check CHECK (length(animal) BETWEEN 1 AND 40),
    CONSTRAINT stream_check_counts_found_check CHECK (found BETWEEN 1 AND 10000)
);

CALL wall_in('stream_check_counts', 'SELECT, INSERT');

COMMENT ON TABLE stream_check_counts IS 'How many animals of a group were found; what is worked out of them is never stored.';
COMMENT ON COLUMN stream_check_counts.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN stream_check_counts.check_id IS 'The look at the stream.';
COMMENT ON COLUMN stream_check_counts.animal IS 'The group, of the sheet''s list.';
COMMENT ON COLUMN stream_check_counts.found IS 'How many.';
