CREATE TABLE fish_samples (
    chapter_id     int         NOT NULL,
    sample_id      int         GENERATED ALWAYS AS IDENTITY,
    tank_id        int         NOT NULL,
    submission_id  uuid        NOT NULL,
    measured_at    timestamptz NOT NULL,
    fish           int         NOT NULL,
    mean_length_mm real        NOT NULL,
    total_weight_g real,
    person_id      int,
    card_id        int,
    withdrawn_at   timestamptz,
    CONSTRAINT fish_samples_pk PRIMARY KEY (chapter_id, sample_id),
    CONSTRAINT fish_samples_submission_key UNIQUE (chapter_id, tank_id, submission_id),
    CONSTRAINT fish_samples_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT fish_samples_person_fk FOREIGN KEY (chapter_id, person_id) REFERENCES people (chapter_id, person_id),
    CONSTRAINT fish_samples_card_fk FOREIGN KEY (chapter_id, card_id) REFERENCES class_cards (chapter_id, card_id),
    CONSTRAINT fish_samples_fish_check CHECK (fish BETWEEN 1 AND 1000),
    CONSTRAINT fish_samples_length_check CHECK (mean_length_mm BETWEEN 10 AND 400),
    CONSTRAINT fish_samples_weight_check CHECK (total_weight_g > 0 AND total_weight_g <= 100000)
);

CREATE INDEX fish_samples_newest_idx ON fish_samples (chapter_id, tank_id, measured_at DESC);

CALL wall_in('fish_samples', 'SELECT, INSERT, UPDATE (withdrawn_at)');

COMMENT ON TABLE fish_samples IS 'A few fish of a tank that were measured, and weighed together.';
COMMENT ON COLUMN fish_samples.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN fish_samples.sample_id IS 'Number inside the database.';
COMMENT ON COLUMN fish_samples.tank_id IS 'The tank they came from, and went back to.';
COMMENT ON COLUMN fish_samples.submission_id IS 'Minted with the form, so that sending it twice stores it once.';
COMMENT ON COLUMN fish_samples.measured_at IS 'When it was sent.';
COMMENT ON COLUMN fish_samples.fish IS 'How many were measured.';
COMMENT ON COLUMN fish_samples.mean_length_mm IS 'Their mean length from the mouth to the fork of the tail, mm.';
COMMENT ON COLUMN fish_samples.total_weight_g IS 'What they weighed together, g; NULL where they were not weighed.';
COMMENT ON COLUMN fish_samples.person_id IS 'Who was signed in; NULL where a class card posted it.';
COMMENT ON COLUMN fish_samples.card_id IS 'The class card that posted it; NULL otherwise.';
COMMENT ON COLUMN fish_samples.withdrawn_at IS 'Taken back as a mistake; NULL while it holds.';
