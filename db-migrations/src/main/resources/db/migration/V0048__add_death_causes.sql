CREATE TABLE death_causes (
    chapter_id int         NOT NULL,
    tank_id    int         NOT NULL,
    day        date        NOT NULL,
    cause      text        NOT NULL,
    told_by    int         NOT NULL,
    told_at    timestamptz NOT NULL,
    CONSTRAINT death_causes_pk PRIMARY KEY (chapter_id, tank_id, day),
    CONSTRAINT death_causes_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT death_causes_told_by_fk FOREIGN KEY (chapter_id, told_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT death_causes_cause_check CHECK (length(cause) BETWEEN 1 AND 40)
);

CALL wall_in('death_causes', 'SELECT, INSERT, UPDATE, DELETE');

COMMENT ON TABLE death_causes IS 'What the dead of a day are put down to; a day without a row has nobody''s word.';
COMMENT ON COLUMN death_causes.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN death_causes.tank_id IS 'The tank.';
COMMENT ON COLUMN death_causes.day IS 'The day on which they were found, on the school''s calendar.';
COMMENT ON COLUMN death_causes.cause IS 'The likeliest cause, of a small list.';
COMMENT ON COLUMN death_causes.told_by IS 'Who said so last.';
COMMENT ON COLUMN death_causes.told_at IS 'When.';
