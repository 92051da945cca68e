CREATE TABLE egg_runs (
    chapter_id      int         NOT NULL,
    run_id          int         GENERATED ALWAYS AS IDENTITY,
    season_id       int         NOT NULL,
    submission_id   uuid        NOT NULL,
    day             date        NOT NULL,
    starts_at       time        NOT NULL,
    supplier        text,
    certificate     text,
    permit          text,
    thermal_units_c real,
    eggs            int,
    method          text        NOT NULL,
    spread          int         NOT NULL,
    left_over       int,
    note            text,
    planned_by      int         NOT NULL,
    planned_at      timestamptz NOT NULL,
    called_off_by   int,
    called_off_at   timestamptz,
    CONSTRAINT egg_runs_pk PRIMARY KEY (chapter_id, run_id),
    CONSTRAINT egg_runs_submission_key UNIQUE (chapter_id, submission_id),
    CONSTRAINT egg_runs_season_fk FOREIGN KEY (chapter_id, season_id) REFERENCES seasons (chapter_id, season_id),
    CONSTRAINT egg_runs_planned_by_fk FOREIGN KEY (chapter_id, planned_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT egg_runs_called_off_by_fk FOREIGN KEY (chapter_id, called_off_by) REFERENCES people (chapter_id, person_id),
    CONSTRAINT egg_runs_supplier_check CHECK (length(supplier) BETWEEN 1 AND 120),
    CONSTRAINT egg_runs_certificate_check CHECK (length(certificate) BETWEEN 1 AND 80),
    CONSTRAINT egg_runs_permit_check CHECK (length(permit) BETWEEN 1 AND 80),
    CONSTRAINT egg_runs_thermal_units_check CHECK (thermal_units_c BETWEEN 0 AND 1000),
    CONSTRAINT egg_runs_eggs_check CHECK (eggs BETWEEN 1 AND 100000),
    CONSTRAINT egg_runs_method_check CHECK (method IN ('one_by_one', 'weighed', 'by_volume', 'guessed')),
    CONSTRAINT egg_runs_spread_check CHECK (spread BETWEEN 0 AND 100000),
    CONSTRAINT egg_runs_left_over_check CHECK (left_over BETWEEN 0 AND 100000),
    CONSTRAINT egg_runs_note_check CHECK (length(note) BETWEEN 1 AND 500)
);

CREATE INDEX egg_runs_season_idx ON egg_runs (chapter_id, season_id, day) WHERE called_off_at IS NULL;

CALL wall_in('egg_runs', 'SELECT, INSERT, UPDATE');

COMMENT ON TABLE egg_runs IS 'A day on which eggs are fetched from a supplier and driven to schools in one go.';
COMMENT ON COLUMN egg_runs.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN egg_runs.run_id IS 'Number inside the database.';
COMMENT ON COLUMN egg_runs.season_id IS 'The season.';
COMMENT ON COLUMN egg_runs.submission_id IS 'Minted with the form, so that sending it twice plans one.';
COMMENT ON COLUMN egg_runs.day IS 'The day.';
COMMENT ON COLUMN egg_runs.starts_at IS 'When the eggs are fetched, on the chapter''s clock.';
COMMENT ON COLUMN egg_runs.supplier IS 'Who gives the eggs; NULL where not written down.';
COMMENT ON COLUMN egg_runs.certificate IS 'Number of their health certificate; NULL where not written down.';
COMMENT ON COLUMN egg_runs.permit IS 'Number of the permit to move them; NULL where not written down.';
COMMENT ON COLUMN egg_runs.thermal_units_c IS 'Degree-Celsius days since fertilisation on the day; NULL where nobody told.';
COMMENT ON COLUMN egg_runs.eggs IS 'How many were collected; NULL until they are.';
COMMENT ON COLUMN egg_runs.method IS 'How the supplier counted them.';
COMMENT ON COLUMN egg_runs.spread IS 'Eggs more or less that 19 of 20 such counts stay within.';
COMMENT ON COLUMN egg_runs.left_over IS 'Eggs that came back, or were disposed of as told; NULL until somebody counted.';
COMMENT ON COLUMN egg_runs.note IS 'Anything else; NULL for nothing.';
COMMENT ON COLUMN egg_runs.planned_by IS 'Who planned it.';
COMMENT ON COLUMN egg_runs.planned_at IS 'When it was planned.';
COMMENT ON COLUMN egg_runs.called_off_by IS 'Who called it off; NULL while it stands.';
COMMENT ON COLUMN egg_runs.called_off_at IS 'When it was called off; NULL while it stands.';

CREATE TABLE egg_stops (
    chapter_id     int  NOT NULL,
    stop_id        int  GENERATED ALWAYS AS IDENTITY,
    run_id         int  NOT NULL,
    tank_id        int  NOT NULL,
    place          int  NOT NULL,
    eggs           int  NOT NULL,
    planned_for    time,
    cooler_c       real,
    tank_c         real,
    tank_ph        real,
    pace           text,
    tempering_from timestamptz,
    dropped_at     timestamptz,
    CONSTRAINT egg_stops_pk PRIMARY KEY (chapter_id, stop_id),
    CONSTRAINT egg_stops_tank_key UNIQUE (chapter_id, run_id, tank_id),
    CONSTRAINT egg_stops_run_fk FOREIGN KEY (chapter_id, run_id) REFERENCES egg_runs (chapter_id, run_id),
    CONSTRAINT egg_stops_tank_fk FOREIGN KEY (chapter_id, tank_id) REFERENCES tanks (chapter_id, tank_id),
    CONSTRAINT egg_stops_eggs_check CHECK (eggs BETWEEN 1 AND 100000),
    CONSTRAINT egg_stops_pace_check CHECK (pace IN ('quick', 'slow')),
    CONSTRAINT egg_stops_tempering_check CHECK (num_nulls(cooler_c, tank_c, pace, tempering_from) IN (0, 4))
);

CALL wall_in('egg_stops', 'SELECT, INSERT, UPDATE');

COMMENT ON TABLE egg_stops IS 'Where a run takes eggs: one tank each, in the order of driving.';
COMMENT ON COLUMN egg_stops.chapter_id IS 'The chapter it belongs to.';
COMMENT ON COLUMN egg_stops.stop_id IS 'Number inside the database.';
COMMENT ON COLUMN egg_stops.run_id IS 'The run.';
COMMENT ON COLUMN egg_stops.tank_id IS 'The tank that the eggs go into.';
COMMENT ON COLUMN egg_stops.place IS 'Smaller comes first.';
COMMENT ON COLUMN egg_stops.eggs IS 'Eggs that are planned for it.';
COMMENT ON COLUMN egg_stops.planned_for IS 'When the eggs are expected, on the school''s clock; NULL where nobody said.';
COMMENT ON COLUMN egg_stops.cooler_c IS 'Temperature of the water that the eggs came in, at the school; NULL until it was read.';
COMMENT ON COLUMN egg_stops.tank_c IS 'Temperature of the tank then.';
COMMENT ON COLUMN egg_stops.tank_ph IS 'pH of the tank then; NULL where not read.';
COMMENT ON COLUMN egg_stops.pace IS 'quick or slow: how long a degree takes.';
COMMENT ON COLUMN egg_stops.tempering_from IS 'When tempering began.';
COMMENT ON COLUMN egg_stops.dropped_at IS 'Taken out of the run; NULL while it stands.';
