CREATE TABLE school_breaks (
    chapter_id int         NOT NULL,
    break_id   int         GENERATED ALWAYS AS IDENTITY,
    tank_id    int         NOT NULL,
    name       text        NOT NULL,
    first_day  date        NOT NULL,
    last_day   date        NOT NULL,
    planned_by int         NOT NULL,
    planned_at timestamptz NOT NULL,
    dropped_at timestamptz,
    CONSTRAINT school_breaks_pk PRIMARY KEY (chapter_id, break_id),
    CONSTRAINT school_breaks_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT school_breaks_planned_by_fk FOREIGN KEY (chapter_id, planned_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT school_breaks_name_check CHECK (length(name) BETWEEN 1 AND 60),
    CONSTRAINT school_breaks_days_check CHECK (last_day BETWEEN first_day AND first_day + 59)
);

CREATE INDEX school_breaks_last_day_idx ON school_breaks (chapter_id, last_day, tank_id) WHERE dropped_at IS NULL;

CALL wall_in('school_breaks', 'SELECT, INSERT, UPDATE (dropped_at)');

COMMENT ON TABLE school_breaks IS 'Days on which a school has no lessons while its tank runs on.';
COMMENT ON COLUMN school_breaks.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN school_breaks.break_id IS 'Number inside the database.';
COMMENT ON COLUMN school_breaks.tank_id IS 'The tank that somebody has to look in on.';
COMMENT ON COLUMN school_breaks.name IS 'What the school calls it.';
COMMENT ON COLUMN school_breaks.first_day IS 'First day without lessons, on the school''s calendar.';
COMMENT ON COLUMN school_breaks.last_day IS 'Last day without lessons.';
COMMENT ON COLUMN school_breaks.planned_by IS 'Who entered it.';
COMMENT ON COLUMN school_breaks.planned_at IS 'When it was entered.';
COMMENT ON COLUMN school_breaks.dropped_at IS 'Taken out of the plan; NULL while it stands.';

CREATE TABLE break_days (
    chapter_id int  NOT NULL,
    break_id   int  NOT NULL,
    day        date NOT NULL,
    looker     text NOT NULL,
    CONSTRAINT break_days_pk PRIMARY KEY (chapter_id, break_id, day),
    CONSTRAINT break_days_break_fk FOREIGN KEY (chapter_id, break_id) REFERENCES school_breaks (chapter_id, break_id),
    CONSTRAINT break_days_looker_check CHECK (length(looker) BETWEEN 1 AND 60)
);

CALL wall_in('break_days', 'SELECT, INSERT, DELETE');

COMMENT ON TABLE break_days IS 'Who looks in on a tank on which day of a break.';
COMMENT ON COLUMN break_days.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN break_days.break_id IS 'The break.';
COMMENT ON COLUMN break_days.day IS 'The day, on the school''s calendar.';
COMMENT ON COLUMN break_days.looker IS 'Who looks in, as the class calls them: a duty such as "custodian", never a pupil.';
