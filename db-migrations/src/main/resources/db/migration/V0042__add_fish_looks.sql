CREATE TABLE fish_looks (
    chapter_id    int         NOT NULL,
    look_id       int         GENERATED ALWAYS AS IDENTITY,
    tank_id       int         NOT NULL,
    submission_id uuid        NOT NULL,
    seen_at       timestamptz NOT NULL,
    seen          text[]      NOT NULL,
    person_id     int,
    card_id       int,
    withdrawn_at  timestamptz,
    CONSTRAINT fish_looks_pk PRIMARY KEY (chapter_id, look_id),
    CONSTRAINT fish_looks_submission_key UNIQUE (chapter_id, tank_id, submission_id),
    CONSTRAINT fish_looks_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT fish_looks_person_fk FOREIGN KEY (chapter_id, person_id) REFERENCES people (chapter_id, person_id),
    CONSTRAINT fish_looks_card_fk FOREIGN KEY (chapter_id, card_id) REFERENCES class_cards (chapter_id, card_id),
    CONSTRAINT fish_looks_seen_check CHECK (cardinality(seen) BETWEEN 1 AND 6 AND seen <@ ARRAY[
        'calm', 'restless', 'lying', 'rolling',
        'spread', 'bottom', 'surface', 'corners',
        'even', 'fast', 'gasping',
        'usual', 'dark', 'pale',
        'eager', 'slow', 'refusing', 'unfed',
        'darting', 'late', 'still'])
);

CREATE INDEX fish_looks_newest_idx ON fish_looks (chapter_id, tank_id, seen_at DESC);

CALL wall_in('fish_looks', 'SELECT, INSERT, UPDATE (withdrawn_at)');

COMMENT ON TABLE fish_looks IS 'How a class saw its fish behave, in words of a fixed list.';
COMMENT ON COLUMN fish_looks.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN fish_looks.look_id IS 'Number inside the database.';
COMMENT ON COLUMN fish_looks.tank_id IS 'The tank that was looked at.';
COMMENT ON COLUMN fish_looks.submission_id IS 'Minted with the form, so that sending it twice stores it once.';
COMMENT ON COLUMN fish_looks.seen_at IS 'When it was sent.';
COMMENT ON COLUMN fish_looks.seen IS 'What was seen, one word at most of each behaviour.';
COMMENT ON COLUMN fish_looks.person_id IS 'Who was signed in; NULL where a class card posted it.';
COMMENT ON COLUMN fish_looks.card_id IS 'The class card that posted it; NULL otherwise.';
COMMENT ON COLUMN fish_looks.withdrawn_at IS 'Taken back as a mistake; NULL while it holds.';
